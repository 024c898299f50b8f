package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Checks;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What a cook has and wants, in SI units.
 *
 * @param food the meat on the board
 * @param salting what salt there is and how it may be used
 * @param cook how it is cooked
 * @param taste what is liked
 * @param timing when it is
 * @param guests who eats
 * @param equipment what the kitchen has
 * @param assumptions what was not said and is assumed
 */
public record Request(
        Food food,
        Salting salting,
        Cook cook,
        Taste taste,
        Timing timing,
        Guests guests,
        Equipment equipment,
        List<Assumption> assumptions) {

    /** Copies the list. */
    public Request {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Creates a request of a kitchen with the usual equipment.
     *
     * @param food the meat on the board
     * @param salting what salt there is and how it may be used
     * @param cook how it is cooked
     * @param taste what is liked
     * @param timing when it is
     * @param guests who eats
     * @param assumptions what was not said and is assumed
     */
    public Request(
            Food food,
            Salting salting,
            Cook cook,
            Taste taste,
            Timing timing,
            Guests guests,
            List<Assumption> assumptions) {
        this(food, salting, cook, taste, timing, guests, Equipment.USUAL, assumptions);
    }

    /** Returns how many pieces are in the heat at once. */
    public int piecesAtOnce() {
        return Math.min(food.pieces(), equipment.load().orElse(food.pieces()));
    }

    /**
     * Returns the same request for another meat.
     *
     * @param other the meat
     * @return the request
     */
    public Request of(Food other) {
        return new Request(other, salting, cook, taste, timing, guests, equipment, assumptions);
    }

    /**
     * Returns the same request salted in another way.
     *
     * @param other how it is salted
     * @return the request
     */
    public Request salted(Salting other) {
        return new Request(food, other, cook, taste, timing, guests, equipment, assumptions);
    }

    /**
     * Returns the same request for another taste.
     *
     * @param other the taste
     * @return the request
     */
    public Request tasting(Taste other) {
        return new Request(food, salting, cook, other, timing, guests, equipment, assumptions);
    }

    /**
     * Returns the same request for another time.
     *
     * @param other the time
     * @return the request
     */
    public Request at(Timing other) {
        return new Request(food, salting, cook, taste, other, guests, equipment, assumptions);
    }

    /**
     * Returns the same request for other guests.
     *
     * @param other the guests
     * @return the request
     */
    public Request servedTo(Guests other) {
        return new Request(food, salting, cook, taste, timing, other, equipment, assumptions);
    }

    /**
     * Returns the same request for another cook.
     *
     * @param other the cook
     * @return the request
     */
    public Request cookedBy(Cook other) {
        return new Request(food, salting, other, taste, timing, guests, equipment, assumptions);
    }

    /**
     * Something that was not said and is assumed.
     *
     * @param field field of the request
     * @param value assumed value, for people
     * @param reason why, or the source
     */
    public record Assumption(String field, String value, String reason) {}

    /**
     * The meat on the board.
     *
     * @param cut the cut, if it is one of the catalog
     * @param meat what the models need to know of it
     * @param shape shape of one piece
     * @param pieces number of pieces
     * @param pieceMass mass of one piece [kg]
     * @param edibleShare share of the mass that takes salt: all but bone [-]
     * @param startTemperature temperature of the meat [K]
     */
    public record Food(
            Optional<Cut> cut,
            MeatModel meat,
            Shape shape,
            int pieces,
            double pieceMass,
            double edibleShare,
            double startTemperature) {
        /** Checks the values. */
        public Food {
            Checks.requireInRange("number of pieces", pieces, 1, 500, "-");
            Checks.requireInRange("mass of one piece", pieceMass, 0.005, 40, "kg");
            Checks.requireInRange("edible share", edibleShare, 0.1, 1, "-");
        }

        /** Returns the mass of all pieces [kg]. */
        public double mass() {
            return pieces * pieceMass;
        }

        /**
         * Returns another number of the same pieces.
         *
         * @param number number of pieces
         * @return the meat
         */
        public Food times(int number) {
            return new Food(cut, meat, shape, number, pieceMass, edibleShare, startTemperature);
        }
    }

    /** How the meat may be salted. */
    public enum Treatment {
        /** Let the program choose. */
        AUTO,
        /** Soak in salt water, or in another liquid of a given strength, for a time. */
        WET_BRINE,
        /** Soak in a bath so weak that the meat ends at the target and cannot pass it. */
        EQUILIBRIUM,
        /** Soak in cultured milk with salt. */
        DAIRY,
        /** Soak in a seasoned or acid liquid with salt. */
        MARINADE,
        /** Salt on the surface, then wait uncovered in the refrigerator. */
        DRY_SALT,
        /** Salt on the surface just before the heat. */
        SURFACE_SALT,
        /** No salt beforehand. */
        NONE;

        /** Tells whether the meat lies in a liquid. */
        public boolean isSoak() {
            return this == WET_BRINE || this == EQUILIBRIUM || this == DAIRY || this == MARINADE;
        }
    }

    /**
     * What salt there is and how it may be used.
     *
     * @param treatment wish
     * @param salt salt at hand
     * @param strength strength of the brine as salt per mass of water [kg/kg], if it is given
     * @param time time of salting [s], if it is given
     * @param liquor what the meat may lie in
     * @param refrigerator temperature of the refrigerator [K]
     * @param label what the meat held when it was bought
     */
    public record Salting(
            Treatment treatment,
            SaltForm salt,
            OptionalDouble strength,
            OptionalDouble time,
            Liquor liquor,
            double refrigerator,
            SaltedAlready label) {}

    /**
     * What the meat may lie in.
     *
     * @param liquid the liquid, if one is named; water, or what the treatment is known for, otherwise
     * @param vessel the vessel, if one is named; what suits the treatment otherwise
     * @param perMeat liquid per mass of meat as bought [kg/kg], if it is given; goes before the vessel
     * @param sugarPerSalt sugar per mass of added salt [kg/kg], 0 to 1
     */
    public record Liquor(
            Optional<Liquid> liquid, Optional<Vessel> vessel, OptionalDouble perMeat, double sugarPerSalt) {
        /** Water from the tap, as much as it takes. */
        public static final Liquor USUAL = new Liquor(Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0);

        /** Checks the values. */
        public Liquor {
            perMeat.ifPresent(ratio -> Checks.requireInRange("liquid per mass of meat", ratio, 0.2, 20, "kg/kg"));
            Checks.requireInRange("sugar per added salt", sugarPerSalt, 0, 1, "kg/kg");
        }
    }

    /**
     * How it is cooked.
     *
     * @param appliance appliance
     * @param setting temperature it is set to [K]
     * @param altitude height above the sea [m]
     * @param sequence what comes before and after, and how the appliance is used
     */
    public record Cook(Appliance appliance, double setting, double altitude, CookSequence sequence) {
        /**
         * Creates a cook in one appliance, used as usual.
         *
         * @param appliance appliance
         * @param setting temperature it is set to [K]
         * @param altitude height above the sea [m]
         */
        public Cook(Appliance appliance, double setting, double altitude) {
            this(appliance, setting, altitude, CookSequence.ALONE);
        }

        /** Returns the appliances of all stages of heat. */
        public List<Appliance> appliances() {
            return Stream.of(
                            sequence.before().stream().map(CookSequence.Step::appliance),
                            Stream.of(appliance),
                            sequence.after().stream().map(CookSequence.Step::appliance))
                    .flatMap(all -> all)
                    .toList();
        }

        /**
         * Returns the same cook with another main appliance.
         *
         * @param other the appliance
         * @return the cook
         */
        public Cook in(Appliance other) {
            return new Cook(other, setting, altitude, sequence);
        }
    }

    /**
     * What is liked.
     *
     * @param rawSalt mean salt of the raw salted meat to aim at, native salt included [kg/kg]
     * @param core core temperature to serve at, if it is given [K]
     * @param sodiumLimit most sodium of a cooked serving of {@link BrineSheet#SERVING} [kg], if it is limited
     * @param wishes what is wished for most, first the most; empty to let the rule for the cut decide
     */
    public record Taste(double rawSalt, OptionalDouble core, OptionalDouble sodiumLimit, List<Wish> wishes) {
        /** Checks the values and copies the list. */
        public Taste {
            wishes = List.copyOf(wishes);
            sodiumLimit.ifPresent(limit -> Checks.requireInRange("sodium of a serving", limit, 1e-6, 0.01, "kg"));
        }

        /**
         * Leaves the choice to the rule for the cut.
         *
         * @param rawSalt mean salt of the raw salted meat to aim at, native salt included [kg/kg]
         * @param core core temperature to serve at, if it is given [K]
         * @param sodiumLimit most sodium of a cooked serving of {@link BrineSheet#SERVING} [kg], if it is limited
         */
        public Taste(double rawSalt, OptionalDouble core, OptionalDouble sodiumLimit) {
            this(rawSalt, core, sodiumLimit, List.of());
        }
    }

    /**
     * When it is.
     *
     * @param now present time
     * @param serve time to serve; empty for as soon as possible
     */
    public record Timing(ZonedDateTime now, Optional<ZonedDateTime> serve) {}

    /**
     * Who eats.
     *
     * @param count number of guests
     * @param vulnerable whether any is pregnant, a small child, old, or of weak immunity
     * @param kitchen whose kitchen it is
     */
    public record Guests(int count, boolean vulnerable, io.github.saltfront.safety.Kitchen kitchen) {}

    /**
     * What the kitchen has.
     *
     * @param scale whether there is a scale; spoons and cups come first without one
     * @param thermometer whether there is a thermometer for the middle of the meat; without one only the official minimum counts,
     *     and the slowest of all pieces sets the time
     * @param load most pieces that the appliance takes at once; empty for all
     * @param others other appliances at hand, which a search may use as well
     */
    public record Equipment(boolean scale, boolean thermometer, OptionalInt load, List<Appliance> others) {
        /** A scale, a thermometer, room for all pieces, and only the appliance that is named. */
        public static final Equipment USUAL = new Equipment(true, true, OptionalInt.empty(), List.of());

        /** Checks the load and copies the list. */
        public Equipment {
            load.ifPresent(pieces -> Checks.requireInRange("pieces at once", pieces, 1, 500, "-"));
            others = List.copyOf(others);
        }

        /**
         * Returns the same with another load.
         *
         * @param pieces most pieces at once
         * @return the equipment
         */
        public Equipment loading(int pieces) {
            return new Equipment(scale, thermometer, OptionalInt.of(pieces), others);
        }
    }
}
