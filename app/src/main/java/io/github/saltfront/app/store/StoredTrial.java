package io.github.saltfront.app.store;

/**
 * A trial as it is kept; its design follows from the document.
 *
 * @param id its id
 * @param title its title
 * @param document the trial file as JSON
 * @param created when it was made [ms since 1970]
 */
public record StoredTrial(String id, String title, String document, long created) {}
