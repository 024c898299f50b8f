package io.github.saltfront.bench;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.TimeProfile;

/** What is computed of each slab. */
enum SlabCase {
    CONSTANT("constant properties"),
    CHOI_OKOS("Choi-Okos"),
    WET("Choi-Okos, radiation, evaporation");

    /** Lean raw beef in round numbers. */
    static final Composition MEAT = new Composition(0.74, 0.215, 0.03, 0.005, 0.01);

    static final double PRESSURE = 101_325;
    static final double EMISSIVITY = 0.9;

    /** Salt does not move here; the values only fill a place. */
    private static final SaltProperties SALT = new SaltProperties(3e-10, 25_000, 1, 0, 0);

    final String title;

    SlabCase(String title) {
        this.title = title;
    }

    HeatProperties heat() {
        return this == CONSTANT ? HeatProperties.constant(1060, 3500, 0.48, MEAT.waterPerSolids()) : MeatHeat.of(MEAT);
    }

    Member member(Slab slab, HeatProperties heat) {
        InitialState start = new InitialState(slab.start(), MEAT.waterPerSolids(), 0);
        return new Member(slab.extent(), 1, start, heat, SALT, true);
    }

    FaceCondition face(Slab slab) {
        return this == WET
                ? new FaceCondition(
                        TimeProfile.constant(slab.medium()),
                        TimeProfile.constant(slab.coefficient()),
                        EMISSIVITY,
                        slab.wetShare(),
                        slab.vaporPressure(),
                        PRESSURE)
                : FaceCondition.convection(slab.medium(), slab.coefficient());
    }
}
