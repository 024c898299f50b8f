/** From request files to the records of the core: names, units and defaults; no physics, no decisions. */
@NullMarked
package io.github.saltfront.app.request;

import org.jspecify.annotations.NullMarked;
