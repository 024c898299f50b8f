package io.github.saltfront.live;

import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.CookingMedium;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What has happened to the piece so far, and what of it goes on by the plan's clock, as stretches of one medium each. A heat begins
 * when the cook says so, or else when the time of the one before is over; only the main heat has no such time. Immutable.
 */
final class Course {
    /** Share of the way from the room to the setting that the air keeps while a door is open [-]; estimate. */
    private static final double OPEN_DOOR = 0.5;

    /** Faces take turns by themselves, or there is but one medium all around. */
    private static final int TURNING = -1;

    private final HeatProgram program;
    private final List<Stretch> stretches;
    private final double[] begins;
    private final OptionalDouble takenOut;

    /** One medium for a time. */
    private record Stretch(double start, CookingMedium medium, String kind, int side) {
        boolean isRest() {
            return kind.equals(CookStages.REST);
        }
    }

    private Course(HeatProgram program, List<Stretch> stretches, double[] begins, OptionalDouble takenOut) {
        this.program = program;
        this.stretches = List.copyOf(stretches);
        this.begins = begins;
        this.takenOut = takenOut;
    }

    static Course of(LiveSetup setup, List<CookEvent> events) {
        HeatProgram program = new HeatProgram(setup);
        List<CookEvent> sorted = events.stream()
                .sorted(Comparator.comparingDouble(CookEvent::time))
                .toList();
        OptionalDouble out = sorted.stream()
                .filter(CookEvent.TakenOut.class::isInstance)
                .mapToDouble(CookEvent::time)
                .findFirst();
        double[] begins = begins(program, sorted);
        double end = out.orElse(begins[program.size()]);
        List<Stretch> list = new ArrayList<>();
        for (int h = 0; h < program.size(); h++) {
            if (begins[h] < end || h == 0) {
                addHeat(list, program, h, new double[] {begins[h], Math.min(end, begins[h + 1])}, sorted);
            }
        }
        if (end < Double.POSITIVE_INFINITY) {
            list.removeIf(stretch -> stretch.start >= end && end > 0);
            list.add(new Stretch(end, program.bench(), CookStages.REST, TURNING));
        }
        return new Course(program, list, begins, out);
    }

    /** When each heat begins, and the rest after the last, if nobody says otherwise; infinite where nobody can know yet [s]. */
    private static double[] begins(HeatProgram program, List<CookEvent> sorted) {
        double[] begins = new double[program.size() + 1];
        for (int h = 1; h < begins.length; h++) {
            int number = h;
            double planned = h - 1 == program.main()
                    ? Double.POSITIVE_INFINITY
                    : begins[h - 1] + program.heat(h - 1).step().time();
            begins[h] = sorted.stream()
                    .filter(event -> event instanceof CookEvent.HeatBegun begun && begun.number() == number + 1)
                    .mapToDouble(CookEvent::time)
                    .reduce((a, b) -> b)
                    .orElse(planned);
        }
        // one that was left out is over at once
        for (int h = begins.length - 2; h > 0; h--) {
            begins[h] = Math.min(begins[h], begins[h + 1]);
        }
        return begins;
    }

    private static void addHeat(
            List<Stretch> all, HeatProgram program, int number, double[] span, List<CookEvent> sorted) {
        HeatProgram.Heat heat = program.heat(number);
        List<CookEvent> events = sorted.stream()
                .filter(event -> event.time() >= span[0] && event.time() < span[1])
                .toList();
        boolean turned = events.stream().anyMatch(CookEvent.Flipped.class::isInstance);
        List<Stretch> list = new ArrayList<>();
        list.add(new Stretch(span[0], heat.medium(), heat.kind(), turned ? 0 : TURNING));
        for (CookEvent event : events) {
            // what happens while the door is open ends the wait for its closing
            list.removeIf(stretch -> stretch.start > event.time());
            Stretch last = list.get(list.size() - 1);
            if (event instanceof CookEvent.SettingChanged changed) {
                list.add(new Stretch(event.time(), heat.mediumAt(changed.setting()), heat.kind(), last.side));
            } else if (event instanceof CookEvent.DoorOpened door) {
                double room = program.bench().setting();
                double cooler = room + OPEN_DOOR * (last.medium.setting() - room);
                list.add(new Stretch(door.time(), heat.mediumAt(cooler), heat.kind(), last.side));
                list.add(new Stretch(door.time() + door.duration(), last.medium, heat.kind(), last.side));
            } else if (event instanceof CookEvent.Flipped && last.side != TURNING) {
                list.add(new Stretch(event.time(), last.medium, heat.kind(), 1 - last.side));
            }
        }
        list.removeIf(stretch -> stretch.start >= span[1] && stretch.start > span[0]);
        all.addAll(list);
    }

    /** Whether there is one heat and nothing has happened yet, so that time may be stretched. */
    boolean isPlain() {
        return stretches.size() == 1;
    }

    /** When the cook took the piece out [s]. */
    OptionalDouble takenOut() {
        return takenOut;
    }

    /** When the rest begins, because it was taken out or by the clock of the last heat [s]; empty while the main heat goes on. */
    OptionalDouble restStart() {
        Stretch last = stretches.get(stretches.size() - 1);
        return last.isRest() ? OptionalDouble.of(last.start) : OptionalDouble.empty();
    }

    /** Time of the heats between the main one and the rest [s]. */
    double timeAfterMain() {
        return program.after().stream().mapToDouble(heat -> heat.step().time()).sum();
    }

    /** The medium at a time. */
    CookingMedium mediumAt(double time) {
        return at(time).medium;
    }

    /** When the heat of a time began [s]. */
    double heatStart(double time) {
        return Arrays.stream(begins).filter(begin -> begin <= time).max().orElse(0);
    }

    private Stretch at(double time) {
        Stretch found = stretches.get(0);
        for (Stretch stretch : stretches) {
            found = stretch.start <= time ? stretch : found;
        }
        return found;
    }

    HeatProgram program() {
        return program;
    }

    /** When a heat begins [s]; infinite if nobody can know yet. */
    double begin(int heat) {
        return begins[heat];
    }

    /**
     * The stages of a member.
     *
     * @param draw its luck
     * @param pace its time per simulated time [-]
     * @param until longest time of the last stage since the start [s]
     * @param stop what ends the last stage
     */
    List<Stage> stages(Draw draw, double pace, double until, StopRule stop) {
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            boolean last = i == stretches.size() - 1;
            double end = last ? Math.max(until, stretch.start + 60) : stretches.get(i + 1).start;
            stages.add(new Stage(
                    stretch.kind,
                    faces(stretch, draw),
                    SaltExchange.NONE,
                    Math.max(0, end - stretch.start) / pace,
                    last && !stretch.isRest() ? stop : StopRule.NEVER));
        }
        return stages;
    }

    /** The stages of a member from the end of the main heat to the rest, by the plan. */
    List<Stage> afterMain(Draw draw, double pace) {
        List<Stage> stages = new ArrayList<>();
        for (HeatProgram.Heat heat : program.after()) {
            stages.add(new Stage(
                    heat.kind(),
                    heat.medium().faces(draw, false),
                    SaltExchange.NONE,
                    heat.step().time() / pace,
                    StopRule.NEVER));
        }
        stages.add(program.heat(program.main()).stages().restStage().stage(draw));
        return stages;
    }

    private static List<FaceCondition> faces(Stretch stretch, Draw draw) {
        List<FaceCondition> faces = stretch.medium.faces(draw, stretch.isRest());
        if (stretch.side == TURNING || faces.size() == 1) {
            return faces;
        }
        FaceCondition below = still(faces.get(0));
        FaceCondition above = still(faces.get(1));
        return stretch.side == 0 ? List.of(below, above) : List.of(above, below);
    }

    private static FaceCondition still(FaceCondition face) {
        return new FaceCondition(
                TimeProfile.constant(face.mediumTemperature().at(0)),
                TimeProfile.constant(face.coefficient().at(0)),
                face.emissivity(),
                face.wetShare(),
                face.vaporPressure(),
                face.totalPressure(),
                face.boilingTemperature());
    }
}
