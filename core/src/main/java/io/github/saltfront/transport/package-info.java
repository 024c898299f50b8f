/** The coupled heat-water-salt state of a piece and the solvers that carry it through stages and media. */
@NullMarked
package io.github.saltfront.transport;

import org.jspecify.annotations.NullMarked;
