package io.github.saltfront.units;

/** Which units a cook wants to read. */
public enum KitchenUnits {
    /** Gram, kilogram, millimeter, milliliter, °C. */
    METRIC,
    /** Ounce, pound, inch, cup, °F. */
    US
}
