package io.github.saltfront.safety;

/**
 * What a history earned, on its conservative side.
 *
 * @param lethality share of the required hold
 * @param consumerMinimumMet whether the official consumer minimum was met
 */
public record Evidence(Lethality lethality, boolean consumerMinimumMet) {
    /**
     * Returns whether the evidence fulfills a rule by one of its routes.
     *
     * @param rule the rule
     * @return whether it does
     */
    public boolean meets(SafetyRule rule) {
        return consumerMinimumMet || (rule.allowsHold() && lethality.isFulfilled());
    }
}
