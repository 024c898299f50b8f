package io.github.saltfront.units;

/**
 * Powers of the SI base units that make up a unit; two units measure the same kind of quantity if these agree.
 *
 * @param kilogram power of kg
 * @param meter power of m
 * @param second power of s
 * @param kelvin power of K
 * @param mole power of mol
 */
record Exponents(int kilogram, int meter, int second, int kelvin, int mole) {
    static final Exponents NONE = new Exponents(0, 0, 0, 0, 0);

    /** Returns these powers plus another unit's, taken {@code power} times. */
    Exponents plus(Exponents other, int power) {
        return new Exponents(
                kilogram + power * other.kilogram,
                meter + power * other.meter,
                second + power * other.second,
                kelvin + power * other.kelvin,
                mole + power * other.mole);
    }
}
