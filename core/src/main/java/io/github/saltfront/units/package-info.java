/** Reading and writing what cooks write, SI constants, argument checks. Everything else speaks SI. */
@NullMarked
package io.github.saltfront.units;

import org.jspecify.annotations.NullMarked;
