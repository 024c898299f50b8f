package io.github.saltfront.app.follow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What became of a heap of readings.
 *
 * @param accepted readings that are new and on the disk
 * @param known readings that were there already
 * @param refused messages, each with the numbers of the readings it is about, shortened
 * @param refusedCount how many were refused
 */
public record Receipt(int accepted, int known, Map<String, List<Integer>> refused, int refusedCount) {
    /** Readings that are taken at once. */
    public static final int MOST = 5000;

    private static final int MOST_MESSAGES = 20;
    private static final int MOST_NUMBERS = 50;

    static Receipt of(RunningCook.Taken taken) {
        Map<String, List<Integer>> few = new LinkedHashMap<>();
        int count = 0;
        for (Map.Entry<String, List<Integer>> entry : taken.refused().entrySet()) {
            count += entry.getValue().size();
            if (few.size() < MOST_MESSAGES) {
                List<Integer> numbers = entry.getValue();
                few.put(entry.getKey(), List.copyOf(numbers.subList(0, Math.min(MOST_NUMBERS, numbers.size()))));
            }
        }
        return new Receipt(taken.accepted(), taken.known(), few, count);
    }

    /** Returns whether nothing of it could be used. */
    public boolean isRefused() {
        return accepted == 0 && known == 0;
    }

    /** Returns it as content for a JSON writer. */
    public Map<String, Object> json() {
        List<Map<String, Object>> problems = new ArrayList<>();
        refused.forEach((message, numbers) ->
                problems.add(Map.of("field", field(numbers), "message", message, "readings", numbers)));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("accepted", accepted);
        json.put("known", known);
        json.put("refused", refusedCount);
        json.put("problems", problems);
        return json;
    }

    private static String field(List<Integer> numbers) {
        return "readings[" + numbers.get(0) + "]";
    }
}
