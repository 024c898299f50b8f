package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.data.CsvTable;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Reading;
import io.github.saltfront.live.Spread;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.safety.UnknownProbeError;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Temperature;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two measured curves of beef in an oven at 175 °C (source in the file), followed as a cook would. The cut, the kind of oven and the
 * place of the tip are not printed: lean steak, a fan oven and a tip of unknown place are assumed. What must hold is that the 90 %
 * interval of the time until the same tip shows 65 °C, given what was read so far, holds the measured time.
 */
@Tag("slow")
class FollowedBeefTest {
    private static final double END = Temperature.fromCelsius(65);

    @ParameterizedTest
    @CsvSource({"A, 0.093, 0.050, 0.026, 0.143", "B, 0.100, 0.046, 0.027, 0.140"})
    void intervalHoldsTheMeasuredTimeFromHalfWayOn(
            String piece, double length, double width, double thickness, double mass) throws IOException {
        List<Reading> readings = readings(piece);
        double end = readings.get(readings.size() - 1).time();
        LiveCook cook = LiveCook.start(
                setup(
                        new Shape.Box(length, width, thickness),
                        mass,
                        readings.get(0).temperature()),
                150,
                1,
                Runnable::run);
        for (Reading reading : readings) {
            cook.add(reading);
            double share = reading.time() / end;
            if (share == 0.5 || reading.time() == Math.rint(0.75 * end / 10) * 10) {
                if (cook.wantsRefresh()) {
                    cook.refresh(Runnable::run);
                }
                Spread left = cook.timeToReading(END, reading.time()).orElseThrow();
                assertThat(left.holds90(end - reading.time()))
                        .as("%s at %.0f s: %.0f s left, %s", piece, reading.time(), end - reading.time(), left)
                        .isTrue();
            }
        }
    }

    private static List<Reading> readings(String piece) throws IOException {
        String name = "beef_oven_175.csv";
        List<Reading> readings = new ArrayList<>();
        try (InputStreamReader reader = new InputStreamReader(
                Objects.requireNonNull(FollowedBeefTest.class.getResourceAsStream(name)), StandardCharsets.UTF_8)) {
            for (CsvTable.Row row : CsvTable.read(name, reader).rows()) {
                if (row.text("piece").equals(piece)) {
                    readings.add(new Reading(
                            "core",
                            Reading.Role.CORE,
                            row.number("time_s"),
                            Temperature.fromCelsius(row.number("core_c"))));
                }
            }
        }
        return readings;
    }

    private static LiveSetup setup(Shape shape, double mass, double start) {
        Catalog catalog = Catalog.load();
        Cut cut = catalog.cuts().get("beef-top-sirloin-steak");
        MeatModel meat = MeatModel.of(cut);
        Request request = new Request(
                new Request.Food(Optional.of(cut), meat, shape, 1, mass, 1, start),
                new Request.Salting(
                        Request.Treatment.NONE,
                        catalog.salts().get("table-salt-fine"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Request.Liquor.USUAL,
                        Temperature.fromCelsius(4),
                        SaltedAlready.plain(meat.nativeSalt())),
                new Request.Cook(catalog.appliances().get("oven-fan"), Temperature.fromCelsius(175), 0),
                new Request.Taste(0.01, OptionalDouble.of(END), OptionalDouble.empty()),
                new Request.Timing(ZonedDateTime.parse("2026-11-28T12:00Z"), Optional.empty()),
                new Request.Guests(2, false, Kitchen.HOME),
                List.of());
        return new LiveSetup(
                request,
                meat,
                start,
                END,
                END,
                300,
                1800,
                SolidCheck.Correction.NONE,
                new UnknownProbeError(),
                Placement.unknown(),
                OptionalDouble.empty(),
                false);
    }
}
