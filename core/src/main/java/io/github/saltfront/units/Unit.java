package io.github.saltfront.units;

/**
 * A unit as a multiple of SI. Scales with an offset (°C, °F) are held as their degree; {@link QuantityParser} adds the offset
 * where a temperature is asked for.
 *
 * @param symbol name used to tell the temperature scales apart
 * @param factor value of one of this unit in SI base units without multiples
 * @param exponents its powers of the base units
 */
record Unit(String symbol, double factor, Exponents exponents) {
    static final Unit ONE = new Unit("", 1, Exponents.NONE);

    Unit times(Unit other, int power) {
        String joined = symbol.isEmpty() && power == 1 ? other.symbol : symbol + "." + other.symbol;
        return new Unit(joined, factor * raise(other.factor, power), exponents.plus(other.exponents, power));
    }

    /** Divides for negative powers, so that 1/0.01 and not the rounded reciprocal is taken. */
    private static double raise(double base, int power) {
        double result = 1;
        for (int i = 0; i < Math.abs(power); i++) {
            result *= base;
        }
        return power < 0 ? 1 / result : result;
    }
}
