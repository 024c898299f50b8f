package io.github.saltfront.transport;

/** Account of what a three-dimensional piece held at its start and what came in. */
final class SolidBalance {
    private final SolidState state;
    private final double startEnthalpy;
    private final double startMass;
    private final double startSalt;
    private double saltIn;
    private double stageSalt;
    private boolean inStage;

    SolidBalance(SolidState state) {
        this.state = state;
        startEnthalpy = state.total(state.enthalpy);
        startSalt = state.total(state.saltContent);
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
        double salt = saltIn + (inStage ? stageSalt - reservoirs() : 0);
        return new BalanceError(
                relative(startEnthalpy, heat, state.total(state.enthalpy)),
                relative(startSalt, salt, state.total(state.saltContent)),
                0);
    }

    private double reservoirs() {
        double sum = state.totalOnPatches(state.doseSalt);
        for (double salt : state.bathSalt) {
            sum += salt;
        }
        return sum;
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

    double massLoss() {
        double gained = state.total(state.saltContent) - startSalt;
        return evaporatedShare() - gained / startMass;
    }

    double evaporatedShare() {
        double sum = 0;
        for (double e : state.evaporated) {
            sum += e;
        }
        return sum / startMass;
    }
}
