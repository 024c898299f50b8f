/** All words that a person reads, in the language of whoever asks. */
@NullMarked
package io.github.saltfront.words;

import org.jspecify.annotations.NullMarked;
