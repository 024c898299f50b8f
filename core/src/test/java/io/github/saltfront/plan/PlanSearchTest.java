package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.shape.SolidGrid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PlanSearchTest {
    private static final List<Wish> JUICE_FIRST = List.of(Wish.JUICE, Wish.LITTLE_WORK);

    @Test
    void bestOfTheWishesIsPlannedAndEveryAlternativeWinsSomething() {
        PlanSearch.Found found = PlanSearch.find(chicken(7, JUICE_FIRST), Runnable::run, 1);
        assertThat(found.plan().cooking().verdict().isMet()).isTrue();
        assertThat(found.tried()).isEqualTo(50);
        assertThat(found.dropped().get(PlanSearch.Dropped.TOO_LATE)).isPositive();
        assertThat(found.alternatives()).isNotEmpty().hasSizeLessThanOrEqualTo(3);
        for (PlanSearch.Alternative alternative : found.alternatives()) {
            assertThat(alternative.wins()).isNotEmpty();
            for (Wish wish : alternative.wins()) {
                double gain = wish.gain(
                        alternative.outcome().value(wish), found.outcome().value(wish));
                assertThat(gain).as(wish.key()).isGreaterThanOrEqualTo(1);
            }
        }
        assertThat(found.alternatives().stream()
                        .map(a -> a.way().treatment() + " " + a.way().setting()))
                .doesNotHaveDuplicates();
    }

    @Test
    void alternativesAreSafeWhenTheyArePlannedInFull() {
        Request request = Requests.withGivenHeat(chicken(7, List.of()));
        PlanSearch.Found found = PlanSearch.find(request, Runnable::run, 1);
        assertThat(found.alternatives()).isNotEmpty();
        for (PlanSearch.Alternative alternative : found.alternatives()) {
            Plan plan = Planner.plan(alternative.way().applyTo(request), Runnable::run, 1);
            assertThat(plan.cooking().verdict().isMet())
                    .as(alternative.way().toString())
                    .isTrue();
            assertThat(plan.cooking().check().isPresent())
                    .isEqualTo(SolidGrid.covers(request.food().shape()));
        }
    }

    @Test
    void numbersDoNotDependOnThreads() {
        Request request = Requests.withGivenHeat(chicken(7, JUICE_FIRST));
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            assertThat(PlanSearch.screen(request, two, 1)).isEqualTo(PlanSearch.screen(request, Runnable::run, 1));
        } finally {
            two.shutdownNow();
        }
    }

    /** The best score is absolute and more time only adds ways, apart from steps at night, hence hours of one day. */
    @Property(tries = 3)
    void servingLaterNeverMakesTheBestWorse(
            @ForAll @IntRange(min = 1, max = 6) int hours, @ForAll @IntRange(min = 0, max = 4) int more) {
        Request soon = Requests.withGivenHeat(chicken(hours + 1, JUICE_FIRST));
        Request later = Requests.withGivenHeat(chicken(hours + 1 + more, JUICE_FIRST));
        assertThat(best(later)).isGreaterThanOrEqualTo(best(soon));
    }

    private static double best(Request request) {
        PlanSearch.Candidate best = PlanSearch.screen(request, Runnable::run, 1).get(0);
        return PlanSearch.score(request, best.outcome());
    }

    @Test
    void namedTreatmentStaysWhatItIs() {
        Request request = Requests.of(
                "pork-loin-chop",
                "oven-fan",
                Request.Treatment.DRY_SALT,
                OptionalDouble.empty(),
                Optional.of(Requests.NOON.plusHours(30)),
                List.of(Wish.EVEN_SALT));
        assertThat(PlanSearch.screen(request, Runnable::run, 1))
                .isNotEmpty()
                .allMatch(candidate -> candidate.way().treatment() == Request.Treatment.DRY_SALT);
    }

    /** Salt is conserved: what is served holds no more than what went in, over what is left of the weight. */
    @Test
    void shortDrySaltingServesNoMoreSaltThanWasLaidOn() {
        Request request = Requests.of(
                "chicken-breast-skinless",
                "oven-fan",
                Request.Treatment.DRY_SALT,
                OptionalDouble.of(3600),
                Optional.empty(),
                List.of());
        Plan plan = Planner.plan(request, Runnable::run, 1);
        double left = 1 - plan.result().massLoss().median();
        assertThat(plan.result().meanSalt().median())
                .isLessThan(1.03 * plan.salting().target() / left);
    }

    @Test
    void tooSoonIsToldWithWhatCanBeDone() {
        Request request = Requests.of(
                "chicken-breast-skinless",
                "oven-fan",
                Request.Treatment.DRY_SALT,
                OptionalDouble.of(20 * 3600),
                Optional.of(Requests.NOON.plusHours(3)),
                List.of());
        assertThatThrownBy(() -> PlanSearch.find(request, Runnable::run, 1)).isInstanceOf(PlanningException.class);
        List<Nearest> offers = Nearest.of(request, Runnable::run, 1);
        assertThat(offers).hasSizeGreaterThanOrEqualTo(2);
        assertThat(offers.get(0).words()).startsWith("Serve at ");
        assertThat(offers).anyMatch(offer -> offer.words().startsWith("Salt the outside"));
        assertThat(offers).allMatch(offer -> offer.plan().cooking().verdict().isMet());
    }

    private static Request chicken(int hours, List<Wish> wishes) {
        return Requests.of(
                "chicken-breast-skinless",
                "oven-fan",
                Request.Treatment.AUTO,
                OptionalDouble.empty(),
                Optional.of(Requests.NOON.plusHours(hours)),
                wishes);
    }
}
