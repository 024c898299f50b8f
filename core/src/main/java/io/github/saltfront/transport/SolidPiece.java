package io.github.saltfront.transport;

/**
 * One piece of meat as the three-dimensional solver sees it; its size and form are those of the grid.
 *
 * <p>Water does not travel from cell to cell: evaporation takes heat and counts as lost mass, but does not dry the surface, and
 * a bath gives salt without swelling. Use the layer solver where drying or swelling matters.
 *
 * @param start uniform state before the first stage
 * @param heat heat properties
 * @param salt how salt moves; its ratio of water diffusion is not used
 * @param waterFixed true if protein changes expel no juice
 */
public record SolidPiece(InitialState start, HeatProperties heat, SaltProperties salt, boolean waterFixed) {}
