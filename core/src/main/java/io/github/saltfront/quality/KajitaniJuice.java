package io.github.saltfront.quality;

import io.github.saltfront.transport.Denaturation;

/**
 * Protein changes after Kajitani et al. 2011 and the juice they expel, in the form the solver asks for. The juice is that of a
 * species factor of 1; a member of an ensemble brings its own factor.
 *
 * @see DenaturationKinetics
 * @see JuiceLoss
 */
public final class KajitaniJuice implements Denaturation {
    private static final DenaturationKinetics KINETICS = DenaturationKinetics.KAJITANI_2011;

    /** The reactions in order. */
    public enum Reaction {
        /** Myosin. */
        MYOSIN,
        /** Sarcoplasmic proteins and collagen. */
        SARCOPLASMIC,
        /** Actin. */
        ACTIN
    }

    @Override
    public int reactions() {
        return Reaction.values().length;
    }

    @Override
    public double rate(int reaction, double kelvin) {
        FirstOrderKinetics kinetics = switch (reaction) {
            case 0 -> KINETICS.myosin();
            case 1 -> KINETICS.sarcoplasmic();
            default -> KINETICS.actin();
        };
        return kinetics.rateConstant(kelvin);
    }

    @Override
    public double expelled(double[] extents, double salt) {
        return JuiceLoss.expelledFraction(1, extents[0], extents[1], extents[2], JuiceLoss.saltFactor(salt));
    }
}
