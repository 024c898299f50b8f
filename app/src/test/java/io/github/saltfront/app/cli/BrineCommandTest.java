package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command from its options to its text, JSON and exit code. */
class BrineCommandTest {
    private static final String[] CHICKEN = {"--cut", "chicken-breast-skinless", "--mass", "1.2 kg"};

    @Test
    void strengthIsMixedAndSaidOnEveryBasis() {
        Result result = run("--water", "1 kg", "--strength", "6 %");
        assertThat(result.code()).isZero();
        // 1 kg water at 6 % of the solution: 1000 x 6 / 94 g
        assertThat(result.out())
                .contains("64 g", "6.4 % by weight", "22.7 degrees", "Keep meat and bath at or below 4 °C");
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 72);
    }

    // hand computed: the catalog's breast holds 73.9 / 100.15 water (parts add up to 100.15) and 0.114 % salt; K 0.95
    @Test
    void equilibriumDoseIsTheMassBalance() {
        JsonNode json = json("--water", "1 kg", "--target", "0.75 %", "--json");
        double water = 0.739 / 1.0015;
        double free = 1.2 * (1 - 0.00114);
        double dose = 0.0075 / 0.9925 * free / (1.2 * water * 0.95) * (1 + 0.95 * 1.2 * water) - 1.2 * 0.00114;
        assertThat(json.get("mix").get("salt_added_g").asDouble()).isCloseTo(1000 * dose, within(1e-6));
        assertThat(json.get("equilibrium").get("meat_salt_pct").asDouble()).isCloseTo(0.75, within(1e-9));
        assertThat(json.get("schema").asString()).isEqualTo("saltfront-brine-1");
        assertThat(json.get("window").get("highest").get("earliest_s").isNull()).isTrue();
    }

    @Test
    void gramsForALiterAreLessThanThePercentOfTheSolution() {
        JsonNode json = json("--water", "1 L", "--strength", "60 g/L", "--basis", "liter", "--json");
        // "60 g per liter of water" is 5.67 % of the solution at 20 C; water at 4 C is denser by 0.18 %
        assertThat(json.get("strength").get("of_solution_pct").asDouble()).isCloseTo(5.67, within(0.02));
    }

    @Test
    void liquidThatIsNotWaterBringsItsSaltAndItsAllergen() {
        JsonNode json = json("--liquid", "buttermilk", "--water", "1 kg", "--strength", "4 %", "--json");
        assertThat(json.get("mix").get("salt_of_liquid_g").asDouble()).isCloseTo(4.8, within(1e-9));
        assertThat(json.get("mix").get("allergens").get(0).asString()).isEqualTo("milk");
        assertThat(json.get("acid_advice").asString()).isEqualTo("valley");
    }

    @Test
    void saltyMeatIsMendedInPlainWater() {
        Result result = run("--water", "4 kg", "--mend", "1.8 %");
        assertThat(result.code()).isZero();
        assertThat(result.out()).contains("Too salty", "4 kg of plain cold water", "No longer too salty after");
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 72);
        JsonNode json = json("--water", "1 kg", "--strength", "6 %", "--mend", "48 h", "--json");
        assertThat(json.get("verdict").asString()).isEqualTo("soak-out");
        assertThat(json.get("present_salt_pct").get("low").asDouble())
                .isLessThan(json.get("present_salt_pct").get("high").asDouble());
        assertThat(run("--mend", "much").code()).isEqualTo(2);
    }

    @Test
    void labelOfTheSaltDecidesTheSpoons() {
        JsonNode json = json(
                "--water",
                "1 kg",
                "--strength",
                "6 %",
                "--label-sodium",
                "280 mg",
                "--label-teaspoon",
                "0.25",
                "--json");
        assertThat(json.get("mix").get("salt_form").asString()).isEqualTo("from-label");
        // 280 mg in 1.25 mL: 569 g/L, so 63.8 g are about 112 mL, near half a cup
        assertThat(json.get("mix").get("spoons_us").get("cups").asDouble()).isCloseTo(0.5, within(0.26));
    }

    @Test
    void allErrorsAreShownAtOnce() {
        Result result = execute(
                "--cut",
                "chiken-brest",
                "--mass",
                "1.2",
                "--strength",
                "30 %",
                "--refrigerator",
                "60 C",
                "--salt",
                "x");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("--cut", "--mass", "--strength", "--refrigerator", "--salt");
        assertThat(result.err()).contains("chicken-breast");
        assertThat(result.out()).isEmpty();
    }

    @Test
    void saturationIsRefusedWithTheNumber() {
        Result result = run("--water", "1 kg", "--strength", "27 %");
        assertThat(result.code()).isEqualTo(2);
        // saltinstitute2009: 26.3 % at 4 C
        assertThat(result.err()).contains("26.3 % salt of the solution");
    }

    @Test
    void curingSaltIsRefused() {
        Result result = run("--water", "1 kg", "--strength", "6 %", "--salt", "pink curing salt");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("nitrite");
    }

    // e = 387.2 kJ/kg; 1 kg water with 63.8 g salt, heat capacity of the 20 C part about 3.8 kJ/(kg.K): 0.145 kg of ice
    @Test
    void iceIsPartOfTheWater() {
        JsonNode json = json("--water", "1 kg", "--strength", "6 %", "--json");
        assertThat(json.get("mix").get("of_which_ice_kg").asDouble()).isCloseTo(0.145, within(0.003));
    }

    @Test
    void birdWithSkinIsToldWhatIsNotKnown() {
        Result result =
                execute("--cut", "chicken-whole", "--mass", "4 lb", "--strength", "6 %", "--liquid", "buttermilk");
        assertThat(result.out()).contains("Even the lowest level is not reached", "milk");
        assertThat(result.out().replace("\n", " ")).contains("never measured for poultry");
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 72);
    }

    @Test
    void kosherMeatGetsNoStrongBrineAndTheReason() {
        Result result = run("--water", "1 kg", "--strength", "6 %", "--kosher");
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("No brine:", "salted at the plant");
    }

    @Test
    void moreSugarThanSaltIsAnError() {
        Result result = run("--water", "1 kg", "--strength", "3 %", "--sugar", "50 g");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("sugar");
    }

    @Test
    void vesselGivesTheAmountOfLiquid() {
        JsonNode json = json("--vessel", "bag", "--target", "0.75 %", "--json");
        // common practice: 0.4 L/kg in a snug bag
        assertThat(json.get("mix").get("liquid_l").asDouble()).isCloseTo(0.48, within(1e-9));
    }

    @Test
    void everyCutOfTheCatalogGetsASheet() {
        for (var cut : io.github.saltfront.catalog.Catalog.load().cuts().all()) {
            Result result = execute(
                    "--cut", cut.id(), "--mass", cut.size().mass().typical() + " kg", "--target", "0.9 %", "--json");
            assertThat(result.code()).as(cut.id() + result.err()).isZero();
        }
    }

    private static JsonNode json(String... options) {
        Result result = run(options);
        assertThat(result.code()).as(result.err()).isZero();
        return JsonMapper.builder().build().readTree(result.out());
    }

    private static Result run(String... options) {
        String[] all = new String[CHICKEN.length + options.length];
        System.arraycopy(CHICKEN, 0, all, 0, CHICKEN.length);
        System.arraycopy(options, 0, all, CHICKEN.length, options.length);
        return execute(all);
    }

    private static Result execute(String... options) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = new CommandLine(new BrineCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(options);
        return new Result(code, out.toString(), err.toString());
    }

    private record Result(int code, String out, String err) {}
}
