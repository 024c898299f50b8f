/** Tridiagonal solves, time integration with error control, roots, interpolation, sampling. Knows nothing of meat. */
@NullMarked
package io.github.saltfront.numerics;

import org.jspecify.annotations.NullMarked;
