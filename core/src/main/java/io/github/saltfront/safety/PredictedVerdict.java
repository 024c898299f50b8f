package io.github.saltfront.safety;

/** A verdict on a prediction; it cannot be "shown by measurement". */
public sealed interface PredictedVerdict extends Verdict permits PredictedMet, NotMet, CannotTell {}
