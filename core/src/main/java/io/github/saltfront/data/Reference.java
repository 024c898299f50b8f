package io.github.saltfront.data;

/**
 * A published source.
 *
 * @param id key used in tables and in Javadoc, such as {@code choi1986}
 * @param authors authors or issuing body
 * @param year year of publication as printed
 * @param title title
 * @param venue journal, publisher or series with volume and pages
 * @param doi digital object identifier, or empty
 * @param note how it was read and what to beware of, or empty
 */
public record Reference(String id, String authors, String year, String title, String venue, String doi, String note) {}
