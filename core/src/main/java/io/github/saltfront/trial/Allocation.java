package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Which piece gets which treatment, by lot within each block, so that a good animal or package cannot favor one of them. Within
 * a block the treatments get as many pieces, or one more or less; so they do over all blocks together.
 *
 * @param assignments piece and treatment, in the order of the pieces
 */
public record Allocation(List<Assignment> assignments) {
    /** Copies the list. */
    public Allocation {
        assignments = List.copyOf(assignments);
    }

    /**
     * One piece.
     *
     * @param piece the piece
     * @param treatment which treatment, from 0
     */
    public record Assignment(Piece piece, int treatment) {}

    /**
     * Draws an allocation.
     *
     * @param pieces pieces with different names, at least one for each treatment
     * @param treatments number of treatments, 2 to 10
     * @param seed seed; the same one gives the same allocation
     * @return the allocation
     * @throws IllegalArgumentException if there are too few pieces or two of the same name
     */
    public static Allocation draw(List<Piece> pieces, int treatments, long seed) {
        Checks.require(treatments >= 2 && treatments <= 10, "treatments must be 2 to 10, got " + treatments + ".");
        Checks.require(
                pieces.size() >= treatments,
                treatments + " treatments need at least as many pieces, got " + pieces.size() + ".");
        Checks.require(
                pieces.stream().map(Piece::id).distinct().count() == pieces.size(),
                "two pieces have the same name; number them.");
        Map<String, List<Piece>> blocks = new LinkedHashMap<>();
        pieces.forEach(
                p -> blocks.computeIfAbsent(p.block(), b -> new ArrayList<>()).add(p));
        SplittableRandom random = new SplittableRandom(seed);
        Map<Piece, Integer> drawn = new LinkedHashMap<>();
        // what does not divide evenly comes from one running deck, so that no treatment is favored twice before all
        // were once
        List<Integer> deck = new ArrayList<>();
        for (List<Piece> block : blocks.values()) {
            List<Integer> labels = new ArrayList<>();
            for (int i = 0; i < block.size() / treatments * treatments; i++) {
                labels.add(i % treatments);
            }
            List<Integer> extra = extras(block.size() % treatments, treatments, deck, random);
            labels.addAll(extra);
            List<Integer> shuffled = Shuffle.of(labels, random);
            for (int i = 0; i < block.size(); i++) {
                drawn.put(block.get(i), shuffled.get(i));
            }
        }
        return new Allocation(pieces.stream()
                .map(p -> new Assignment(p, drawn.getOrDefault(p, 0)))
                .toList());
    }

    private static List<Integer> extras(int count, int treatments, List<Integer> deck, SplittableRandom random) {
        List<Integer> taken = new ArrayList<>();
        while (taken.size() < count) {
            if (deck.isEmpty()) {
                List<Integer> all = new ArrayList<>();
                for (int t = 0; t < treatments; t++) {
                    all.add(t);
                }
                // those already in this block go to the bottom, else the block would get one of them twice
                List<Integer> fresh = Shuffle.of(all, random);
                fresh.removeAll(taken);
                deck.addAll(fresh);
                deck.addAll(taken);
            }
            taken.add(deck.remove(0));
        }
        return taken;
    }

    /**
     * Returns the pieces of a treatment.
     *
     * @param treatment which, from 0
     * @return pieces in order
     */
    public List<Piece> piecesOf(int treatment) {
        return assignments.stream()
                .filter(a -> a.treatment() == treatment)
                .map(Assignment::piece)
                .toList();
    }
}
