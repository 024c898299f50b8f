package io.github.saltfront.app.follow;

import java.util.OptionalLong;

/**
 * An alarm: it stands until somebody acknowledges it, whatever happens to the page or the server.
 *
 * @param number its number
 * @param kind what it is about
 * @param text what to do, in one or two sentences
 * @param time when it was raised, since the meat went into the heat [s]
 * @param raised when it was raised [ms since 1970]
 * @param acknowledged when it was acknowledged [ms since 1970], if it was
 */
record CookAlarm(long number, Kind kind, String text, double time, long raised, OptionalLong acknowledged) {
    /** What an alarm is about. */
    enum Kind {
        /** Within five minutes it should come out. */
        GET_READY(false),
        /** By the clock it goes on into the next heat. */
        NEXT_HEAT(true),
        /** It should come out now. */
        PULL_NOW(true),
        /** A limit of safety is broken, or about to be. */
        SAFETY(true),
        /** Something is to be answered or looked after, a unit or a silent probe. */
        PROBE(false),
        /** It has rested. */
        SERVE(true);

        private final boolean urgent;

        Kind(boolean urgent) {
            this.urgent = urgent;
        }

        /** Returns whether it sounds until it is acknowledged; others sound once. */
        boolean isUrgent() {
            return urgent;
        }

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    CookAlarm acknowledgedAt(long time) {
        return new CookAlarm(number, kind, text, time(), raised, OptionalLong.of(time));
    }

    boolean isOpen() {
        return acknowledged.isEmpty();
    }
}
