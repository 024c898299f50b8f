package io.github.saltfront.transport;

/**
 * First-order protein changes and the juice they expel, as the solver needs them. Implementations are pure functions.
 */
public interface Denaturation {
    /** No change and no juice. */
    Denaturation NONE = new Denaturation() {
        @Override
        public int reactions() {
            return 0;
        }

        @Override
        public double rate(int reaction, double kelvin) {
            return 0;
        }

        @Override
        public double expelled(double[] extents, double salt) {
            return 0;
        }
    };

    /** Returns the number of reactions. */
    int reactions();

    /**
     * Returns the rate constant of a reaction.
     *
     * @param reaction reaction from 0
     * @param kelvin temperature [K]
     * @return rate constant [1/s]
     */
    double rate(int reaction, double kelvin);

    /**
     * Returns the juice that has left a cell with the given extents.
     *
     * @param extents one extent a reaction, 0 raw to 1 complete [-]; not modified
     * @param salt salt per wet mass [kg/kg]
     * @return juice per mass before cooking [kg/kg]
     */
    double expelled(double[] extents, double salt);
}
