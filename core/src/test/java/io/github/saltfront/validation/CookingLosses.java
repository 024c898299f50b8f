package io.github.saltfront.validation;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.quality.JuiceLoss;
import java.util.List;
import java.util.OptionalDouble;

/** Measured losses of mass against what a plan says. */
final class CookingLosses {
    private static final double REFRIGERATOR = 4;

    private CookingLosses() {}

    /** What a row was used for before it came here. */
    enum Use {
        /** The amplitudes and species factors were fitted to it among others. */
        FITTED,
        /** It was in view when a factor was set by hand. */
        VIEWED,
        /** Not used: a true prediction. */
        NONE
    }

    /**
     * A loss and its prediction, percent of the raw mass.
     *
     * @param set kind of cook
     * @param measured measured loss
     * @param predicted loss with the band that a plan shows
     * @param evaporated evaporated part
     * @param use what it was used for
     * @param miss why it is missed
     */
    record Row(
            String id,
            String set,
            String what,
            String source,
            double measured,
            Interval predicted,
            Interval evaporated,
            Use use,
            String miss) {
        double error() {
            return predicted.median() - measured;
        }

        boolean isCovered() {
            return predicted.low() <= measured && measured <= predicted.high();
        }
    }

    static List<Row> rows() {
        return CsvTable.load(CookingLosses.class, "cook_losses.csv").rows().stream()
                .map(CookingLosses::row)
                .toList();
    }

    private static Row row(CsvTable.Row row) {
        OptionalDouble thickness = row.findNumber("thickness_mm");
        MeasuredCook cook = new MeasuredCook(
                row.text("cut"),
                OptionalDouble.empty(),
                thickness.isPresent() ? OptionalDouble.of(thickness.getAsDouble() / 1000) : thickness,
                row.text("appliance"),
                row.number("setting_c"),
                REFRIGERATOR);
        MeasuredCook.Loss loss =
                cook.loss(row.findNumber("core_c"), row.findNumber("time_min").orElse(0), row.number("rest_min"));
        Use use = switch (row.text("fit")) {
            case "yes" -> Use.FITTED;
            case "view" -> Use.VIEWED;
            default -> Use.NONE;
        };
        return new Row(
                row.text("id"),
                row.text("set"),
                row.text("what"),
                row.text("source_id"),
                row.number("loss_pct"),
                shown(loss.total()),
                loss.evaporated(),
                use,
                row.text("known_miss"));
    }

    /** The band of a plan: that of the ensemble, but never narrower than the juice model is good for. */
    private static Interval shown(Interval loss) {
        double half = 100 * JuiceLoss.HALF_BAND;
        return new Interval(
                Math.min(loss.low(), loss.median() - half), loss.median(), Math.max(loss.high(), loss.median() + half));
    }
}
