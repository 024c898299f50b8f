package io.github.saltfront.app.store;

/**
 * A picture of a cook; the picture itself is the file {@code ID.jpg} beside the database.
 *
 * @param id its id
 * @param cook id of the cook
 * @param caption what it shows
 * @param width width [pixel]
 * @param height height [pixel]
 * @param added when it was added [ms since 1970]
 */
public record StoredPhoto(String id, String cook, String caption, int width, int height, long added) {}
