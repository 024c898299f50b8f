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
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** What has happened to the piece so far, as stretches of one medium each; the last one goes on. Immutable. */
final class Course {
    /** Share of the way from the room to the setting that the air keeps while a door is open [-]; estimate. */
    private static final double OPEN_DOOR = 0.5;

    /** Faces take turns by themselves, or there is but one medium all around. */
    private static final int TURNING = -1;

    private final List<Stretch> stretches;

    /** One medium for a time. */
    private record Stretch(double start, CookingMedium medium, boolean resting, int side) {}

    private Course(List<Stretch> stretches) {
        this.stretches = List.copyOf(stretches);
    }

    static Course of(LiveSetup setup, CookStages stages, List<CookEvent> events) {
        boolean turned = events.stream().anyMatch(CookEvent.Flipped.class::isInstance);
        List<Stretch> list = new ArrayList<>();
        list.add(new Stretch(0, stages.mediumAt(setup.request().cook().setting()), false, turned ? 0 : TURNING));
        List<CookEvent> sorted = events.stream()
                .sorted(Comparator.comparingDouble(CookEvent::time))
                .toList();
        for (CookEvent event : sorted) {
            // what happens while the door is open ends the wait for its closing
            list.removeIf(stretch -> stretch.start > event.time());
            Stretch last = list.get(list.size() - 1);
            if (last.resting) {
                break;
            }
            if (event instanceof CookEvent.SettingChanged changed) {
                list.add(new Stretch(event.time(), stages.mediumAt(changed.setting()), false, last.side));
            } else if (event instanceof CookEvent.DoorOpened door) {
                double room = stages.restMedium().setting();
                double cooler = room + OPEN_DOOR * (last.medium.setting() - room);
                list.add(new Stretch(door.time(), stages.mediumAt(cooler), false, last.side));
                list.add(new Stretch(door.time() + door.duration(), last.medium, false, last.side));
            } else if (event instanceof CookEvent.Flipped && last.side != TURNING) {
                list.add(new Stretch(event.time(), last.medium, false, 1 - last.side));
            } else if (event instanceof CookEvent.TakenOut) {
                list.add(new Stretch(event.time(), stages.restMedium(), true, TURNING));
            }
        }
        return new Course(list);
    }

    /** Whether nothing has happened yet, so that time may be stretched. */
    boolean isPlain() {
        return stretches.size() == 1;
    }

    /** When the piece was taken out [s]. */
    OptionalDouble takenOut() {
        Stretch last = stretches.get(stretches.size() - 1);
        return last.resting ? OptionalDouble.of(last.start) : OptionalDouble.empty();
    }

    /** The present setting [K]. */
    double setting() {
        return stretches.get(stretches.size() - 1).medium.setting();
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
                    stretch.resting ? CookStages.REST : CookStages.HEAT,
                    faces(stretch, draw),
                    SaltExchange.NONE,
                    Math.max(0, end - stretch.start) / pace,
                    last && !stretch.resting ? stop : StopRule.NEVER));
        }
        return stages;
    }

    private static List<FaceCondition> faces(Stretch stretch, Draw draw) {
        List<FaceCondition> faces = stretch.medium.faces(draw, stretch.resting);
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
