/**
 * The cook as it goes on: readings of probes sharpen the ensemble of the plan. {@link io.github.saltfront.live.LiveCook} absorbs
 * readings and events and gives an {@link io.github.saltfront.live.Outlook}. Pure computing; it keeps no clock and stores nothing.
 */
@NullMarked
package io.github.saltfront.live;

import org.jspecify.annotations.NullMarked;
