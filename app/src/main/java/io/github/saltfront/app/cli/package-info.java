/** The command line: one small class a command. Translates only; no physics, no decisions. */
@NullMarked
package io.github.saltfront.app.cli;

import org.jspecify.annotations.NullMarked;
