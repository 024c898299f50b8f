package io.github.saltfront.transport;

/** Account of what a three-dimensional piece held at its start and what came in. */
final class SolidBalance {
    private final SolidState state;
    private final double startEnthalpy;
    private final double startMass;
    private final double startSalt;
    private final double startWater;
    private double saltIn;
    private double stageSalt;
    private boolean inStage;

    SolidBalance(SolidState state) {
        this.state = state;
        startEnthalpy = state.total(state.enthalpy);
        startSalt = state.total(state.saltContent);
        startWater = state.total(state.water);
        startMass = dryMass() + state.total(state.saltContent) + state.total(state.water);
    }

    double dryMass() {
        return sum(state.dryMass);
    }

    BalanceError error() {
        double heat = sum(state.heatIn);
        double salt = saltIn + (inStage ? stageSalt - reservoirs() : 0);
        return new BalanceError(
                relative(startEnthalpy, heat, state.total(state.enthalpy) + state.dripEnthalpy),
                relative(startSalt, salt, state.total(state.saltContent) + sum(state.filmSalt) + state.dripSalt),
                relative(
                        startWater,
                        0,
                        state.total(state.water) + sum(state.filmWater) + state.dripWater + state.evaporatedFilm));
    }

    private double reservoirs() {
        return state.totalOnPatches(state.doseSalt) + sum(state.bathSalt);
    }

    void beginStage() {
        stageSalt = reservoirs();
        inStage = true;
    }

    void endStage() {
        saltIn += stageSalt - reservoirs();
        inStage = false;
    }

    private static double relative(double start, double in, double end) {
        double scale = Math.max(Math.abs(start), Math.max(Math.abs(in), Math.abs(end)));
        return scale == 0 ? 0 : Math.abs(end - start - in) / scale;
    }

    /** Juice and vapor that left, less the salt that came; vapor from the juice on a face counts once. */
    double massLoss() {
        double now = dryMass() + state.total(state.saltContent) + sum(state.filmSalt) + state.total(state.water);
        double vaporOfMeat = sum(state.evaporated) - state.evaporatedFilm;
        return 1 - (now - vaporOfMeat) / startMass;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    double evaporatedShare() {
        return sum(state.evaporated) / startMass;
    }
}
