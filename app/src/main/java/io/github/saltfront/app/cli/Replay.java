package io.github.saltfront.app.cli;

import io.github.saltfront.live.CookEvent;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Executor;

/** Plays the readings and events of a cook in the order of their times and looks ahead at given moments. */
final class Replay {
    /** Readings between looks at whether the ensemble should be drawn anew. */
    private static final int LOOK_EVERY = 5;

    private final LiveSetup setup;
    private final long seed;
    private final Executor executor;

    Replay(LiveSetup setup, long seed, Executor executor) {
        this.setup = setup;
        this.seed = seed;
        this.executor = executor;
    }

    List<Outlook> run(List<Reading> readings, List<CookEvent> events, List<Double> moments) {
        LiveCook cook = LiveCook.start(setup, seed, executor);
        List<Reading> sorted = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::time))
                .toList();
        List<Outlook> outlooks = new ArrayList<>();
        int reading = 0;
        int event = 0;
        for (double moment : moments) {
            while (reading < sorted.size() && sorted.get(reading).time() <= moment) {
                double next = sorted.get(reading).time();
                while (event < events.size() && events.get(event).time() <= next) {
                    cook.tell(events.get(event++), executor);
                }
                cook.add(sorted.get(reading++));
                if (reading % LOOK_EVERY == 0 && cook.wantsRefresh()) {
                    cook.refresh(executor);
                }
            }
            while (event < events.size() && events.get(event).time() <= moment) {
                cook.tell(events.get(event++), executor);
            }
            outlooks.add(cook.outlook(moment));
        }
        return outlooks;
    }
}
