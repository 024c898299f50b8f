package io.github.saltfront.plan;

import io.github.saltfront.words.Phrases;

/** What is uncertain in a plan; each has one dimension of the ensemble. */
public enum Uncertainty {
    /** Thickness of the piece against the stated one. */
    THICKNESS("thickness-of-the-piece"),
    /** True temperature of the appliance against its setting. */
    SETTING("true-temperature-of-the-appliance"),
    /** Convective or contact heat transfer coefficient. */
    CONVECTION("heat-transfer-by-air-or"),
    /** Emissivity of the surface. */
    EMISSIVITY("radiation-to-the-surface"),
    /** Share of the surface that evaporates. */
    WETNESS("wetness-of-the-surface"),
    /** Humidity of the appliance. */
    HUMIDITY("humidity-of-the-appliance"),
    /** Diffusion coefficient of salt. */
    DIFFUSIVITY("speed-of-salt-in-this"),
    /** Activation energy of salt diffusion. */
    ACTIVATION("temperature-effect-on-the-speed"),
    /** Partition of salt between meat and brine. */
    PARTITION("share-of-the-meat-s"),
    /** Start temperature of the piece. */
    START("start-temperature"),
    /** Juice the meat loses. */
    JUICE("juiciness-of-this-animal"),
    /** Water the meat takes up in a brine. */
    SWELLING("water-uptake-in-the-brine"),
    /** Conductivity of the meat. */
    CONDUCTIVITY("conductivity-of-the-meat"),
    /** Error of the thermometer. */
    PROBE("error-of-the-thermometer"),
    /** Heat transfer while resting. */
    REST("heat-loss-while-resting");

    private static final Phrases PHRASES = Phrases.of(Uncertainty.class);

    private final String words;

    Uncertainty(String words) {
        this.words = words;
    }

    /** Returns what it is in plain words. */
    public String words() {
        return PHRASES.say(words);
    }
}
