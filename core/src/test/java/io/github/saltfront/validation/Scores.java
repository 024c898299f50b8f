package io.github.saltfront.validation;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Figures of merit over rows. */
final class Scores {
    private Scores() {}

    static <T> double rootMeanSquare(List<T> rows, ToDoubleFunction<T> error) {
        return Math.sqrt(
                rows.stream().mapToDouble(error).map(e -> e * e).average().orElse(0));
    }

    static <T> double mean(List<T> rows, ToDoubleFunction<T> error) {
        return rows.stream().mapToDouble(error).average().orElse(0);
    }

    static <T> double share(List<T> rows, Predicate<T> fulfilled) {
        return rows.stream()
                .mapToDouble(r -> fulfilled.test(r) ? 1 : 0)
                .average()
                .orElse(0);
    }
}
