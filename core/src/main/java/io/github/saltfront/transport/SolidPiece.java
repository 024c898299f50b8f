package io.github.saltfront.transport;

/**
 * One piece of meat as the three-dimensional solver sees it; its size and form are those of the grid. Water stays in its cell:
 * evaporation takes heat and is accounted for, but does not dry the surface, and a bath gives salt only.
 *
 * @param start uniform state before the first stage
 * @param heat heat properties
 * @param salt how salt moves
 */
public record SolidPiece(InitialState start, HeatProperties heat, SaltProperties salt) {}
