package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import io.github.saltfront.words.Phrases;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Time to the right. A night of salting beside half an hour of heat would leave the heat a hair's breadth, so the cold and the
 * hot part of the day have a scale each, with a gap between them; one part alone takes the whole width.
 */
final class FrontsScale {
    /** Least share of the width that either part has [-]. */
    private static final double LEAST_SHARE = 0.4;

    private static final double GAP = 12;
    private static final double TICK_ROOM = 58;
    private static final int[] TICK_MINUTES = {1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440};
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final String DAY = "EEE";

    private final List<Part> parts;

    /**
     * A stretch of one scale.
     *
     * @param start start since the start of the day [s]
     * @param end end [s]
     * @param left left end [px]
     * @param right right end [px]
     * @param clock local time at the start
     */
    record Part(double start, double end, double left, double right, ZonedDateTime clock) {
        double x(double time) {
            return left + (right - left) * (time - start) / (end - start);
        }
    }

    /**
     * A mark of the axis.
     *
     * @param x place [px]
     * @param words local time
     * @param day day of the week where it changes, empty otherwise
     */
    record Tick(double x, String words, String day) {}

    private FrontsScale(List<Part> parts) {
        this.parts = parts;
    }

    static FrontsScale of(Fronts fronts, double left, double right) {
        List<Fronts.Span> spans = fronts.spans();
        Fronts.Span first = spans.get(0);
        Fronts.Span last = spans.get(spans.size() - 1);
        Fronts.Span heat = spans.stream()
                .filter(span -> span.kind().startsWith("heat"))
                .findFirst()
                .orElse(first);
        if (heat == first) {
            return new FrontsScale(List.of(new Part(first.start(), last.end(), left, right, first.clock())));
        }
        double cold = heat.start() - first.start();
        double share = Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, cold / (last.end() - first.start())));
        double turn = left + (right - left - GAP) * share;
        return new FrontsScale(List.of(
                new Part(first.start(), heat.start(), left, turn, first.clock()),
                new Part(heat.start(), last.end(), turn + GAP, right, heat.clock())));
    }

    List<Part> parts() {
        return parts;
    }

    double x(double time) {
        for (Part part : parts) {
            if (time <= part.end()) {
                return part.x(time);
            }
        }
        return parts.get(parts.size() - 1).right();
    }

    /** Round local times; across a change of the clock they stay round. */
    List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        String day = "";
        for (Part part : parts) {
            int step = step(part);
            ZonedDateTime at = part.clock().truncatedTo(ChronoUnit.DAYS);
            while (at.isBefore(part.clock())) {
                at = next(at, step);
            }
            double time = part.start() + Duration.between(part.clock(), at).toMillis() / 1000.0;
            while (time <= part.end()) {
                String name = Phrases.time(DAY, at);
                ticks.add(new Tick(part.x(time), HOUR.format(at), name.equals(day) ? "" : name));
                day = name;
                at = next(at, step);
                time = part.start() + Duration.between(part.clock(), at).toMillis() / 1000.0;
            }
        }
        return ticks;
    }

    private static ZonedDateTime next(ZonedDateTime at, int minutes) {
        return at.toLocalDateTime().plusMinutes(minutes).atZone(at.getZone());
    }

    private static int step(Part part) {
        double minutes = (part.end() - part.start()) / 60;
        double most = Math.max(2, (part.right() - part.left()) / TICK_ROOM);
        for (int step : TICK_MINUTES) {
            if (minutes / step <= most) {
                return step;
            }
        }
        return TICK_MINUTES[TICK_MINUTES.length - 1] * (int) Math.ceil(minutes / most / 1440);
    }
}
