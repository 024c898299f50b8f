package io.github.saltfront.transport;

/**
 * When a stage ran and what ended it.
 *
 * @param kind its kind
 * @param start its start [s]
 * @param end its end [s]
 * @param stopped true if its stop rule ended it, false if its time was up
 * @param rule its stop rule
 */
public record StageRecord(String kind, double start, double end, boolean stopped, StopRule rule) {}
