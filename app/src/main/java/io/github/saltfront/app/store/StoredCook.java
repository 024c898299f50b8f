package io.github.saltfront.app.store;

import java.util.OptionalLong;

/**
 * A cook as it was begun: from it and what was appended since, the same cook goes on after a restart.
 *
 * @param id its id
 * @param title its title
 * @param request the request of its plan as JSON, with the time it was asked at
 * @param options what else was said at the start, as JSON
 * @param programVersion version of the program that began it
 * @param started when the meat went into the heat [ms since 1970]
 * @param speed seconds of the cook in a second of the clock; 1 unless it is replayed [-]
 * @param ended when it was ended [ms since 1970], if it was
 */
public record StoredCook(
        String id,
        String title,
        String request,
        String options,
        String programVersion,
        long started,
        double speed,
        OptionalLong ended) {}
