/**
 * Cooks that are followed as they go on: readings in by HTTP, file and MQTT, kept before they are acknowledged, and the outlook
 * out. The main types are {@code CookRegistry} and {@code RunningCook}; what is computed is in the core.
 */
@NullMarked
package io.github.saltfront.app.follow;

import org.jspecify.annotations.NullMarked;
