package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Who gets what, coded and in which order, all by lot from one seed. Orders are used equally often, or as nearly as the number
 * of tasters allows. Portions come from pieces in turn: where a plate holds every sample once, from one block if it has them
 * all, so that the animal is the same; where it holds a sample twice, from different pieces, so that a taster cannot tell
 * the odd one by its animal alone.
 *
 * @param request what was asked for
 * @param allocation which piece gets which treatment
 * @param sheets portions of each taster and round
 * @param portions portions needed of each sample [-]
 */
public record TrialDesign(TrialRequest request, Allocation allocation, List<Sheet> sheets, List<Integer> portions) {
    /** Mark of a reference in place of a code. */
    public static final String REFERENCE = "R";

    private static final long ORDERS = 1;
    private static final long CODES = 2;
    private static final long PIECES = 3;

    /** Copies the lists. */
    public TrialDesign {
        sheets = List.copyOf(sheets);
        portions = List.copyOf(portions);
    }

    /**
     * Draws a design.
     *
     * @param request what the trial is about
     * @return the design
     * @throws IllegalArgumentException if there is not enough meat or there are more portions than codes
     */
    public static TrialDesign draw(TrialRequest request) {
        int samples = request.samples().size();
        int count = request.tasters() * request.rounds();
        // each lot has its own generator, so that another number of pieces leaves the orders as they were
        SplittableRandom orderLot = new SplittableRandom(request.seed() * 31 + ORDERS);
        List<List<Integer>> orders = ServingOrders.assign(request.protocol().orders(samples), count, orderLot);
        int coded = orders.get(0).size() - (request.protocol().hasReference() ? 1 : 0);
        List<List<String>> codes = SampleCodes.draw(count, coded, request.seed() * 31 + CODES);
        Allocation allocation = Allocation.draw(request.pieces(), samples, request.seed());
        List<Integer> portions = portions(orders, samples);
        requireMeat(request, allocation, portions);
        PiecePicker picker = new PiecePicker(
                allocation, request.portionsPerPiece(), new SplittableRandom(request.seed() * 31 + PIECES));
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int taster = i / request.rounds() + 1;
            int round = i % request.rounds() + 1;
            sheets.add(new Sheet(taster, round, servings(request, orders.get(i), codes.get(i), picker)));
        }
        return new TrialDesign(request, allocation, sheets, portions);
    }

    private static List<Serving> servings(
            TrialRequest request, List<Integer> order, List<String> codes, PiecePicker picker) {
        List<String> pieces = picker.pick(order);
        List<Serving> servings = new ArrayList<>();
        int shift = request.protocol().hasReference() ? 1 : 0;
        for (int place = 0; place < order.size(); place++) {
            String code = place < shift ? REFERENCE : codes.get(place - shift);
            servings.add(new Serving(code, order.get(place), pieces.get(place)));
        }
        return servings;
    }

    private static List<Integer> portions(List<List<Integer>> orders, int samples) {
        int[] counts = new int[samples];
        orders.forEach(order -> order.forEach(sample -> counts[sample]++));
        List<Integer> portions = new ArrayList<>();
        for (int count : counts) {
            portions.add(count);
        }
        return portions;
    }

    private static void requireMeat(TrialRequest request, Allocation allocation, List<Integer> portions) {
        for (int sample = 0; sample < portions.size(); sample++) {
            int has = allocation.piecesOf(sample).size() * request.portionsPerPiece();
            int per = request.portionsPerPiece();
            Checks.require(
                    has >= portions.get(sample),
                    "the trial needs " + portions.get(sample) + " portions of \""
                            + request.samples().get(sample) + "\", got pieces for " + has + "; take "
                            + (portions.get(sample) + per - 1) / per
                            + " pieces for each sample, or cut smaller portions.");
        }
    }

    /**
     * Returns how often each serving order is used.
     *
     * @return order and number of sheets, in the order of the protocol
     */
    public Map<List<Integer>, Integer> orderCounts() {
        Map<List<Integer>, Integer> counts = new LinkedHashMap<>();
        request.protocol().orders(request.samples().size()).forEach(order -> counts.put(order, 0));
        for (Sheet sheet : sheets) {
            counts.merge(sheet.servings().stream().map(Serving::sample).toList(), 1, Integer::sum);
        }
        return counts;
    }

    /** Returns how many more tasters would use all orders equally often [-]; 0 if they are. */
    public int tastersToBalance() {
        int orders = request.protocol().orders(request.samples().size()).size();
        int more = 0;
        while ((request.tasters() + more) * request.rounds() % orders != 0) {
            more++;
        }
        return more;
    }
}
