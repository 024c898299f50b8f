package io.github.saltfront.verification;

import java.util.List;
import java.util.function.Supplier;

/** The groups of exact solutions, each run once for all tests that need it. */
enum CheckedGroup {
    SER("convection from time zero: slab, cylinder, sphere", "share of the rise", 858, ConductionChecks::series),
    SERX("the same at places inside", "share of the rise", 72, ConductionChecks::inside),
    FOT("time to a core target", "share of the time", 120, ConductionChecks::times),
    LAG("medium that warms up exponentially", "share of the rise", 108, ConductionChecks::warmingMedium),
    REST("heat, then rest: height and time of the peak", "share of the rise, Fo", 108, ConductionChecks::rest),
    SEMI("semi-infinite solid", "share of the rise, m", 9, ConductionChecks::semiInfinite),
    STEF("freezing with a sharp front, smeared over 2 % of the fall", "share", 22, FreezingChecks::similarity),
    CRU("salt from a limited bath: slab, cylinder, sphere", "share of the uptake", 120, SaltChecks::limitedBath),
    DIF("salt from a bath of constant strength", "share of the uptake", 32, SaltChecks::infiniteBath),
    CRANK("salt: means, middles, limited baths", "share of the uptake", 231, SaltChecks::crankTable),
    DOSE("salt laid on the face at once", "share of the mean", 42, SaltChecks::surfaceDose);

    private final String content;
    private final String unit;
    private final int rows;
    private final Supplier<List<Check>> supplier;
    private List<Check> checks = List.of();

    CheckedGroup(String content, String unit, int rows, Supplier<List<Check>> supplier) {
        this.content = content;
        this.unit = unit;
        this.rows = rows;
        this.supplier = supplier;
    }

    String content() {
        return content;
    }

    String unit() {
        return unit;
    }

    int rows() {
        return rows;
    }

    synchronized List<Check> checks() {
        if (checks.isEmpty()) {
            checks = supplier.get();
        }
        return checks;
    }
}
