<<<<<<< HEAD
/** Results as text, JSON and CSV: names and units of the file contract. */
=======
/** What leaves the program: records and reports. Translates only. */
>>>>>>> safety
@NullMarked
package io.github.saltfront.app.export;

import org.jspecify.annotations.NullMarked;
