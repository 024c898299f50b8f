package io.github.saltfront.app.store;

import java.util.List;

/**
 * A cook as it is kept.
 *
 * @param id its id
 * @param title its title
 * @param cookedOn the day, such as {@code 2026-11-28}
 * @param profile the kitchen it belongs to
 * @param document the cook file as JSON, with its request
 * @param planned what the plan said, as JSON
 * @param evidence what can be learned from it, as JSON
 * @param readings readings of the thermometer, as JSON; an empty object without
 * @param programVersion version of the program that computed it
 * @param created when it was noted [ms since 1970]
 * @param changed when it was last changed [ms since 1970]
 * @param tags its tags, in order of the alphabet
 */
public record NotedCook(
        String id,
        String title,
        String cookedOn,
        String profile,
        String document,
        String planned,
        String evidence,
        String readings,
        String programVersion,
        long created,
        long changed,
        List<String> tags) {
    /** Copies the list. */
    public NotedCook {
        tags = List.copyOf(tags);
    }

    /**
     * Returns the same cook with other tags.
     *
     * @param others the tags
     * @return the cook
     */
    NotedCook tagged(List<String> others) {
        return new NotedCook(
                id,
                title,
                cookedOn,
                profile,
                document,
                planned,
                evidence,
                readings,
                programVersion,
                created,
                changed,
                others);
    }

    /**
     * Returns the same cook with other readings.
     *
     * @param others the readings as JSON
     * @return the cook
     */
    public NotedCook reading(String others) {
        return new NotedCook(
                id,
                title,
                cookedOn,
                profile,
                document,
                planned,
                evidence,
                others,
                programVersion,
                created,
                changed,
                tags);
    }
}
