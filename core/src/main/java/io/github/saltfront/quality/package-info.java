/** Denaturation, juice, tenderness, browning, seasoning. */
@NullMarked
package io.github.saltfront.quality;

import org.jspecify.annotations.NullMarked;
