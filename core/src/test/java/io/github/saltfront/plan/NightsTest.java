package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NightsTest {
    private static final double HOUR = 3600;
    private static final double HEAT = 110 * 60;

    /** Salting ends at 10 o'clock: heat and rest take 110 min before noon, and 10 min go to drying the meat. */
    private static Nights beforeLunch() {
        Request request = Requests.of(
                "pork-loin-roast",
                "oven-fan",
                Request.Treatment.DRY_SALT,
                OptionalDouble.empty(),
                Optional.of(Requests.NOON.plusDays(2)),
                List.of());
        return new Nights(request, HEAT);
    }

    @ParameterizedTest
    @CsvSource({
        // hours wished, least, most, expected: by day, longer to 22 o'clock, shorter to half past 6, no room
        "14, 1, 24, 14",
        "10, 1, 24, 12",
        "5, 1, 24, 3.5",
        "5, 4, 6, 5"
    })
    void startsByDayWhereThereIsRoom(double wished, double least, double most, double expected) {
        List<Plan.Reason> reasons = new ArrayList<>();
        double time = beforeLunch().awake(wished * HOUR, least * HOUR, most * HOUR, reasons);
        assertThat(time).isEqualTo(expected * HOUR);
        assertThat(reasons).hasSize(wished == 14 ? 0 : 1);
    }

    /** The night of 25 October 2026 has an hour more in Paris: 13 hours of salting start at 22 o'clock there, not 23. */
    @Test
    void nightIsThatOfTheWallClock() {
        ZonedDateTime lunch = ZonedDateTime.of(2026, 10, 25, 12, 0, 0, 0, Requests.NOON.getZone());
        Request request = Requests.of(
                "pork-loin-roast",
                "oven-fan",
                Request.Treatment.DRY_SALT,
                OptionalDouble.empty(),
                Optional.of(lunch),
                List.of());
        List<Plan.Reason> reasons = new ArrayList<>();
        assertThat(new Nights(request, HEAT).awake(13 * HOUR, HOUR, 24 * HOUR, reasons))
                .isEqualTo(13 * HOUR);
        assertThat(reasons).isEmpty();
    }
}
