/** Shapes of pieces, their volumes and surfaces, one- and three-dimensional grids. */
@NullMarked
package io.github.saltfront.shape;

import org.jspecify.annotations.NullMarked;
