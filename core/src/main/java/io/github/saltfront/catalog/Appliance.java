package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A way to heat, rest or chill a piece: the medium around it.
 *
 * @param id key
 * @param name plain name
 * @param aliases other words
 * @param medium what touches the surface
 * @param bothFaces true if the medium is all around, false if it acts on one face at a time and the piece is turned
 * @param temperature temperatures it is used at [K]
 * @param setPointError half width of the 90 % band of the true against the set temperature [K]
 * @param convection convective or contact heat transfer coefficient, without radiation unless the provenance says
 *     overall [W/(m2.K)]
 * @param radiation exchange with walls or embers
 * @param evaporation how water leaves the surface
 * @param provenance where it comes from
 * @param tuning what a kitchen has learned about it
 */
public record Appliance(
        String id,
        String name,
        List<String> aliases,
        Medium medium,
        boolean bothFaces,
        Band temperature,
        double setPointError,
        Band convection,
        Radiation radiation,
        Evaporation evaporation,
        Provenance provenance,
        ApplianceTuning tuning)
        implements CatalogEntry {
    /** Copies the aliases and checks signs. */
    public Appliance {
        aliases = List.copyOf(aliases);
        Checks.requirePositive("heat transfer coefficient", convection.low(), "W/(m2.K)");
        Checks.requireInRange("set-point error", setPointError, 0, 100, "K");
    }

    /**
     * Creates an appliance of which nothing was learned.
     *
     * @param id key
     * @param name plain name
     * @param aliases other names
     * @param medium what touches the surface
     * @param bothFaces whether both faces are heated at once
     * @param temperature usual band of settings [K]
     * @param setPointError half width of the 90 % band of the true against the set temperature [K]
     * @param convection heat transfer coefficient by convection or contact [W/(m2.K)]
     * @param radiation radiation to the surface
     * @param evaporation how water leaves the surface
     * @param provenance where it comes from
     */
    public Appliance(
            String id,
            String name,
            List<String> aliases,
            Medium medium,
            boolean bothFaces,
            Band temperature,
            double setPointError,
            Band convection,
            Radiation radiation,
            Evaporation evaporation,
            Provenance provenance) {
        this(
                id,
                name,
                aliases,
                medium,
                bothFaces,
                temperature,
                setPointError,
                convection,
                radiation,
                evaporation,
                provenance,
                ApplianceTuning.NONE);
    }

    /**
     * Returns the same appliance with what a kitchen has learned about it.
     *
     * @param learned what was learned
     * @return the appliance
     */
    public Appliance tuned(ApplianceTuning learned) {
        return new Appliance(
                id,
                name,
                aliases,
                medium,
                bothFaces,
                temperature,
                setPointError,
                convection,
                radiation,
                evaporation,
                provenance,
                learned);
    }

    static Appliance read(CsvTable.Row row) {
        return new Appliance(
                row.text("id"),
                row.words("name"),
                Cells.aliases(row),
                Cells.constant(Medium.class, row, "medium"),
                row.text("faces").equals("both"),
                Cells.celsius(row, "temperature"),
                row.number("set_point_error_k"),
                Cells.band(row, "convection", "_w_m2k", 1),
                new Radiation(
                        Cells.band(row, "emissivity", "", 1),
                        Cells.band(row, "view_factor", "", 1),
                        row.findNumber("radiant_c").isEmpty()
                                ? Optional.empty()
                                : Optional.of(Cells.celsius(row, "radiant"))),
                Evaporation.read(row),
                Provenance.of(row));
    }

    /**
     * Tells whether a setting lies in the range the appliance is used at.
     *
     * @param setting temperature set [K]
     * @return true if it does
     */
    public boolean reaches(double setting) {
        return temperature.contains(setting);
    }

    /**
     * Returns the appliance with what an expert has measured in place of the table's figures; a measured figure has no band.
     *
     * @param coefficient convective or contact heat transfer coefficient [W/(m2.K)], if it is known
     * @param emissivity emissivity of the surface [-], if it is known
     * @param humidity relative humidity [-] at the temperature of the medium, if it is known
     * @return the appliance
     * @throws IllegalArgumentException if a figure is given that the appliance has no use for
     */
    public Appliance with(OptionalDouble coefficient, OptionalDouble emissivity, OptionalDouble humidity) {
        boolean dries = evaporation.kind() == Evaporation.Kind.TO_AIR;
        Checks.require(
                humidity.isEmpty() || dries,
                "a humidity has no effect in \"" + name + "\", where nothing evaporates into air; remove it.");
        Checks.require(
                emissivity.isEmpty() || radiation.emissivity().high() > 0,
                "an emissivity has no effect in \"" + name + "\", where radiation does not count; remove it.");
        return new Appliance(
                id,
                name,
                aliases,
                medium,
                bothFaces,
                temperature,
                setPointError,
                exactly(coefficient, convection),
                new Radiation(
                        exactly(emissivity, radiation.emissivity()),
                        radiation.viewFactor(),
                        radiation.sourceTemperature()),
                humidity.isEmpty()
                        ? evaporation
                        : new Evaporation(
                                evaporation.kind(),
                                evaporation.wetFractionBare(),
                                evaporation.wetFractionSkin(),
                                Optional.empty(),
                                Optional.of(Band.exactly(humidity.getAsDouble()))),
                provenance);
    }

    private static Band exactly(OptionalDouble value, Band otherwise) {
        return value.isPresent() ? Band.exactly(value.getAsDouble()) : otherwise;
    }

    /** What touches the surface. */
    public enum Medium {
        /** Air or smoke. */
        AIR,
        /** Air with embers or a glowing element in view. */
        RADIANT,
        /** Hot metal with a film of fat. */
        METAL_CONTACT,
        /** Hot fat all around. */
        OIL,
        /** Water or another liquid, with or without a bag. */
        LIQUID,
        /** Condensing steam. */
        STEAM
    }

    /**
     * Radiation to the surface, {@code q = emissivity viewFactor sigma (T_r^4 - T_s^4)}.
     *
     * @param emissivity emissivity of the meat [-]; 0 where radiation does not count
     * @param viewFactor share of the surface's view filled by the source [-]
     * @param sourceTemperature temperature of the source [K]; empty if it is that of the medium
     */
    public record Radiation(Band emissivity, Band viewFactor, Optional<Band> sourceTemperature) {
        /** Checks that both factors lie in 0 to 1. */
        public Radiation {
            Checks.requireInRange("emissivity", emissivity.low(), 0, emissivity.high(), "-");
            Checks.requireInRange("emissivity", emissivity.high(), 0, 1, "-");
            Checks.requireInRange("view factor", viewFactor.high(), 0, 1, "-");
        }
    }

    /**
     * How water leaves the surface.
     *
     * @param kind way of leaving
     * @param wetFractionBare share of a bare surface that evaporates as free water [-]
     * @param wetFractionSkin the same for a surface with skin [-]
     * @param vaporPressure vapor pressure of the medium [Pa], if it counts and is given so
     * @param relativeHumidity relative humidity of the medium [-], if it counts and is given so
     */
    public record Evaporation(
            Kind kind,
            double wetFractionBare,
            double wetFractionSkin,
            Optional<Band> vaporPressure,
            Optional<Band> relativeHumidity) {
        /** Checks the wet fractions, and that evaporation to air comes with a humidity. */
        public Evaporation {
            Checks.requireInRange("wet fraction of a bare surface", wetFractionBare, 0, 1, "-");
            Checks.requireInRange("wet fraction of a surface with skin", wetFractionSkin, 0, 1, "-");
            Checks.require(
                    (kind == Kind.TO_AIR) == (vaporPressure.isPresent() != relativeHumidity.isPresent()),
                    "Evaporation to air needs a vapor pressure or a relative humidity, and nothing else needs one.");
        }

        static Evaporation read(CsvTable.Row row) {
            return new Evaporation(
                    Cells.constant(Kind.class, row, "evaporation"),
                    row.number("wet_fraction_bare"),
                    row.number("wet_fraction_skin"),
                    Cells.findBand(row, "vapor_pressure", "_pa", 1),
                    Cells.findBand(row, "relative_humidity", "_pct", 0.01));
        }

        /** Ways in which water leaves. */
        public enum Kind {
            /** It does not: submerged, wrapped or steamed. */
            NONE,
            /** Into the air, by difference of vapor pressure. */
            TO_AIR,
            /** By boiling at the contact with metal or oil; the face stays at the boiling point while wet. */
            BOILING
        }
    }
}
