package io.github.saltfront.app.store;

/**
 * A saved plan: the request, from which the same plan is made again.
 *
 * @param id its id
 * @param title its title
 * @param request the request as JSON
 * @param programVersion version of the program that planned it
 * @param created when it was saved [ms since 1970]
 * @param changed when it was last changed [ms since 1970]
 */
public record SavedPlan(String id, String title, String request, String programVersion, long created, long changed) {}
