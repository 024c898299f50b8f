/**
 * Composition to properties: meat ({@link io.github.saltfront.matter.MeatThermalProperties}), salt and sugar solutions
 * ({@link io.github.saltfront.matter.SaltStrength}), water vapor and air ({@link io.github.saltfront.matter.WaterVapor},
 * {@link io.github.saltfront.matter.MoistAir}). Knows nothing of shapes, media or time.
 */
@NullMarked
package io.github.saltfront.matter;

import org.jspecify.annotations.NullMarked;
