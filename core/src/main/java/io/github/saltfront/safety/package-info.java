/** Lethality, growth, official limits and verdicts. Decides what counts as proof. */
@NullMarked
package io.github.saltfront.safety;

import org.jspecify.annotations.NullMarked;
