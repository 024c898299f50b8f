package io.github.saltfront.app.cli;

import io.github.saltfront.live.CookEvent;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options that tell what the cook did. */
final class FollowEvents {
    @Option(
            names = "--setting",
            paramLabel = "TIME=TEMPERATURE",
            description = "The appliance was set anew, e.g. 40min=150C; may be repeated.")
    private List<String> settings = List.of();

    @Option(
            names = "--door",
            paramLabel = "TIME=TIME",
            description = "The door was open from when and for how long, e.g. 20min=1min; may be repeated.")
    private List<String> doors = List.of();

    @Option(names = "--flipped", paramLabel = "TIME", description = "The piece was turned over; may be repeated.")
    private List<String> flips = List.of();

    @Option(
            names = "--moved",
            paramLabel = "TIME",
            description = "The probe was put into another spot; may be repeated.")
    private List<String> moves = List.of();

    @Option(
            names = "--heat",
            paramLabel = "TIME=NUMBER",
            description =
                    "The piece went into the next of several heats, e.g. 6min=2; by the plan's clock if not given.")
    private List<String> heats = List.of();

    @Option(names = "--taken-out", paramLabel = "TIME", description = "When the piece was taken out of the heat.")
    private Optional<String> takenOut = Optional.empty();

    /**
     * Returns the events in order of time.
     *
     * @param setup the cook, which has so many heats
     * @throws IllegalArgumentException for what cannot be read, and for a heat that the cook does not have
     */
    List<CookEvent> list(LiveSetup setup) {
        List<CookEvent> list = new ArrayList<>();
        settings.forEach(text -> list.add(new CookEvent.SettingChanged(
                first("--setting", text), second("--setting", text, Dimension.TEMPERATURE))));
        doors.forEach(text ->
                list.add(new CookEvent.DoorOpened(first("--door", text), second("--door", text, Dimension.TIME))));
        flips.forEach(text -> list.add(new CookEvent.Flipped(FollowCommand.time("--flipped", text))));
        moves.forEach(text -> list.add(new CookEvent.ProbeMoved(FollowCommand.time("--moved", text), "core")));
        int most = setup.request().cook().appliances().size();
        heats.forEach(text -> list.add(new CookEvent.HeatBegun(first("--heat", text), heat(text, most))));
        takenOut.ifPresent(text -> list.add(new CookEvent.TakenOut(FollowCommand.time("--taken-out", text))));
        list.sort(Comparator.comparingDouble(CookEvent::time));
        return list;
    }

    private static double first(String option, String text) {
        return FollowCommand.time(option, parts(option, text)[0]);
    }

    private static double second(String option, String text, Dimension dimension) {
        try {
            return QuantityParser.parse(parts(option, text)[1], dimension);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(option + ": " + e.getMessage(), e);
        }
    }

    private static int heat(String text, int most) {
        String part = parts("--heat", text)[1].strip();
        if (!part.matches("[0-9]{1,2}") || Integer.parseInt(part) < 2 || Integer.parseInt(part) > most) {
            throw new IllegalArgumentException("--heat: got \"" + part + "\", expected the number of a later heat"
                    + (most > 1 ? ", 2 to " + most + ", such as 6min=2." : "; this cook has but one heat."));
        }
        return Integer.parseInt(part);
    }

    private static String[] parts(String option, String text) {
        String[] parts = text.split("=", 2);
        if (parts.length != 2) {
            throw new IllegalArgumentException(option + ": got \"" + text
                    + "\", expected a time, an equals sign and a value, such as 40min=150C.");
        }
        return parts;
    }
}
