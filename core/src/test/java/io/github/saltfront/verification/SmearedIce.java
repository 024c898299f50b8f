package io.github.saltfront.verification;

import io.github.saltfront.transport.FrozenState;

/** Latent heat spread evenly over an interval below the freezing point; constant properties on both sides of it. */
final class SmearedIce implements FrozenState {
    private final FreezingChecks.Phases phases;
    private final double width;
    private final double wet;

    /**
     * Creates the model.
     *
     * @param phases the sharp problem
     * @param width width of the interval [K]
     * @param wet wet mass per dry mass [kg/kg]
     */
    SmearedIce(FreezingChecks.Phases phases, double width, double wet) {
        this.phases = phases;
        this.width = width;
        this.wet = wet;
    }

    private double atFreezing() {
        return wet * phases.capacity() * phases.freezing();
    }

    private double mushy() {
        return wet * (phases.frozenCapacity() + phases.latent() / width);
    }

    @Override
    public double upperLimit(double water, double salt) {
        return phases.freezing();
    }

    @Override
    public double enthalpy(double celsius, double water, double salt) {
        double below = phases.freezing() - celsius;
        double inside = Math.min(below, width);
        return atFreezing() - inside * mushy() - (below - inside) * wet * phases.frozenCapacity();
    }

    @Override
    public double temperature(double enthalpy, double water, double salt) {
        double missing = atFreezing() - enthalpy;
        double latentPart = mushy() * width;
        return missing < latentPart
                ? phases.freezing() - missing / mushy()
                : phases.freezing() - width - (missing - latentPart) / (wet * phases.frozenCapacity());
    }

    @Override
    public double heatCapacity(double celsius, double water, double salt) {
        return celsius > phases.freezing() - width ? mushy() : wet * phases.frozenCapacity();
    }

    @Override
    public double conductivity(double celsius, double water, double salt) {
        double share = Math.min((phases.freezing() - celsius) / width, 1);
        return phases.conductivity() + share * (phases.frozenConductivity() - phases.conductivity());
    }
}
