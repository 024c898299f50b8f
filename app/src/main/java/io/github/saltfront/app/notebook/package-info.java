/** The notebook: cook files, pictures, what can be learned from a cook, and the whole as one archive. */
@NullMarked
package io.github.saltfront.app.notebook;

import org.jspecify.annotations.NullMarked;
