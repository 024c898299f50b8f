/** Temperature logs and probes: reads what loggers write into what {@code safety} judges. No physics, no decisions. */
@NullMarked
package io.github.saltfront.app.probe;

import org.jspecify.annotations.NullMarked;
