/**
 * Denaturation, juice, tenderness, doneness and seasoning: what a history of temperature and salt makes of meat. Pure
 * functions of local state, such as {@link io.github.saltfront.quality.DenaturationKinetics} and
 * {@link io.github.saltfront.quality.JuiceLoss}, for a simulator to call cell by cell. Knows no geometry and no limits
 * of safety.
 */
@NullMarked
package io.github.saltfront.quality;

import org.jspecify.annotations.NullMarked;
