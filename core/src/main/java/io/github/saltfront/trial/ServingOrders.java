package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Orders in which samples are served, and their even use. */
public final class ServingOrders {
    private ServingOrders() {}

    /**
     * Returns the orders of a Williams design: each sample comes equally often in each place, and after each other sample
     * equally often, so that neither the first bite nor the bite before favors one. An even number of samples needs as many orders,
     * an odd number twice as many.
     *
     * <pre>first order 0, 1, t-1, 2, t-2, ...; each next one adds 1 modulo t; for odd t the same backward</pre>
     *
     * @param samples number of samples t, 2 to 10
     * @return orders, each a list of samples from 0
     * @throws IllegalArgumentException if the number is out of range
     * @see "williams1949, Aust. J. Sci. Res. A 2, 149-168; macfie1989, J. Sens. Stud. 4, 129-148"
     */
    public static List<List<Integer>> williams(int samples) {
        Checks.require(samples >= 2 && samples <= 10, "samples must be 2 to 10, got " + samples + ".");
        List<Integer> first = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            first.add(i % 2 == 1 ? (i + 1) / 2 : (samples - i / 2) % samples);
        }
        List<List<Integer>> orders = new ArrayList<>();
        for (int shift = 0; shift < samples; shift++) {
            int added = shift;
            orders.add(first.stream().map(s -> (s + added) % samples).toList());
        }
        if (samples % 2 == 1) {
            for (List<Integer> order : List.copyOf(orders)) {
                List<Integer> backward = new ArrayList<>();
                for (int i = samples - 1; i >= 0; i--) {
                    backward.add(order.get(i));
                }
                orders.add(List.copyOf(backward));
            }
        }
        return List.copyOf(orders);
    }

    /**
     * Hands out orders by lot so that none is used more than once more often than another. What does not divide evenly is taken from
     * the front of the list in pairs, as methods list an order next to its mirror image.
     *
     * @param orders the orders, an even number of them
     * @param sheets how many are needed, at least 1
     * @param random generator
     * @return an order for each sheet
     */
    static List<List<Integer>> assign(List<List<Integer>> orders, int sheets, SplittableRandom random) {
        List<List<Integer>> assigned = new ArrayList<>();
        while (sheets - assigned.size() >= orders.size()) {
            assigned.addAll(Shuffle.of(orders, random));
        }
        List<List<List<Integer>>> pairs = new ArrayList<>();
        for (int i = 0; i < orders.size(); i += 2) {
            pairs.add(orders.subList(i, Math.min(i + 2, orders.size())));
        }
        List<List<Integer>> rest = new ArrayList<>();
        for (List<List<Integer>> pair : Shuffle.of(pairs, random)) {
            rest.addAll(Shuffle.of(pair, random));
        }
        assigned.addAll(Shuffle.of(rest.subList(0, sheets - assigned.size()), random));
        return assigned;
    }
}
