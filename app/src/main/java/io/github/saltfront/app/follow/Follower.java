package io.github.saltfront.app.follow;

import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.live.CookEvent;
import io.github.saltfront.live.FrontMoment;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Reading;
import io.github.saltfront.live.ReadingState;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Executor;

/** The computation of one cook. Belongs to one thread. */
final class Follower {
    private static final long SEED = 1;

    /** Readings between looks at whether the ensemble should be drawn anew. */
    private static final int LOOK_EVERY = 5;

    /** A new ensemble takes seconds; no more than this share of the time goes into it [-]. */
    private static final double BUSY_SHARE = 1.0 / 3;

    private static final int FAN_POINTS = 41;
    private static final double FAN_BEYOND = 1200;
    private static final double SHORTEST_FAN = 1800;
    private static final double LONGEST_FAN = 6 * 3600.0;
    private static final int FRONT_POINTS = 61;

    /** Share of the whole time after which the front is drawn anew [-]. */
    private static final double FRONT_EVERY = 0.01;

    private static final double LONGEST = 4 * 86400.0 - 1;
    private static final int MOST_LEFT_OUT = 500;

    private final LiveSetup setup;
    private final LiveCook cook;
    private final Executor executor;
    private final Set<String> fahrenheit = new TreeSet<>();
    private final Map<String, TreeMap<Double, Double>> seen = new TreeMap<>();
    private final Set<Long> heard = new HashSet<>();
    private List<FrontMoment> front = List.of();
    private double frontTime;
    private int since;
    private long refreshed;
    private long refreshCost;

    private Follower(LiveSetup setup, LiveCook cook, Executor executor) {
        this.setup = setup;
        this.cook = cook;
        this.executor = executor;
    }

    /**
     * Takes a cook up from all that is known of it.
     *
     * @param setup what it starts from
     * @param members simulated members
     * @param readings readings in any order
     * @param told events that hold
     * @param executor where to run parts of the simulation
     */
    static Follower of(
            LiveSetup setup, int members, List<StoredReading> readings, List<ToldEvent> told, Executor executor) {
        Follower follower = new Follower(setup, LiveCook.start(setup, members, SEED, executor), executor);
        told.stream().filter(ToldEvent::turnsToFahrenheit).forEach(event -> follower.fahrenheit.add(event.probe()));
        follower.tell(told.stream().filter(event -> !event.concernsProbe()).toList());
        follower.add(readings);
        follower.tell(told.stream().filter(ToldEvent::concernsProbe).toList());
        if (!readings.isEmpty() && follower.cook.wantsRefresh()) {
            follower.refresh(System.nanoTime());
        }
        return follower;
    }

    void add(Collection<StoredReading> readings) {
        // one that comes late makes all be judged anew, so a heap of them goes in by its times
        readings.stream().sorted(Comparator.comparingLong(StoredReading::time)).forEach(stored -> {
            Reading reading = reading(stored);
            cook.add(reading);
            if (reading.role().isInMeat()) {
                seen.computeIfAbsent(reading.probe(), name -> new TreeMap<>())
                        .put(reading.time(), reading.temperature());
            }
            since++;
        });
    }

    private Reading reading(StoredReading stored) {
        String unit = fahrenheit.contains(stored.probe()) ? "F" : stored.unit();
        return new Reading(
                stored.probe(),
                ReadingCheck.ROLES.getOrDefault(stored.role(), Reading.Role.CORE),
                stored.time() / 1000.0,
                Math.max(150, ReadingCheck.kelvin(stored.value(), unit)));
    }

    void tell(List<ToldEvent> told) {
        List<CookEvent> events = new ArrayList<>();
        for (ToldEvent event : told) {
            boolean possible = !event.concernsProbe() || seen.containsKey(event.probe());
            if (possible && heard.add(event.number())) {
                event.event().ifPresent(events::add);
            }
        }
        if (!events.isEmpty()) {
            cook.tell(events, executor);
            front = List.of();
        }
    }

    /** Returns whether it is time to draw a new ensemble: it is wanted, and the last one is not too near. */
    boolean wantsRefresh(long nanos) {
        boolean mayAgain = refreshed == 0 || (nanos - refreshed) * BUSY_SHARE >= refreshCost;
        return since >= LOOK_EVERY && mayAgain && cook.wantsRefresh();
    }

    void refresh(long nanos) {
        cook.refresh(executor);
        refreshed = System.nanoTime();
        refreshCost = refreshed - nanos;
        since = 0;
        front = List.of();
    }

    /** What is known at a moment. */
    record Look(
            Outlook outlook,
            List<LiveCook.FanPoint> fan,
            List<LeftOut> leftOut,
            List<LiveCook.Heat> heats,
            List<FrontMoment> front,
            String coreProbe,
            LiveSetup setup,
            Set<String> fahrenheit) {
        /** Returns the number, from 1, of the heat that is on by what was told or by the clock. */
        int heat() {
            int on = 1;
            for (int h = 1; h < heats.size(); h++) {
                if (heats.get(h).begin().orElse(Double.POSITIVE_INFINITY) <= outlook.time()) {
                    on = h + 1;
                }
            }
            return on;
        }
    }

    /** A reading that does not count. */
    record LeftOut(String probe, double time, double temperature, String why) {}

    Look look(double now) {
        double time = Math.max(0, Math.min(LONGEST, Math.max(now, cook.newest())));
        Outlook outlook = cook.outlook(time);
        double end = outlook.phase() == Outlook.Phase.REST
                ? outlook.plate().servedIn().p95()
                : outlook.pull().timeLeft().p95();
        double ahead = Math.min(LONGEST_FAN, Math.max(SHORTEST_FAN, end + FAN_BEYOND));
        return new Look(
                outlook,
                cook.fan(time, ahead, FAN_POINTS),
                leftOut(),
                cook.heats(),
                front(time, outlook),
                cook.coreProbe().orElse(""),
                setup,
                Set.copyOf(fahrenheit));
    }

    /** The front of heat; drawn anew when the clock has gone on a little, since it costs as much as an outlook. */
    private List<FrontMoment> front(double time, Outlook outlook) {
        boolean resting = outlook.phase() == Outlook.Phase.REST;
        double left = resting
                ? outlook.plate().servedIn().p50()
                : outlook.pull().timeLeft().p50();
        double end = time + Math.max(0, Math.min(LONGEST_FAN, left));
        if (front.isEmpty() || Math.abs(time - frontTime) > FRONT_EVERY * end) {
            front = cook.front(time, Math.max(end, 60), FRONT_POINTS);
            frontTime = time;
        }
        return front;
    }

    private List<LeftOut> leftOut() {
        List<LeftOut> list = new ArrayList<>();
        seen.forEach((probe, temperatures) -> temperatures.forEach((time, temperature) -> {
            ReadingState state = cook.state(probe, time);
            if (state.isLeftOut() && state != ReadingState.BEFORE_START) {
                list.add(new LeftOut(probe, time, temperature, state.words()));
            }
        }));
        return list.size() > MOST_LEFT_OUT ? list.subList(list.size() - MOST_LEFT_OUT, list.size()) : list;
    }
}
