package io.github.saltfront.plan;

import io.github.saltfront.safety.GrowthModel;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.History.Series;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Piece;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.Simulation;
import io.github.saltfront.transport.SimulationOutput;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Hot food cooled in one medium, set against the two official limits: 135 to 70 F (57.2-21.1 deg C) within 2 h and to 41 F (5 deg C)
 * within 6 h in all. The clocks start when the outside falls through 135 F and stop when the middle has arrived, the strict reading
 * of the rule. The cautious end takes the low heat transfer coefficient, a conductivity at the low end of its band and a food
 * a tenth larger than stated.
 *
 * <pre>stirred liquid   T = T_m + (T_0 - T_m) exp(-h S t / (rho c V))</pre>
 *
 * Solids and still liquids conduct (layer solver). Evaporation is left out.
 *
 * @param food what is cooled
 * @param medium what it is cooled in
 * @param firstStep finding on the 2 h
 * @param total finding on the 6 h
 * @param timeToFirst time from 135 F outside to 70 F in the middle [s]; empty if not reached in {@link #LONGEST}
 * @param timeToTotal time from 135 F outside to 41 F in the middle [s]; empty if not reached in {@link #LONGEST}
 * @param growth growth of Clostridium perfringens in the middle, no lag: an upper bound that decides nothing [log10]
 * @see "wac2022, 246-215-03515"
 */
public record CoolingForecast(
        HotFood food,
        CoolingMedium medium,
        LimitCheck firstStep,
        LimitCheck total,
        OptionalDouble timeToFirst,
        OptionalDouble timeToTotal,
        double growth) {
    /** Longest cooling that is followed [s]. */
    public static final double LONGEST = 48 * 3600;

    private static final double EVERY = 60;

    /** Layers of the grid; the middle then errs by some hundredths of a kelvin. */
    private static final int LAYERS = 40;

    private static final double FIRST = Temperature.fromFahrenheit(70);
    private static final double COLD = Temperature.fromFahrenheit(41);

    /** Salt does not move while food cools; any motion will do. */
    private static final SaltProperties STILL_SALT = new SaltProperties(1e-10, 0, 1, 0, 0);

    /**
     * Predicts the cautious end, which decides.
     *
     * @param food what is cooled
     * @param medium what it is cooled in
     * @return the forecast
     */
    public static CoolingForecast cautious(HotFood food, CoolingMedium medium) {
        HotFood thick = food.thicker(DayEnsemble.THICKNESS.high());
        return of(food, thick, medium, medium.coefficient().low(), DayEnsemble.CONDUCTIVITY.low());
    }

    /**
     * Predicts the middle of the bands, for information.
     *
     * @param food what is cooled
     * @param medium what it is cooled in
     * @return the forecast
     */
    public static CoolingForecast typical(HotFood food, CoolingMedium medium) {
        return of(food, food, medium, medium.coefficient().typical(), 1);
    }

    private static CoolingForecast of(
            HotFood stated, HotFood food, CoolingMedium medium, double coefficient, double conductivity) {
        HeatProperties heat = MeatHeat.of(food.composition()).withConductivityFactor(conductivity);
        Shape shape = food.shapeIn(medium);
        Course course = food.kind() == HotFood.Kind.STIRRED
                ? stirred(food, medium, coefficient / heatCapacity(heat) * shape.surfaceToVolume())
                : conducting(food, medium, coefficient, heat, shape);
        List<LimitCheck> checks = OfficialLimits.cooling(course.outside, course.middle);
        double last = course.middle.temperature(course.middle.size() - 1);
        return new CoolingForecast(
                stated,
                medium,
                checks.get(0),
                checks.get(1),
                time(checks.get(0), last <= FIRST),
                time(checks.get(1), last <= COLD),
                GrowthModel.get("perfringens-beef").growth(course.middle));
    }

    private static OptionalDouble time(LimitCheck check, boolean arrived) {
        return arrived ? OptionalDouble.of(check.measured()) : OptionalDouble.empty();
    }

    /** Returns whether both official limits are kept. */
    public boolean keepsLimits() {
        return firstStep.outcome() == LimitCheck.Outcome.PASS && total.outcome() == LimitCheck.Outcome.PASS;
    }

    /** Outside and middle over the same times. */
    private record Course(TemperatureHistory outside, TemperatureHistory middle) {}

    /** Heat capacity per volume between 60 and 5 degrees Celsius [J/(m3.K)]. */
    private static double heatCapacity(HeatProperties heat) {
        double water = heat.rawWater();
        return heat.dryDensity() * (heat.enthalpy(60, water, 0) - heat.enthalpy(5, water, 0)) / 55;
    }

    private static Course stirred(HotFood food, CoolingMedium medium, double rate) {
        int samples = (int) (LONGEST / EVERY) + 1;
        double[] times = new double[samples];
        double[] temperatures = new double[samples];
        for (int i = 0; i < samples; i++) {
            times[i] = EVERY * i;
            temperatures[i] = medium.temperature() + (food.start() - medium.temperature()) * Math.exp(-rate * times[i]);
        }
        TemperatureHistory all = TemperatureHistory.of(times, temperatures);
        return new Course(all, all);
    }

    private static Course conducting(
            HotFood food, CoolingMedium medium, double coefficient, HeatProperties heat, Shape shape) {
        Piece piece = new Piece(shape, new InitialState(food.start(), heat.rawWater(), 0), heat, STILL_SALT, true, 0);
        Stage chill = new Stage(
                "chill",
                List.of(FaceCondition.convection(medium.temperature(), coefficient)),
                SaltExchange.NONE,
                LONGEST,
                new StopRule(StopRule.Kind.CORE_BELOW, COLD - 0.02));
        History history = Simulation.run(
                piece, List.of(chill), SolverSettings.DEFAULT, new SimulationOutput(EVERY, false, LAYERS));
        double[] times = history.series(Series.TIME);
        return new Course(
                TemperatureHistory.of(times, history.series(Series.SURFACE_TEMPERATURE)),
                TemperatureHistory.of(times, history.series(Series.CORE_TEMPERATURE)));
    }
}
