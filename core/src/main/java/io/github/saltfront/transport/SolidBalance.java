package io.github.saltfront.transport;

/** Account of what a three-dimensional piece held at its start and what came in. */
final class SolidBalance {
    private final SolidState state;
    private final double startEnthalpy;
    private final double startMass;

    SolidBalance(SolidState state) {
        this.state = state;
        startEnthalpy = state.total(state.enthalpy);
        startMass = dryMass() + state.total(state.saltContent) + state.total(state.water);
    }

    double dryMass() {
        double sum = 0;
        for (double mass : state.dryMass) {
            sum += mass;
        }
        return sum;
    }

    BalanceError error() {
        double heat = 0;
        for (double in : state.heatIn) {
            heat += in;
        }
        return new BalanceError(relative(startEnthalpy, heat, state.total(state.enthalpy)), 0, 0);
    }

    private static double relative(double start, double in, double end) {
        double scale = Math.max(Math.abs(start), Math.max(Math.abs(in), Math.abs(end)));
        return scale == 0 ? 0 : Math.abs(end - start - in) / scale;
    }

    double massLoss() {
        return evaporatedShare();
    }

    double evaporatedShare() {
        double sum = 0;
        for (double e : state.evaporated) {
            sum += e;
        }
        return sum / startMass;
    }
}
