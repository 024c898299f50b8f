package io.github.saltfront.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.ApplianceTuning;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.learn.SaltTaste.Rating;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.units.Temperature;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KitchenKnowledgeTest {
    private static final Catalog CATALOG = Catalog.load();
    private static final Appliance OVEN = CATALOG.appliances().get("oven-fan");
    private static final Appliance BATH = CATALOG.appliances().get("water-bath");

    /** Saha et al. 2009, abstract: from 0.5 % just about right to most, at 1.0 % a fifth say too salty; the middle is then 0.80 %. */
    @Test
    void theScaleGivesThePublishedAcceptance() {
        double middle = Math.log(0.7989);
        assertThat(SaltTaste.probability(Rating.JUST_RIGHT, Math.log(0.5) - middle))
                .isCloseTo(0.5, within(0.01));
        assertThat(SaltTaste.probability(Rating.JUST_RIGHT, Math.log(0.75) - middle))
                .isGreaterThan(0.5);
        double apart = Math.log(1.0) - middle;
        assertThat(SaltTaste.probability(Rating.SLIGHTLY_TOO_STRONG, apart)
                        + SaltTaste.probability(Rating.MUCH_TOO_STRONG, apart))
                .isCloseTo(0.2, within(0.01));
    }

    @Test
    void ratingsAddUpToOneAndMoveTheIdeal() {
        double sum = 0;
        for (Rating rating : Rating.values()) {
            sum += SaltTaste.probability(rating, 0.2);
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        double weak = taste(Rating.SLIGHTLY_TOO_WEAK, 4).value();
        double right = taste(Rating.JUST_RIGHT, 4).value();
        double strong = taste(Rating.SLIGHTLY_TOO_STRONG, 4).value();
        assertThat(weak).isGreaterThan(right);
        assertThat(strong).isLessThan(right);
        assertThat(right).isCloseTo(0.0075, within(0.0003));
    }

    private static LearnedValue taste(Rating rating, int times) {
        return SaltTaste.learn(
                List.of(new SaltTaste.Tasting(Math.log(0.0075), 0.1, Collections.nCopies(times, rating))));
    }

    /** Gelman et al., section 2.5: precisions add and means are weighted by them; 1/4 + 3/1 with prior 4 and readings of 7. */
    @Test
    void normalMeansAreUpdatedByPrecision() {
        LearnedValue learned = new NormalLearning(4, 2, 1).learn(List.of(7.0, 6.0, 8.0));
        assertThat(learned.value()).isCloseTo((4 * 0.25 + 21) / 3.25, within(1e-12));
        assertThat(learned.high() - learned.value()).isCloseTo(1.6448536 / Math.sqrt(3.25), within(1e-6));
        assertThatThrownBy(() -> new NormalLearning(4, 2, 1).learn(List.of(Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A normal prior of 10 K at 90 % and three readings of 4 K give -7.87 and a half width of 3.55 by the rule of precisions. */
    @Test
    void aThermometerInTheOvenShowsItsOffset() {
        OvenKnowledge known = OvenKnowledge.learn(OVEN, List.of(), List.of(-9.0, -8.0, -10.0), 3);
        assertThat(known.offset().covers(-8.5)).isTrue();
        assertThat(known.offset().value()).isBetween(-9.0, -7.0);
        assertThat(known.coefficient().covers(1)).isTrue();
        assertThat(KitchenKnowledge.ovenWords(OVEN, known))
                .matches(
                        "using your oven, fan: 8 K below its dial" + " \\(3 cooks, 90 %: 4 to 11\\), heat transfer .*");
    }

    @Test
    void whatWasSaidGoesBeforeWhatWasLearned() {
        KitchenKnowledge extreme = extreme(OVEN);
        Request request = LearnRequests.breast(OVEN, 180);
        Request said = new Request(
                request.food(),
                request.salting(),
                request.cook(),
                request.taste(),
                request.timing(),
                request.guests(),
                List.of());
        Request used = extreme.applied(said);
        assertThat(used.salting()).isEqualTo(said.salting());
        assertThat(used.taste()).isEqualTo(said.taste());
        assertThat(used.food().shape()).isEqualTo(said.food().shape());
        assertThat(used.assumptions())
                .allMatch(a -> a.value().startsWith("using your ") && a.field().equals("notebook"))
                .hasSize(2);
    }

    /** Everything learned from absurd notes, all on the bold side. */
    private static KitchenKnowledge extreme(Appliance appliance) {
        double tooHot = appliance == BATH ? 3 : 80;
        OvenKnowledge hot = OvenKnowledge.learn(appliance, List.of(), Collections.nCopies(50, tooHot), 50);
        LearnedValue cold = NormalLearning.refrigerator(Temperature.fromCelsius(4))
                .learn(Collections.nCopies(50, Temperature.fromCelsius(-15)));
        GainResponse steep = new GainResponse(List.of(-4.0, 4.0), List.of(-0.1, 0.1), 0.001);
        DiffusivityKnowledge fast = DiffusivityKnowledge.learn(
                LearnRequests.breast(OVEN, 180).food().meat().diffusivity(),
                Collections.nCopies(50, new DiffusivityKnowledge.WeighedSoak(steep, 0.4)));
        return new KitchenKnowledge(
                Map.of(appliance.id(), hot),
                Optional.of(cold),
                Optional.of(taste(Rating.MUCH_TOO_WEAK, 200)),
                Optional.of(new LearnedValue(2, 1.9, 2.1, 50)),
                Map.of(
                        LearnRequests.breast(OVEN, 180)
                                .food()
                                .meat()
                                .diffusivity()
                                .id(),
                        fast));
    }

    @Test
    void nothingIsLearnedPastALimit() {
        Request request = LearnRequests.breast(OVEN, 180);
        Request used = extreme(OVEN).applied(request);
        double unit = OVEN.setPointError() / 1.6448536;
        assertThat(used.cook().appliance().tuning().meanSetting() * unit)
                .isLessThanOrEqualTo(OvenKnowledge.LARGEST_OFFSET + 1e-6);
        assertThat(used.cook().appliance().tuning().spreadSetting()).isGreaterThanOrEqualTo(0.3 - 1e-9);
        assertThat(used.cook().setting())
                .as("the dial")
                .isEqualTo(request.cook().setting());
        assertThat(used.salting().refrigerator()).isGreaterThanOrEqualTo(Temperature.fromCelsius(4));
        assertThat(used.taste().rawSalt()).isLessThanOrEqualTo(SaltTaste.MOST);
        assertThat(used.food().shape().halfThickness() / request.food().shape().halfThickness())
                .isLessThan(2.5);
        assertThat(used.food().meat().diffusivity().medianAt5C()
                        / request.food().meat().diffusivity().medianAt5C())
                .isLessThanOrEqualTo(DiffusivityKnowledge.LARGEST_FACTOR);
        assertThat(Planner.rule(used)).isEqualTo(Planner.rule(request));
        LearnedValue warm = new LearnedValue(
                Temperature.fromCelsius(12), Temperature.fromCelsius(11), Temperature.fromCelsius(13), 9);
        Request warmer = new KitchenKnowledge(Map.of(), Optional.of(warm), Optional.empty(), Optional.empty(), Map.of())
                .applied(request);
        assertThat(warmer.salting().refrigerator()).isEqualTo(KitchenKnowledge.WARMEST_REFRIGERATOR);
        assertThat(warmer.assumptions()).anyMatch(a -> a.value().contains("set it colder"));
    }

    @Test
    void aBathIsNeverTakenAsWarmerThanItsDial() {
        Request used = extreme(BATH).applied(LearnRequests.breast(BATH, 60));
        assertThat(used.cook().appliance().tuning().meanSetting()).isZero();
        OvenKnowledge cold = OvenKnowledge.learn(BATH, List.of(), List.of(-1.0, -1.0), 2);
        Request colder = new KitchenKnowledge(
                        Map.of(BATH.id(), cold), Optional.empty(), Optional.empty(), Optional.empty(), Map.of())
                .applied(LearnRequests.breast(BATH, 60));
        assertThat(colder.cook().appliance().tuning().meanSetting()).isNegative();
    }

    /** A hot oven promises carry-over; a plan that trusted it would take the meat out sooner and hold it shorter. */
    @Test
    void holdsAndMinimaStayWhateverWasLearned() {
        Request request = LearnRequests.plain(OVEN, 180);
        ApplianceTuning hot = new ApplianceTuning(4, 2, 0.4, 0.4, 0);
        Request tuned = request.cookedBy(request.cook().in(OVEN.tuned(hot)));
        Plan usual = Planner.plan(request, Runnable::run, 1);
        Plan learned = Planner.plan(tuned, Runnable::run, 1);
        assertThat(learned.cooking().pullTemperature())
                .isGreaterThanOrEqualTo(usual.cooking().pullTemperature());
        assertThat(learned.cooking().verdict().rule())
                .isEqualTo(usual.cooking().verdict().rule());
        assertThat(learned.cooking().verdict().rule().consumerMinimum())
                .isEqualTo(usual.cooking().verdict().rule().consumerMinimum());
        assertThat(learned.cooking().verdict().isMet()).isTrue();
        assertThat(learned.cooking().timeToPull().median())
                .isLessThan(usual.cooking().timeToPull().median());
    }
}
