package io.github.saltfront.live;

import java.util.List;

/**
 * One moment of the front of heat, as the mean of the ensemble that the readings left likely.
 *
 * @param time time since the start of the heat [s]
 * @param temperatures temperatures at {@link #places}, from the middle to a face [K]
 * @param holdShare median share of the hold at the worst place [-]
 * @param massLoss median loss of mass [kg/kg]
 */
public record FrontMoment(double time, List<Double> temperatures, double holdShare, double massLoss) {
    /** Copies the list. */
    public FrontMoment {
        temperatures = List.copyOf(temperatures);
    }

    /** Returns the places as shares of the way from the middle (0) to a face (1) [-]. */
    public static List<Double> places() {
        return java.util.Arrays.stream(Curves.PLACES).boxed().toList();
    }
}
