package io.github.saltfront.safety;

/** A verdict on a measured record. */
public sealed interface MeasuredVerdict extends Verdict permits ShownByMeasurement, NotMet, CannotTell {}
