package io.github.saltfront.plan;

import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.words.Phrases;

/** Ways to say how strong a brine is. They differ by 6 % of the salt at 6 % and by about 20 % at 20 %. */
public enum StrengthBasis {
    /** Salt per mass of the salted water [kg/kg]; the program's own basis. */
    OF_SOLUTION("solution", "of-the-salted-water-by") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return new SaltStrength(value);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.saltFraction();
        }
    },
    /** Salt per mass of the water before the salt goes in [kg/kg]. */
    OF_WATER("water", "of-the-weight-of-the") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return SaltStrength.ofSaltPerWater(value);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.saltPerWater();
        }
    },
    /** Salt per volume of the water before the salt goes in [kg/m3]. */
    PER_LITER_OF_WATER("liter", "for-each-liter-of-water") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return SaltStrength.ofSaltPerWaterVolume(value, temperature);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.saltPerWaterVolume(temperature);
        }
    },
    /** Salt per volume of the finished brine [kg/m3]; 10 kg/m3 are 1 % weight by volume. */
    PER_LITER_OF_BRINE("liter-of-brine", "in-each-liter-of-finished") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return SaltStrength.ofSaltPerSolutionVolume(value, temperature);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.saltPerSolutionVolume(temperature);
        }
    },
    /** Share of the saturated brine, both as salt per mass of solution [-]. */
    OF_SATURATION("saturation", "of-what-the-water-can") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return SaltStrength.ofSaturation(value, temperature);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.saturationShare(temperature);
        }
    },
    /** Degrees salometer at 60 degrees Fahrenheit [-]. */
    SALOMETER("salometer", "degrees-salometer-at-60-f") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return SaltStrength.ofSalometer(value);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.salometer();
        }
    },
    /** Density of the brine, as a hydrometer reads it in salt water without sugar [kg/m3]. */
    DENSITY("density", "density-of-the-brine") {
        @Override
        public SaltStrength read(double value, double temperature) {
            return SaltStrength.ofDensity(value, temperature);
        }

        @Override
        public double write(SaltStrength strength, double temperature) {
            return strength.density(temperature);
        }
    };

    private static final Phrases PHRASES = Phrases.of(StrengthBasis.class);

    private final String id;
    private final String words;

    StrengthBasis(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** Returns the short word by which a user names the basis. */
    public String id() {
        return id;
    }

    /** Returns the basis in plain words, to stand behind a number. */
    public String words() {
        return PHRASES.say(words);
    }

    /**
     * Returns the strength a value stands for.
     *
     * @param value value on this basis, unit as stated at the constant
     * @param temperature temperature at which volumes, density and saturation are taken [K]
     * @return the strength
     * @throws IllegalArgumentException if the value is NaN, negative or beyond what can dissolve
     */
    public abstract SaltStrength read(double value, double temperature);

    /**
     * Returns a strength on this basis.
     *
     * @param strength the strength
     * @param temperature temperature at which volumes, density and saturation are taken [K]
     * @return value, unit as stated at the constant
     */
    public abstract double write(SaltStrength strength, double temperature);
}
