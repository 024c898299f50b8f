package io.github.saltfront.plan;

import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.concurrent.Executor;

/**
 * What the model of the plans predicts for things that a cook can measure, for pieces of given luck: times to readings of the
 * thermometer in the heat, and the gain of mass in a soak. For learning from a notebook.
 */
public final class KitchenForecast {
    private KitchenForecast() {}

    /**
     * Returns when the thermometer shows given readings in the heat.
     *
     * @param request the request; the heat starts from its start temperature, as in the search for a reading
     * @param readings rising readings [K]; the last one is that at which the piece is taken out
     * @param draws luck of each piece
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @return times since the start of the heat [s], one row for each piece; not a number where a reading was not reached in a day
     */
    public static double[][] timesTo(Request request, List<Double> readings, List<Draw> draws, Executor executor) {
        Checks.require(!readings.isEmpty(), "a forecast of times needs a reading, got none.");
        CookStages stages = new CookStages(request, Planner.rule(request));
        double last = readings.get(readings.size() - 1);
        List<MemberDay> days = ensemble(request, draws).run(List.of(stages.heat(last)), executor);
        double[][] times = new double[days.size()][readings.size()];
        for (int i = 0; i < days.size(); i++) {
            MemberDay.StageEnd heat = days.get(i).end(CookStages.HEAT);
            double error = draws.get(i).linear(Uncertainty.PROBE, CookStages.PROBE);
            for (int k = 0; k < readings.size(); k++) {
                double above = days.get(i).timeAbove(readings.get(k) - error, heat.start());
                boolean end = k == readings.size() - 1;
                times[i][k] = !heat.stopped() ? Double.NaN : end ? heat.end() : heat.end() - above;
            }
        }
        return times;
    }

    /**
     * Returns the gain of mass by salting.
     *
     * @param request the request
     * @param salting a soak of given time
     * @param draws luck of each piece
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @return gain per raw mass of the edible part [kg/kg], one for each piece; negative for a loss
     * @throws IllegalArgumentException if the salting is no soak
     */
    public static double[] gains(Request request, Plan.SaltPlan salting, List<Draw> draws, Executor executor) {
        Checks.require(
                salting.treatment().isSoak(),
                "a gain of mass is forecast for a soak, got " + salting.treatment() + ".");
        List<MemberDay> days = ensemble(request, draws).run(SaltStages.of(request, salting), executor);
        return days.stream()
                .mapToDouble(day -> -day.ends().get(day.ends().size() - 1).massLoss())
                .toArray();
    }

    private static DayEnsemble ensemble(Request request, List<Draw> draws) {
        return new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                draws,
                Planner.settings(Planner.rule(request)));
    }
}
