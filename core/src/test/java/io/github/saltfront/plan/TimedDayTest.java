package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** The day with stages of other lengths, against the plan whose day it is. */
class TimedDayTest {
    private static final Plan BRINED = plan("chicken-breast-skinless", "oven-fan", Request.Treatment.WET_BRINE, 7);
    private static final Fronts FRONTS = Fronts.of(BRINED);
    private static final int SOAK = 0;
    private static final int HEAT = 1;
    private static final int REST = 2;

    private static Plan plan(String cut, String appliance, Request.Treatment treatment, int hours) {
        return Planner.plan(
                Requests.of(
                        cut,
                        appliance,
                        treatment,
                        OptionalDouble.empty(),
                        Optional.of(Requests.NOON.plusHours(hours)),
                        List.of()),
                Runnable::run,
                1);
    }

    private static List<Double> lengths(Fronts fronts) {
        return fronts.spans().stream().map(span -> span.end() - span.start()).toList();
    }

    private static TimedDay with(int stage, double factor) {
        List<Double> lengths = new ArrayList<>(lengths(FRONTS));
        lengths.set(stage, factor * lengths.get(stage));
        return TimedDay.of(FRONTS, lengths, Runnable::run);
    }

    @Test
    void speed() {
        ExecutorService two = Executors.newFixedThreadPool(2);
        for (Plan p : Stream.of(BRINED, plan("pork-loin-chop", "pan", Request.Treatment.SURFACE_SALT, 7), plan("chicken-whole", "oven-fan", Request.Treatment.DRY_SALT, 40)).toList()) {
            Fronts f = Fronts.of(p);
            List<Double> l = lengths(f);
            for (int i = 0; i < 12; i++) {
                long t = System.nanoTime();
                Fronts.of(p);
                long t2 = System.nanoTime();
                TimedDay d = TimedDay.of(f, l, two);
                long t3 = System.nanoTime();
                if (i > 7) System.out.println("fronts " + (t2 - t) / 1e6 + " timed " + (t3 - t2) / 1e6 + " size " + d.fronts().size() + " " + f.size() + " pull " + d.pullTemperature() + " " + p.cooking().pullTemperature()
                    + " peak " + d.peak() + p.cooking().peak() + d.timeToPull() + p.cooking().timeToPull() + d.ends().get(d.ends().size()-1) + p.result());
            }
        }
    }
}
