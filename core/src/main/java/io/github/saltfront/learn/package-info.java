/**
 * What a kitchen learns from its own cooks: its oven, its refrigerator, its meat and the taste of its table, each as a Bayesian
 * update of the bands that plans begin with, with an interval. {@link io.github.saltfront.learn.KitchenKnowledge} puts what was
 * learned into a request. It never touches what the official rules ask for.
 */
@NullMarked
package io.github.saltfront.learn;

import org.jspecify.annotations.NullMarked;
