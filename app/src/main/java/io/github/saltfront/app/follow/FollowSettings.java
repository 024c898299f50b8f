package io.github.saltfront.app.follow;

import io.github.saltfront.live.LiveCook;

/**
 * How cooks are followed.
 *
 * @param members simulated members of an ensemble
 * @param tickMs longest time between two outlooks without news [ms]
 * @param alarmAgainMs time after which an acknowledged "take it out" comes again if nothing was done [ms]
 * @param programVersion version of the program
 */
public record FollowSettings(int members, long tickMs, long alarmAgainMs, String programVersion) {
    private static final long TICK_MS = 10_000;

    /**
     * Returns the usual settings.
     *
     * @param programVersion version of the program
     * @return the settings
     */
    public static FollowSettings usual(String programVersion) {
        return new FollowSettings(LiveCook.MEMBERS, TICK_MS, AlarmRules.AGAIN_MS, programVersion);
    }

    /**
     * Returns these settings with another ensemble.
     *
     * @param count simulated members
     * @return the settings
     */
    public FollowSettings withMembers(int count) {
        return new FollowSettings(count, tickMs, alarmAgainMs, programVersion);
    }
}
