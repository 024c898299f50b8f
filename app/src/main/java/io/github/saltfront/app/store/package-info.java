/** What is kept between two starts: one file of data or a database on a server, moved to the present form when it is opened. */
@NullMarked
package io.github.saltfront.app.store;

import org.jspecify.annotations.NullMarked;
