package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FrontsTest {
    private static final Plan PLAN = Planner.plan(
            Requests.of(
                    "chicken-breast-skinless",
                    "oven-fan",
                    Request.Treatment.WET_BRINE,
                    OptionalDouble.empty(),
                    Optional.of(Requests.NOON.plusHours(7)),
                    List.of()),
            Runnable::run,
            1);
    private static final Fronts FRONTS = Fronts.of(PLAN);

    @Test
    void stagesFollowOneAnotherAndTellTheTimesOfThePlan() {
        assertThat(FRONTS.spans()).extracting(Fronts.Span::kind).containsExactly("soak", "heat", "rest");
        for (int i = 1; i < FRONTS.spans().size(); i++) {
            assertThat(FRONTS.spans().get(i).start())
                    .isEqualTo(FRONTS.spans().get(i - 1).end());
        }
        Fronts.Span heat = FRONTS.spans().get(1);
        assertThat(heat.end() - heat.start())
                .isBetween(
                        PLAN.cooking().timeToPull().low(),
                        PLAN.cooking().timeToPull().high());
        assertThat(heat.clock().toInstant())
                .isEqualTo(PLAN.clock().stream()
                        .filter(step -> step.kind() == Plan.StepKind.COOK)
                        .findFirst()
                        .orElseThrow()
                        .time()
                        .toInstant());
        assertThat(FRONTS.time(FRONTS.size() - 1))
                .isCloseTo(FRONTS.spans().get(2).end(), within(1e-6));
    }

    @Test
    void timesRiseAndEveryStageHasEnoughOfThem() {
        for (int i = 1; i < FRONTS.size(); i++) {
            assertThat(FRONTS.time(i)).isGreaterThan(FRONTS.time(i - 1));
        }
        for (Fronts.Span span : FRONTS.spans()) {
            long count = java.util.stream.IntStream.range(0, FRONTS.size())
                    .filter(i -> FRONTS.time(i) >= span.start() && FRONTS.time(i) <= span.end())
                    .count();
            assertThat(count).as(span.kind()).isBetween(40L, 140L);
        }
    }

    @Test
    void bothFrontsComeFromTheOutside() {
        int last = FRONTS.size() - 1;
        double[] salts = FRONTS.salts(last);
        assertThat(salts[0]).isGreaterThan(5 * salts[salts.length - 1]);
        double[] depths = FRONTS.depths();
        assertThat(Arrays.stream(depths).max().orElseThrow()).isLessThanOrEqualTo(FRONTS.depth());
        assertThat(FRONTS.weight(0)).isCloseTo(1, within(1e-9));
        assertThat(FRONTS.killShare(0)).isZero();
        assertThat(FRONTS.killShare(last)).isGreaterThan(1);
    }
}
