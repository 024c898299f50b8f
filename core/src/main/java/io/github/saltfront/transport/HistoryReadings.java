package io.github.saltfront.transport;

/**
 * What a {@link HistoryRecorder} reads off a solver, at a place within the step that the solver has just accepted (from 0 to 1)
 * or at the present time. Values of the series are filled in by the ordinal of {@link History.Series}; time and loss of mass
 * are the recorder's.
 */
interface HistoryReadings {
    void readWithin(double theta, double[] values);

    void readNow(double[] values);

    /** Loss of mass at the present time [kg/kg]. */
    double massLoss();

    /** Depths of the field below the first face [m]. */
    double[] depths();

    double[] temperaturesWithin(double theta);

    double[] temperaturesNow();

    double[] saltsWithin(double theta);

    double[] saltsNow();
}
