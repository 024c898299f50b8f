/** Results as text, JSON and CSV: names and units of the file contract. */
@NullMarked
package io.github.saltfront.app.export;

import org.jspecify.annotations.NullMarked;
