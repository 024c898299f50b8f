package io.github.saltfront.plan;

import java.util.EnumMap;
import java.util.Map;

/** Minutes a cook is busy with a step; estimates for a home kitchen, common practice, no source. */
public final class Effort {
    private static final double MIXING_A_BATH = 10;
    private static final double PER_PIECE = 0.5;
    private static final Map<Plan.StepKind, Double> MINUTES = new EnumMap<>(Map.of(
            Plan.StepKind.THAW, 2.0,
            Plan.StepKind.SALT, 4.0,
            Plan.StepKind.PAT_DRY, 3.0,
            Plan.StepKind.SALT_OUTSIDE, 2.0,
            Plan.StepKind.PREHEAT, 1.0,
            Plan.StepKind.COOK, 3.0,
            Plan.StepKind.NEXT, 4.0,
            Plan.StepKind.WATCH, 5.0,
            Plan.StepKind.REST, 2.0,
            Plan.StepKind.SERVE, 5.0));

    private Effort() {}

    /**
     * Returns the minutes of work of a step.
     *
     * @param kind the step
     * @param treatment how the meat is salted
     * @param pieces number of pieces
     * @return minutes [min]
     */
    public static double minutes(Plan.StepKind kind, Request.Treatment treatment, int pieces) {
        double handling = switch (kind) {
            case SALT, PAT_DRY, SALT_OUTSIDE, COOK, NEXT -> PER_PIECE * pieces;
            default -> 0;
        };
        double bath = kind == Plan.StepKind.SALT && treatment.isSoak() ? MIXING_A_BATH : 0;
        return MINUTES.getOrDefault(kind, 0.0) + handling + bath;
    }

    /** Minutes of work of a whole way. */
    static double of(Plan.SaltPlan salting, CookSequence sequence, int pieces) {
        double next = minutes(Plan.StepKind.NEXT, salting.treatment(), pieces);
        double sum = next * (sequence.before().size() + sequence.after().size());
        for (Plan.StepKind kind : Plan.StepKind.values()) {
            if (kind == Plan.StepKind.NEXT || kind == Plan.StepKind.THAW) {
                continue;
            }
            boolean ahead = kind == Plan.StepKind.SALT || kind == Plan.StepKind.PAT_DRY;
            boolean outside = salting.treatment() == Request.Treatment.SURFACE_SALT || salting.finish() > 0;
            boolean happens = ahead ? salting.time() > 0 : kind != Plan.StepKind.SALT_OUTSIDE || outside;
            sum += happens ? minutes(kind, salting.treatment(), pieces) : 0;
        }
        return sum;
    }
}
