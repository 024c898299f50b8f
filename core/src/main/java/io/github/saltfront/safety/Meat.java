package io.github.saltfront.safety;

import java.util.Optional;

/** What lies on the board, as far as the official rules tell meats apart. */
public enum Meat {
    /** Chicken, whole, in parts or ground. */
    CHICKEN(Bird.CHICKEN, "poultry", "poultry"),
    /** Turkey, whole, in parts or ground. */
    TURKEY(Bird.TURKEY, "poultry", "poultry"),
    /** Duck, goose or another bird. */
    OTHER_POULTRY(Bird.OTHER, "poultry", "poultry"),
    /** Anything with poultry in it: it counts as poultry. */
    MIXED_WITH_POULTRY(Bird.OTHER, "ground-poultry", "poultry"),
    /** Beef, pork, lamb or veal in one piece that nothing has pierced. */
    INTACT(null, "intact-meat", "intact"),
    /** The same meats ground. */
    GROUND(null, "ground-meat", "non-intact"),
    /**
     * The same meats pierced by blades or needles, tumbled under vacuum or stuffed: their inside counts as contaminated. The consumer chart has no
     * line for them, so that for ground meat is used, which asks for more than that for whole cuts.
     */
    TENDERIZED_OR_INJECTED(null, "ground-meat", "non-intact"),
    /** Fish and shellfish. No official table trades temperature for time here: only the minimum counts. */
    FISH(null, "fish", "intact");

    private final Optional<Bird> bird;
    private final String consumerId;
    private final String foodCodeClass;

    Meat(@org.jspecify.annotations.Nullable Bird bird, String consumerId, String foodCodeClass) {
        this.bird = Optional.ofNullable(bird);
        this.consumerId = consumerId;
        this.foodCodeClass = foodCodeClass;
    }

    /** Returns the poultry table that applies, or empty for meat without poultry. */
    public Optional<Bird> bird() {
        return bird;
    }

    /** Returns whether only the outside of the piece can carry bacteria of concern. */
    public boolean isIntact() {
        return this == INTACT;
    }

    String consumerId() {
        return consumerId;
    }

    String foodCodeClass() {
        return foodCodeClass;
    }
}
