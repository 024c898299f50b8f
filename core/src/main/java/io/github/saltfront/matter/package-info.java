/** From composition to properties: meat with ice, salt and sugar solutions, moist air, boiling. */
@NullMarked
package io.github.saltfront.matter;

import org.jspecify.annotations.NullMarked;
