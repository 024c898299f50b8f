package io.github.saltfront.app.store;

/**
 * Something that was told of a cook, or an alarm.
 *
 * @param number its number, 0 before it is stored
 * @param cook id of the cook
 * @param kind what it is
 * @param content the whole of it as JSON
 * @param received when it came [ms since 1970]
 */
public record StoredEvent(long number, String cook, String kind, String content, long received) {}
