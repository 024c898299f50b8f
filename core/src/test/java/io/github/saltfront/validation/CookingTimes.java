package io.github.saltfront.validation;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.plan.Interval;
import java.util.List;
import java.util.OptionalDouble;

/** Charted and measured cooking times against what a plan says with the appliances of the catalog as they are. */
final class CookingTimes {
    private static final double REFRIGERATOR = 4;

    private CookingTimes() {}

    /**
     * A time and its prediction.
     *
     * @param set kind of cook
     * @param low least measured time [min]
     * @param high longest measured time [min]
     * @param predicted time with its 90 % band [min]
     * @param target temperature in the middle at the measured time [degrees C]
     * @param core predicted one at the middle of the range [degrees C]
     * @param drawn whether the shape was chosen with the row in view
     * @param miss why it is missed
     */
    record Row(
            String id,
            String set,
            String what,
            String source,
            double low,
            double high,
            Interval predicted,
            double target,
            double core,
            boolean drawn,
            String miss) {
        double middle() {
            return (low + high) / 2;
        }

        /** The band of the prediction holds the middle of the printed range. */
        boolean isCovered() {
            return predicted.low() <= middle() && middle() <= predicted.high();
        }

        /** Relative error of the median against the nearer end of the range; zero inside. */
        double error() {
            double near = Math.min(Math.max(predicted.median(), low), high);
            return predicted.median() / near - 1;
        }
    }

    static List<Row> rows() {
        return CsvTable.load(CookingTimes.class, "cook_times.csv").rows().stream()
                .map(CookingTimes::row)
                .toList();
    }

    private static Row row(CsvTable.Row row) {
        double low = row.number("time_low_min");
        double high = row.number("time_high_min");
        double target = row.number("core_c");
        MeasuredCook cook = new MeasuredCook(
                row.text("cut"),
                OptionalDouble.of(row.number("mass_kg")),
                OptionalDouble.empty(),
                row.text("appliance"),
                row.number("setting_c"),
                REFRIGERATOR);
        MeasuredCook.Warming warming = cook.warming(target, (low + high) / 2, 4 * high);
        return new Row(
                row.text("id"),
                row.text("set"),
                row.text("what"),
                row.text("source_id"),
                low,
                high,
                warming.time(),
                target,
                warming.core(),
                row.text("view").equals("yes"),
                row.text("known_miss"));
    }
}
