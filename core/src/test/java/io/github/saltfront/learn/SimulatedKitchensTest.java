package io.github.saltfront.learn;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.KitchenForecast;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Kitchens whose ovens, refrigerators, meat and tastes are known, since they are simulated by the model of the plans: the 90 %
 * intervals must hold the truth in 85 to 95 of 100. Of 200 kitchens a true 90 % lies within 85.8 to 94.2 in 95 of 100 studies.
 */
class SimulatedKitchensTest {
    private static final Catalog CATALOG = Catalog.load();

    /** A slab of lean meat, quick to compute. */
    private static Request request(String appliance, double settingC) {
        return LearnRequests.breast(CATALOG.appliances().get(appliance), settingC);
    }

    @Test
    void ovensAreRecovered() {
        coverOvens(200, 2, "oven-fan", 180, List.of(Temperature.fromCelsius(66)), 1);
    }

    @Tag("slow")
    @Test
    void ovensAreRecoveredWithMoreCooksAndMarks() {
        coverOvens(1000, 6, "oven-fan", 180, List.of(Temperature.fromCelsius(40), Temperature.fromCelsius(66)), 2);
        coverOvens(1000, 3, "oven-low", 121, List.of(Temperature.fromCelsius(62)), 3);
    }

    private static void coverOvens(
            int kitchens, int cooks, String id, double settingC, List<Double> readings, long seed) {
        Appliance oven = CATALOG.appliances().get(id);
        Request request = request(id, settingC);
        TimingResponse response = TimingResponse.of(request, readings, 1, Runnable::run, seed);
        Random random = new Random(seed);
        List<Draw> luck = Draw.ensemble(kitchens * cooks, seed + 10);
        double[][] hidden = new double[kitchens][2];
        List<Draw> cooked = new ArrayList<>();
        for (int k = 0; k < kitchens; k++) {
            hidden[k][0] = random.nextGaussian();
            hidden[k][1] = random.nextGaussian();
            for (int i = 0; i < cooks; i++) {
                cooked.add(luck.get(k * cooks + i)
                        .with(Uncertainty.SETTING, hidden[k][0])
                        .with(Uncertainty.CONVECTION, hidden[k][1]));
            }
        }
        double[][] times = KitchenForecast.timesTo(request, readings, cooked, Runnable::run);
        int offsets = 0;
        int coefficients = 0;
        double width = 0;
        double unit = oven.setPointError() / Draw.NINETY_FIVE;
        for (int k = 0; k < kitchens; k++) {
            List<TimedCook> timed = new ArrayList<>();
            for (int i = 0; i < cooks; i++) {
                timed.add(new TimedCook(
                        response,
                        Arrays.stream(times[k * cooks + i])
                                .map(t -> t * Math.exp(0.02 * random.nextGaussian()))
                                .boxed()
                                .toList()));
            }
            OvenKnowledge known = OvenKnowledge.learn(oven, timed, List.of(), cooks);
            offsets += known.offset().covers(hidden[k][0] * unit) ? 1 : 0;
            double factor = Draw.MEDIAN
                            .with(Uncertainty.CONVECTION, hidden[k][1])
                            .logarithmic(Uncertainty.CONVECTION, oven.convection())
                    / oven.convection().typical();
            coefficients += known.coefficient().covers(factor) ? 1 : 0;
            width += (known.offset().high() - known.offset().low()) / kitchens;
        }
        assertThat(offsets / (double) kitchens).as("offset").isBetween(0.85, 0.95);
        assertThat(coefficients / (double) kitchens).as("coefficient").isBetween(0.85, 0.95);
        assertThat(width).as("narrower than before").isLessThan(2 * oven.setPointError());
    }

    @Test
    void speedsOfSaltAreRecovered() {
        Request request = request("oven-fan", 180);
        Plan.SaltPlan salting = Planner.planSalting(request, Runnable::run, 1);
        GainResponse response = GainResponse.of(request, salting, Runnable::run, 1);
        int kitchens = 200;
        int soaks = 2;
        Random random = new Random(5);
        List<Draw> luck = Draw.ensemble(kitchens * soaks, 6);
        double[] hidden = random.doubles(kitchens).map(u -> 0).toArray();
        List<Draw> cooked = new ArrayList<>();
        for (int k = 0; k < kitchens; k++) {
            hidden[k] = random.nextGaussian();
            for (int i = 0; i < soaks; i++) {
                cooked.add(luck.get(k * soaks + i).with(Uncertainty.DIFFUSIVITY, hidden[k]));
            }
        }
        double[] gains = KitchenForecast.gains(request, salting, cooked, Runnable::run);
        SaltDiffusivity usual = request.food().meat().diffusivity();
        int covered = 0;
        double left = 0;
        for (int k = 0; k < kitchens; k++) {
            List<DiffusivityKnowledge.WeighedSoak> weighed = new ArrayList<>();
            for (int i = 0; i < soaks; i++) {
                weighed.add(new DiffusivityKnowledge.WeighedSoak(
                        response, gains[k * soaks + i] + 0.007 * random.nextGaussian()));
            }
            DiffusivityKnowledge known = DiffusivityKnowledge.learn(usual, weighed);
            covered += known.factor().covers(Math.pow(usual.geometricStandardDeviation(), hidden[k])) ? 1 : 0;
            left += Math.log(known.spread()) / Math.log(usual.geometricStandardDeviation()) / kitchens;
        }
        assertThat(covered / (double) kitchens).isBetween(0.85, 0.95);
        assertThat(left).isLessThan(1);
    }

    @Test
    void tastesAreRecovered() {
        Random random = new Random(7);
        int tables = 200;
        int covered = 0;
        for (int t = 0; t < tables; t++) {
            double ideal = 0.0075 * Math.exp(Math.log(2) / (2 * Draw.NINETY_FIVE) * random.nextGaussian());
            List<SaltTaste.Tasting> tastings = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                double predicted = Math.log(0.005 + 0.006 * random.nextDouble());
                double actual = predicted + 0.15 * random.nextGaussian();
                List<SaltTaste.Rating> ratings = new ArrayList<>();
                for (int r = 0; r < 3; r++) {
                    ratings.add(said(actual + SaltTaste.NOISE * random.nextGaussian() - Math.log(ideal)));
                }
                tastings.add(new SaltTaste.Tasting(predicted, 0.15, ratings));
            }
            covered += SaltTaste.learn(tastings).covers(ideal) ? 1 : 0;
        }
        assertThat(covered / (double) tables).isBetween(0.85, 0.95);
    }

    private static SaltTaste.Rating said(double felt) {
        SaltTaste.Rating[] all = SaltTaste.Rating.values();
        double[] ends = {-SaltTaste.MUCH, -SaltTaste.RIGHT, SaltTaste.RIGHT, SaltTaste.MUCH};
        int i = 0;
        while (i < ends.length && felt > ends[i]) {
            i++;
        }
        return all[i];
    }

    @Test
    void refrigeratorsAndButchersAreRecovered() {
        for (NormalLearning prior :
                List.of(NormalLearning.refrigerator(Temperature.fromCelsius(4)), NormalLearning.thickness())) {
            Random random = new Random(11);
            int covered = 0;
            int kitchens = 1000;
            for (int k = 0; k < kitchens; k++) {
                double truth = prior.priorMean() + prior.priorDeviation() * random.nextGaussian();
                List<Double> values = new ArrayList<>();
                for (int i = 0; i < 4; i++) {
                    values.add(truth + prior.spread() * random.nextGaussian());
                }
                covered += prior.learn(values).covers(truth) ? 1 : 0;
            }
            assertThat(covered / (double) kitchens).isBetween(0.87, 0.93);
        }
    }

    /** Named so that the meat of this test cannot change unseen. */
    @Test
    void theSimulatedMeatIsInTheCatalog() {
        Cut cut = request("oven-fan", 180).food().cut().orElseThrow();
        assertThat(cut.id()).isEqualTo("chicken-breast-skinless");
    }
}
