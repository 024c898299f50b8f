package io.github.saltfront.plan;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutComposition;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.matter.Composition;
import io.github.saltfront.quality.Band;
import io.github.saltfront.safety.Meat;
import io.github.saltfront.words.Phrases;
import java.util.Locale;

/**
 * What the models need to know of a meat, from a cut of the catalog or from a composition of one's own.
 *
 * @param name plain name
 * @param species animal
 * @param composition composition of the edible part
 * @param nativeSalt salt it has before seasoning [kg/kg]
 * @param diffusivity how fast salt moves in it
 * @param juiceFactor factor on its juice [-]
 * @param safety what it is to the official rules
 * @param hasSkin whether skin is on
 */
public record MeatModel(
        String name,
        String species,
        Composition composition,
        double nativeSalt,
        SaltDiffusivity diffusivity,
        Band juiceFactor,
        Meat safety,
        boolean hasSkin) {
    private static final Phrases PHRASES = Phrases.of(MeatModel.class);

    /**
     * Returns the model of a cut.
     *
     * @param cut the cut
     * @return the model
     */
    public static MeatModel of(Cut cut) {
        CutComposition printed = cut.composition();
        return new MeatModel(
                cut.name(),
                cut.species(),
                Composition.ofPrinted(
                        printed.water(), printed.protein(), printed.fat(), printed.carbohydrate(), printed.ash()),
                printed.nativeSalt(),
                cut.saltDiffusivity(),
                cut.juice().factor(),
                safetyOf(cut),
                cut.traits().hasSkin());
    }

    /**
     * Returns the model of a composition of one's own, with the rest taken from the nearest relative in the catalog.
     *
     * @param composition composition of the meat, its sum 1
     * @param species animal, a species of the catalog
     * @param catalog the catalog
     * @return the model
     * @throws IllegalArgumentException if the catalog has no such species
     */
    public static MeatModel of(Composition composition, String species, Catalog catalog) {
        Cut relative = catalog.cuts().all().stream()
                .filter(cut ->
                        cut.species().equals(species) && !cut.treatmentClass().equals("enhanced"))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(PHRASES.say(
                        "species-must-be-one-of",
                        catalog.cuts().all().stream()
                                .map(Cut::species)
                                .distinct()
                                .toList(),
                        species)));
        return new MeatModel(
                PHRASES.say(
                        "of-your-own-composition",
                        PHRASES.find("species." + species).orElse(species)),
                species,
                composition,
                relative.composition().nativeSalt(),
                relative.saltDiffusivity(),
                relative.juice().factor(),
                safetyOf(relative),
                false);
    }

    /**
     * Returns the same meat with what its label says: the salt it holds, and that a solution was put into it with needles.
     *
     * @param label the label
     * @return the meat
     */
    public MeatModel labelled(SaltedAlready label) {
        boolean injected = label.solutionPerMeat().orElse(0) > 0 && safety == Meat.INTACT;
        return new MeatModel(
                name,
                species,
                composition,
                label.salt(),
                diffusivity,
                juiceFactor,
                injected ? Meat.TENDERIZED_OR_INJECTED : safety,
                hasSkin);
    }

    private static Meat safetyOf(Cut cut) {
        boolean ground = cut.group() == Cut.Group.GROUND;
        return switch (cut.species().toLowerCase(Locale.ROOT)) {
            case "chicken" -> Meat.CHICKEN;
            case "turkey" -> Meat.TURKEY;
            case "duck", "goose", "quail", "pheasant" -> Meat.OTHER_POULTRY;
            case "fish", "shellfish" -> Meat.FISH;
            default ->
                ground
                        ? Meat.GROUND
                        : cut.treatmentClass().equals("enhanced") ? Meat.TENDERIZED_OR_INJECTED : Meat.INTACT;
        };
    }
}
