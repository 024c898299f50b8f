/** Tables with sources on the class path, and the bibliography. The only package that reads files. */
@NullMarked
package io.github.saltfront.data;

import org.jspecify.annotations.NullMarked;
