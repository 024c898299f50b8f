package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.plan.CookingMedium;
import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.MemberDay;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.quality.CollagenTenderness;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.quality.SkinDryness;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits that hold whatever the numbers, and facts of the trade on skin and tough cuts (common practice, no source). */
class CookingLimitsTest {
    private static final Catalog CATALOG = Catalog.load();
    private static final double PRESSURE = 101325;
    private static final double HOUR = 3600;
    private static final double COLD = Temperature.fromCelsius(4);
    private static final double BOILING = Temperature.fromCelsius(100);

    /** The face stays at the boiling point however hot the metal (cernela2015: plates of 160 to 260 degrees Celsius). */
    @ParameterizedTest
    @ValueSource(doubles = {160, 200, 260})
    void noFaceInAPanIsHotterThanWaterBoils(double celsius) {
        MemberDay day = run("beef-strip-steak", List.of(heat("pan", celsius, 55, 2 * HOUR), rest()));
        assertThat(hottest(day)).isLessThan(BOILING + 0.1);
        assertThat(day.ends().get(1).evaporated()).isBetween(0.005, 0.12);
    }

    /** In air a wet surface stays below the boiling point until it dries. */
    @Test
    void noSurfaceIsAboveTheBoilingPointWhileWet() {
        MemberDay day = run("beef-round-roast", List.of(heat("oven-conventional", 163, 60, 6 * HOUR), rest()));
        assertThat(hottest(day)).isLessThan(BOILING);
    }

    /** A dry surface gets hotter, so more heat runs on to the middle. */
    @Test
    void aModelWithoutEvaporationOverstatesTheRise() {
        double wet = rise(run("beef-round-roast", List.of(heat("oven-conventional", 163, 55, 6 * HOUR), rest())));
        double dry = rise(run("beef-round-roast", List.of(dryHeat(163, 55), rest())));
        assertThat(dry).isGreaterThan(1.3 * wet);
    }

    /** Cut to cut common practice; the gradient is read as surface against middle when it is taken out. */
    @Test
    void aLowerOvenGivesASmallerGradientAndLessLoss() {
        MemberDay low = run("beef-round-roast", List.of(heat("oven-low", 110, 55, 12 * HOUR), rest()));
        MemberDay high = run("beef-round-roast", List.of(heat("oven-conventional", 200, 55, 12 * HOUR), rest()));
        assertThat(gradient(low)).isLessThan(gradient(high));
        assertThat(low.ends().get(1).massLoss()).isLessThan(high.ends().get(1).massLoss());
    }

    /** Salt lowers the loss of lean meat at 65 to 75 degrees Celsius (bae2018 gives the direction, ground chicken). */
    @ParameterizedTest
    @CsvSource({"65", "70", "75"})
    void saltedMeatLosesLess(double core) {
        DayEnsemble.StageFor salted = drySalt(0.012, 18 * HOUR);
        DayEnsemble.StageFor plain = drySalt(0.00001, 18 * HOUR);
        MemberDay with = run("chicken-breast-skinless", List.of(salted, heat("oven-fan", 180, core, HOUR), rest()));
        MemberDay without = run("chicken-breast-skinless", List.of(plain, heat("oven-fan", 180, core, HOUR), rest()));
        assertThat(cookLoss(with)).isLessThan(cookLoss(without));
    }

    /** "Skin stays soft after a wet brine", and dries in the refrigerator. */
    @Test
    void skinIsDrierAfterANightInTheRefrigeratorThanAfterABrine() {
        Cut cut = CATALOG.cuts().get("chicken-whole");
        double raw = MeatModel.of(cut).composition().waterPerSolids();
        MemberDay dried = run(
                "chicken-whole", List.of(refrigerate(18 * HOUR), heat("oven-conventional", 190, 74, 6 * HOUR), rest()));
        MemberDay soaked =
                run("chicken-whole", List.of(soak(18 * HOUR), heat("oven-conventional", 190, 74, 6 * HOUR), rest()));
        assertThat(dryness(dried, 0, raw)).isGreaterThan(dryness(soaked, 0, raw) + 0.05);
        assertThat(dryness(dried, 2, raw)).isGreaterThan(dryness(soaked, 2, raw));
    }

    /** "Tough dark cuts get better for hours": the chuck is not tender when its middle is hot, and is after three hours more. */
    @Test
    void toughCutsGetBetterForHours() {
        double atOnce = CollagenTenderness.rate(Temperature.fromCelsius(90), CollagenTenderness.MATURE) * 0.5 * HOUR;
        double later = CollagenTenderness.rate(Temperature.fromCelsius(90), CollagenTenderness.MATURE) * 4.5 * HOUR;
        assertThat(atOnce).isLessThan(0.4);
        assertThat(later).isGreaterThan(1);
    }

    private static double dryness(MemberDay day, int stage, double raw) {
        return SkinDryness.share(day.ends().get(stage).quality().skinWater(), raw);
    }

    private static double cookLoss(MemberDay day) {
        return day.ends().get(2).massLoss() - day.ends().get(0).massLoss();
    }

    private static double rise(MemberDay day) {
        return day.peakCore(day.end("heat").end()) - day.end("heat").coreTemperature();
    }

    private static double gradient(MemberDay day) {
        return day.end("heat").surfaceTemperature() - day.end("heat").coreTemperature();
    }

    private static double hottest(MemberDay day) {
        double hottest = 0;
        for (int i = 0; i < day.surfaceHistory(0).size(); i++) {
            hottest = Math.max(hottest, day.surfaceHistory(0).temperature(i));
        }
        return hottest;
    }

    private static DayEnsemble.StageFor heat(String appliance, double celsius, double core, double longest) {
        CookingMedium medium = new CookingMedium(
                CATALOG.appliances().get(appliance), Temperature.fromCelsius(celsius), PRESSURE, false);
        return draw -> new Stage("heat", medium.faces(draw, false), SaltExchange.KEEP, longest, core(core));
    }

    /** Still oven with its radiation but nothing that evaporates: 18.3 W/(m2.K) in all, the sum of the catalog's oven. */
    private static DayEnsemble.StageFor dryHeat(double celsius, double core) {
        return draw -> new Stage(
                "heat",
                List.of(FaceCondition.convection(Temperature.fromCelsius(celsius), 18.3)),
                SaltExchange.NONE,
                6 * HOUR,
                core(core));
    }

    private static StopRule core(double celsius) {
        return new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(celsius));
    }

    private static DayEnsemble.StageFor rest() {
        CookingMedium bench =
                new CookingMedium(CATALOG.appliances().get("rest-bare"), Temperature.fromCelsius(21), PRESSURE, false);
        return draw -> new Stage("rest", bench.faces(draw, true), SaltExchange.NONE, 900, StopRule.NEVER);
    }

    private static DayEnsemble.StageFor refrigerate(double time) {
        CookingMedium medium = new CookingMedium(CATALOG.appliances().get("refrigerator"), COLD, PRESSURE, true);
        return draw -> new Stage("dry", medium.faces(draw, false), SaltExchange.NONE, time, StopRule.NEVER);
    }

    private static DayEnsemble.StageFor drySalt(double dose, double time) {
        SaltExchange salt = new SaltExchange.Dose(dose, 0.357);
        return draw -> new Stage("dry-salt", List.of(FaceCondition.convection(COLD, 10)), salt, time, StopRule.NEVER);
    }

    private static DayEnsemble.StageFor soak(double time) {
        Cut cut = CATALOG.cuts().get("chicken-whole");
        MeatModel meat = MeatModel.of(cut);
        SaltExchange bath = new SaltExchange.Bath(
                0.06,
                1,
                io.github.saltfront.plan.NetMassGain.load()
                        .swelling(meat.composition().water(), meat.nativeSalt(), 0.95, 0));
        return draw -> new Stage("soak", List.of(FaceCondition.convection(COLD, 100)), bath, time, StopRule.NEVER);
    }

    private static MemberDay run(String id, List<DayEnsemble.StageFor> stages) {
        Cut cut = CATALOG.cuts().get(id);
        DayEnsemble ensemble = new DayEnsemble(
                MeatModel.of(cut),
                PieceShape.of(cut, cut.size().mass().typical(), OptionalDouble.empty()),
                COLD,
                List.of(Draw.MEDIAN),
                SolverSettings.DEFAULT.withTolerances(0.02, 5e-5).withKinetics(kelvin -> 0, new KajitaniJuice()));
        return ensemble.run(stages, Runnable::run).get(0);
    }
}
