package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.data.DataException;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.JuiceFactors;
import io.github.saltfront.quality.Provenance;
import java.util.List;

/**
 * A cut of meat as bought, raw.
 *
 * @param id key
 * @param name plain name
 * @param aliases other words for it
 * @param species animal, such as {@code chicken}; {@code fish} and {@code shellfish} stand for any of theirs
 * @param group group with common rules
 * @param composition what its edible part is made of
 * @param size mass, dimensions and path of heat
 * @param traits bone, skin, lean, collagen, fat
 * @param saltDiffusivity how fast salt moves in it
 * @param juice factor of its juice loss
 * @param qualityCore core temperatures cooks aim at [K]; common practice and no safety limit
 * @param treatmentClass key into the treatment rules
 * @param provenance where the figures come from
 */
public record Cut(
        String id,
        String name,
        List<String> aliases,
        String species,
        Group group,
        CutComposition composition,
        CutSize size,
        Traits traits,
        SaltDiffusivity saltDiffusivity,
        JuiceFactors.JuiceFactor juice,
        Band qualityCore,
        String treatmentClass,
        Provenance provenance)
        implements CatalogEntry {
    /** Copies the aliases. */
    public Cut {
        aliases = List.copyOf(aliases);
    }

    static Cut read(CsvTable.Row row, List<SaltDiffusivity> diffusivities, JuiceFactors juices) {
        String diffusivity = row.text("diffusivity_class");
        String juice = row.text("juice_class");
        return new Cut(
                row.text("id"),
                row.words("name"),
                Cells.aliases(row),
                row.text("species"),
                Cells.constant(Group.class, row, "group"),
                CutComposition.read(row),
                CutSize.read(row),
                Traits.read(row),
                diffusivities.stream()
                        .filter(d -> d.id().equals(diffusivity))
                        .findFirst()
                        .orElseThrow(() -> new DataException("cuts.csv, line " + row.line()
                                + ": no diffusivity class \"" + diffusivity + "\" in salt_diffusivity.csv.")),
                juices.find(juice)
                        .orElseThrow(() -> new DataException("cuts.csv, line " + row.line() + ": no juice class \""
                                + juice + "\" in juice_factors.csv.")),
                Cells.celsius(row, "quality_core"),
                row.text("treatment_class"),
                Provenance.of(row));
    }

    /** Groups of meat that share rules of safety and quality. */
    public enum Group {
        /** Breast of chicken and turkey. */
        POULTRY_WHITE,
        /** Leg, thigh and wing of poultry; duck and goose breast. */
        POULTRY_DARK,
        /** Whole and flattened birds: breast and leg want different temperatures. */
        POULTRY_WHOLE,
        /** Pork, whole cuts. */
        PORK,
        /** Beef, whole cuts. */
        BEEF,
        /** Lamb, whole cuts. */
        LAMB,
        /** Veal, whole cuts. */
        VEAL,
        /** Rabbit and venison. */
        GAME,
        /** Fish and shellfish. */
        FISH,
        /** Ground meat of any animal; bacteria are in the middle. */
        GROUND
    }

    /**
     * What decides about treatment and cooking.
     *
     * @param hasBone true if sold with bone
     * @param boneShare bone of the raw mass as bought [-]; the provenance says when connective tissue or skin is in it
     * @param hasSkin true if skin is on
     * @param isLean true if lean
     * @param isCollagenRich true if it needs long cooking to turn tender or holds much connective tissue
     * @param isFatty true if fatty
     */
    public record Traits(
            boolean hasBone,
            double boneShare,
            boolean hasSkin,
            boolean isLean,
            boolean isCollagenRich,
            boolean isFatty) {
        static Traits read(CsvTable.Row row) {
            return new Traits(
                    Cells.yes(row, "bone"),
                    Cells.percent(row, "bone_pct"),
                    Cells.yes(row, "skin"),
                    Cells.yes(row, "lean"),
                    Cells.yes(row, "collagen"),
                    Cells.yes(row, "fatty"));
        }
    }
}
