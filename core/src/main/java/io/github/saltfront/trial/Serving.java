package io.github.saltfront.trial;

/**
 * One portion on a plate.
 *
 * @param code what stands beside it; {@link TrialDesign#REFERENCE} for a reference
 * @param sample which sample, from 0
 * @param piece name of the piece it is cut from
 */
public record Serving(String code, int sample, String piece) {}
