package io.github.saltfront.transport;

/**
 * One piece of meat as the three-dimensional solver sees it; its size and form are those of the grid.
 *
 * @param start uniform state before the first stage
 * @param heat heat properties
 * @param salt how salt and water move
 * @param waterFixed true if water may not move: no uptake, no juice, and evaporation takes heat only
 */
public record SolidPiece(InitialState start, HeatProperties heat, SaltProperties salt, boolean waterFixed) {}
