package io.github.saltfront.transport;

/** The stop rules of a {@link SolidSolver}: how far beyond the threshold, and where in the step it was passed. */
final class SolidEvents {
    private final SolidSolver solver;

    SolidEvents(SolidSolver solver) {
        this.solver = solver;
    }

    /** How far a watched quantity may be beyond its threshold at the end of a stage. */
    static double tolerance(StopRule rule) {
        return switch (rule.kind()) {
            case NEVER -> Double.POSITIVE_INFINITY;
            case CORE_ABOVE, CORE_BELOW, SURFACE_ABOVE, KILL_ABOVE -> 1e-4;
            case MEAN_SALT_ABOVE, CORE_SALT_ABOVE -> 1e-8;
        };
    }

    /** How far the watched quantity is beyond its threshold; negative before it is reached. */
    double value(StopRule rule, boolean atEnd) {
        return switch (rule.kind()) {
            case NEVER -> Double.NEGATIVE_INFINITY;
            case CORE_ABOVE -> solver.coreTemperature(atEnd) - rule.threshold();
            case CORE_BELOW -> rule.threshold() - solver.coreTemperature(atEnd);
            case SURFACE_ABOVE -> solver.faceTemperature(0, atEnd) - rule.threshold();
            case MEAN_SALT_ABOVE -> solver.meanSalt(atEnd) - rule.threshold();
            case CORE_SALT_ABOVE -> solver.coreSalt(atEnd) - rule.threshold();
            case KILL_ABOVE -> solver.kinetics().least(0, atEnd) - rule.threshold();
        };
    }

    /** Share of the step at which the event lies: by bisection of the core's dense output, by a straight line otherwise. */
    double theta(StopRule rule, double beyond) {
        if (rule.kind() == StopRule.Kind.CORE_ABOVE || rule.kind() == StopRule.Kind.CORE_BELOW) {
            double sign = rule.kind() == StopRule.Kind.CORE_ABOVE ? 1 : -1;
            double low = 0;
            double high = 1;
            for (int i = 0; i < 40; i++) {
                double middle = 0.5 * (low + high);
                if (sign * (solver.coreTemperature(middle) - rule.threshold()) > 0) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return Math.min(Math.max(high, 1e-3), 0.9999);
        }
        double before = value(rule, false);
        return Math.min(Math.max(before / (before - beyond), 1e-3), 0.999);
    }
}
