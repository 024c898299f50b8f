package io.github.saltfront.plan;

/**
 * What a way of doing it comes to, as medians of a few members: good for comparing ways of the same request, whose members have
 * the same luck, and no promise.
 *
 * @param weightLeft weight served per raw weight [kg/kg]
 * @param tenderness share of muscle protein still soft, or of collagen dissolved in cuts rich in it; 0 where nothing is known [-]
 * @param evenness salt of the middle per mean salt when served, at most 1 [-]
 * @param outside temperature of the surface when it comes out of the heat [K]
 * @param work minutes of work [min]
 * @param wholeTime time from the first step to serving [s]
 * @param sodium sodium of a serving of {@link BrineSheet#SERVING} [kg]
 * @param meanSalt mean salt when served [kg/kg]
 * @param pullTemperature reading at which it comes out [K]
 */
public record Outcome(
        double weightLeft,
        double tenderness,
        double evenness,
        double outside,
        double work,
        double wholeTime,
        double sodium,
        double meanSalt,
        double pullTemperature) {

    /**
     * Returns what counts for a wish.
     *
     * @param wish the wish
     * @return the value [kg/kg, K, min, s or kg]
     */
    public double value(Wish wish) {
        return switch (wish) {
            case JUICE -> weightLeft;
            case TENDER -> tenderness;
            case EVEN_SALT -> evenness;
            case CRISP_SKIN -> outside;
            case LITTLE_WORK -> work;
            case SHORT -> wholeTime;
            case LOW_SODIUM -> sodium;
        };
    }
}
