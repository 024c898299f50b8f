/** Results as text, JSON, CSV and reports: names and units of the file contract. Translates only. */
@NullMarked
package io.github.saltfront.app.export;

import org.jspecify.annotations.NullMarked;
