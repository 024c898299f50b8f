/**
 * Side-by-side trials: how many tasters, who gets what in which order, and what the answers show. {@link
 * io.github.saltfront.trial.TrialDesign} plans, {@link io.github.saltfront.trial.Discrimination}, {@link
 * io.github.saltfront.trial.Preference}, {@link io.github.saltfront.trial.RatingsAnalysis} and {@link
 * io.github.saltfront.trial.MeanDifference} analyze. Nothing here gives a p-value without the effect and its interval. It does
 * not pool sessions and does not model tasters who taste the same test several times.
 */
@NullMarked
package io.github.saltfront.trial;

import org.jspecify.annotations.NullMarked;
