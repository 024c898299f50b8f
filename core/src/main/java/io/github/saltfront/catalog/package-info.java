/**
 * Cuts, salts, liquids and appliances as sourced tables. Start at {@link io.github.saltfront.catalog.Catalog}; a
 * {@link io.github.saltfront.catalog.Cut} holds all that is known of a piece before it is weighed. Computes no times and
 * decides nothing about safety.
 */
@NullMarked
package io.github.saltfront.catalog;

import org.jspecify.annotations.NullMarked;
