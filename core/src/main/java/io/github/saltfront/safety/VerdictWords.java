package io.github.saltfront.safety;

/** The words that differ between kitchens. */
final class VerdictWords {
    private VerdictWords() {}

    static String note(Kitchen kitchen, boolean measured) {
        String proof = measured
                ? "The record speaks for the place where the tip sat and for the cook it covers."
                : "Only a thermometer in the coldest spot can show that it was reached.";
        return switch (kitchen) {
            case HOME -> proof;
            case TEACHING ->
                proof + " Say to the class which of the two it is, and show the official minimum beside it.";
            case PROFESSIONAL ->
                proof
                        + " Local code comes first: an approved, written process decides, and holds below the code's minimums"
                        + " may need a variance. This calculation is not validation.";
        };
    }
}
