/** The JSON Schemas (draft 2020-12) of the files that are read and written. */
@NullMarked
package io.github.saltfront.app.schema;

import org.jspecify.annotations.NullMarked;
