/** Cuts, salts, liquids and appliances as sourced tables. */
@NullMarked
package io.github.saltfront.catalog;

import org.jspecify.annotations.NullMarked;
