/** What leaves the program: records and reports. Translates only. */
@NullMarked
package io.github.saltfront.app.export;

import org.jspecify.annotations.NullMarked;
