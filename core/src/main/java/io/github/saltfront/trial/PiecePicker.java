package io.github.saltfront.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/** Takes portions from pieces in turn. Not safe for several threads. */
final class PiecePicker {
    private final Allocation allocation;
    private final Map<Piece, Integer> left = new HashMap<>();
    private final SplittableRandom random;

    PiecePicker(Allocation allocation, int portionsPerPiece, SplittableRandom random) {
        this.allocation = allocation;
        this.random = random;
        allocation.assignments().forEach(a -> left.put(a.piece(), portionsPerPiece));
    }

    /** Returns the pieces for one plate, place by place. There must be portions enough in all. */
    List<String> pick(List<Integer> order) {
        boolean oneOfEach = order.stream().distinct().count() == order.size();
        List<String> picked = new ArrayList<>();
        Set<Piece> onPlate = new HashSet<>();
        for (int sample : order) {
            List<Piece> candidates = Shuffle.of(allocation.piecesOf(sample), random).stream()
                    .filter(p -> left(p) > 0)
                    .toList();
            Comparator<Piece> unused = Comparator.comparing(onPlate::contains);
            Comparator<Piece> fitting = Comparator.comparing(p -> sharesBlock(p, onPlate) != oneOfEach);
            Comparator<Piece> fullest = Comparator.comparing(p -> -left(p));
            Piece piece = candidates.stream()
                    .min(unused.thenComparing(onPlate.isEmpty() ? fullest : fitting.thenComparing(fullest)))
                    .orElseThrow(() -> new IllegalStateException("no portion of sample " + sample + " is left."));
            left.merge(piece, -1, Integer::sum);
            onPlate.add(piece);
            picked.add(piece.id());
        }
        return picked;
    }

    private int left(Piece piece) {
        return left.getOrDefault(piece, 0);
    }

    private static boolean sharesBlock(Piece piece, Set<Piece> onPlate) {
        return !piece.block().isEmpty()
                && onPlate.stream().anyMatch(p -> p.block().equals(piece.block()));
    }
}
