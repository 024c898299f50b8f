package io.github.saltfront.safety;

/** Kinds of poultry that the official hold tables tell apart. */
public enum Bird {
    /** Chicken, with a table of its own. */
    CHICKEN,
    /** Turkey, with a table of its own. */
    TURKEY,
    /** Duck, goose, any other bird, or a mixture with poultry in it: the longer of the chicken and turkey holds. */
    OTHER
}
