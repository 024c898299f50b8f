package io.github.saltfront.plan;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Checks;

/** What the meat lies in, and how much liquid covers it there. */
public sealed interface Vessel {
    /**
     * Returns the liquid that covers the meat [m3]. Of a measured vessel it is what fills it to a little above the meat, less
     * what the meat displaces; of others the table of common ratios.
     *
     * @param meat the meat
     * @return volume of liquid with its band [m3]
     */
    Band liquidToCover(Load meat);

    /** Returns the ratios and rooms of common practice for this vessel. */
    Practice practice();

    /**
     * Meat in a vessel.
     *
     * @param mass mass as bought [kg]
     * @param density its density [kg/m3]
     * @param height how high the highest piece lies [m]
     */
    record Load(double mass, double density, double height) {
        /** Checks the values. */
        public Load {
            Checks.requirePositive("mass of the meat", mass, "kg");
            Checks.requireInRange("density of the meat", density, 800, 1300, "kg/m3");
            Checks.requireInRange("height of the meat", height, 0.001, 2, "m");
        }

        /** Returns the volume it displaces [m3]. */
        public double volume() {
            return mass / density;
        }
    }

    /**
     * A round pot with a flat bottom.
     *
     * @param diameter inner diameter [m]
     */
    record Pot(double diameter) implements Vessel {
        /** Checks the diameter. */
        public Pot {
            Checks.requireInRange("diameter of the pot", diameter, 0.05, 2, "m");
        }

        @Override
        public Band liquidToCover(Load meat) {
            return covered(Math.PI / 4 * diameter * diameter, meat, practice());
        }

        @Override
        public Practice practice() {
            return Practice.of("tub");
        }
    }

    /**
     * A tub with a flat rectangular bottom.
     *
     * @param length inner length [m]
     * @param width inner width [m]
     */
    record Tub(double length, double width) implements Vessel {
        /** Checks the lengths. */
        public Tub {
            Checks.requireInRange("length of the tub", length, 0.05, 3, "m");
            Checks.requireInRange("width of the tub", width, 0.05, 3, "m");
        }

        @Override
        public Band liquidToCover(Load meat) {
            return covered(length * width, meat, practice());
        }

        @Override
        public Practice practice() {
            return Practice.of("tub");
        }
    }

    /**
     * A vessel that was not measured.
     *
     * @param kind {@code bag}, {@code tub} or {@code bird-in-pot}
     */
    record Unmeasured(String kind) implements Vessel {
        /** Checks the kind. */
        public Unmeasured {
            Practice.of(kind);
        }

        @Override
        public Band liquidToCover(Load meat) {
            return practice().volumePerMeat().times(meat.mass());
        }

        @Override
        public Practice practice() {
            return Practice.of(kind);
        }
    }

    /** A vessel holds what it holds: the band is the height of the meat, a tenth either way. */
    private static Band covered(double area, Load meat, Practice practice) {
        double height = meat.height() + practice.cover();
        double liquid = area * height - meat.volume();
        Checks.require(
                liquid > 0,
                "the vessel must be wide enough for the meat: its bottom of " + area + " m2 filled to " + height
                        + " m holds less than the " + meat.volume() + " m3 of the meat; take a wider one or stack.");
        double spread = 0.1 * area * meat.height();
        return new Band(Math.max(0, liquid - spread), liquid, liquid + spread);
    }

    /**
     * What is common for a kind of vessel.
     *
     * @param id kind
     * @param name plain name
     * @param volumePerMeat liquid per mass of meat as bought [m3/kg]
     * @param headRoom room to leave between liquid and rim [m]
     * @param cover height of liquid above the meat [m]
     * @param provenance where it comes from
     */
    record Practice(String id, String name, Band volumePerMeat, double headRoom, double cover, Provenance provenance) {
        private static final double LITER = 1e-3;
        private static final double MILLIMETER = 1e-3;

        /**
         * Returns the row of a kind.
         *
         * @param id {@code bag}, {@code tub} or {@code bird-in-pot}
         * @return the row
         * @throws io.github.saltfront.data.DataException if there is none
         */
        public static Practice of(String id) {
            CsvTable.Row row = CsvTable.load(Vessel.class, "covering.csv").row("id", id);
            Band perMass = new Band(
                            row.number("liters_per_kg_low"),
                            row.number("liters_per_kg"),
                            row.number("liters_per_kg_high"))
                    .times(LITER);
            return new Practice(
                    id,
                    row.words("name"),
                    perMass,
                    row.number("head_room_mm") * MILLIMETER,
                    row.number("cover_mm") * MILLIMETER,
                    Provenance.of(row));
        }
    }
}
