/** From a request to a plan: advice, times, clock, uncertainty. */
@NullMarked
package io.github.saltfront.plan;

import org.jspecify.annotations.NullMarked;
