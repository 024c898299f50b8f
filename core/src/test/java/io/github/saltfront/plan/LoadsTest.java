package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class LoadsTest {
    private static final ZonedDateTime DINNER = Requests.NOON.plusDays(1).withHour(19);

    private static Request sixty(int load) {
        Request two = Requests.of(
                "chicken-thigh-boneless",
                "oven-fan",
                Request.Treatment.DRY_SALT,
                OptionalDouble.of(4 * 3600),
                Optional.of(DINNER),
                List.of());
        return Requests.equipped(two.of(two.food().times(60)), Request.Equipment.USUAL.loading(load));
    }

    @Test
    void sixtyPiecesGoThroughOneOvenInLoads() {
        Plan plan = Planner.plan(sixty(16), Runnable::run, 1);
        Loads loads = plan.cooking().loads();
        assertThat(loads.count()).isEqualTo(4);
        List<ZonedDateTime> in = times(plan, Plan.StepKind.COOK);
        assertThat(in).hasSize(4);
        assertThat(Duration.between(in.get(0), in.get(1)).toSeconds()).isCloseTo((long) loads.cycle(), within(1L));
        assertThat(loads.cycle())
                .isGreaterThanOrEqualTo(plan.cooking().timeToPull().high() + Loads.CHANGE);
        assertThat(times(plan, Plan.StepKind.SERVE)).containsExactly(DINNER);
        assertThat(times(plan, Plan.StepKind.PREHEAT)).hasSize(1);
        // every load is salted as long as planned, but for the minutes of patting dry
        List<ZonedDateTime> salted = times(plan, Plan.StepKind.SALT);
        List<ZonedDateTime> dried = times(plan, Plan.StepKind.PAT_DRY);
        for (int i = 0; i < 4; i++) {
            assertThat(Duration.between(salted.get(i), dried.get(i))).isEqualTo(Duration.ofHours(4));
        }
        assertThat(plan.cooking().verdict().isMet()).isTrue();
    }

    /** Salt is weighed for all pieces, and a piece is cooked as in a load, not as among sixty. */
    @Test
    void doseIsForAllAndHeatForOneLoad() {
        Plan loads = Planner.plan(sixty(15), Runnable::run, 1);
        Request one = sixty(15).of(sixty(15).food().times(15));
        Plan alone = Planner.plan(one, Runnable::run, 1);
        assertThat(loads.salting().salt() / alone.salting().salt()).isCloseTo(4, within(1e-9));
        assertThat(loads.cooking().timeToPull()).isEqualTo(alone.cooking().timeToPull());
    }

    @Test
    void loadThatTakesAllIsNoLoad() {
        assertThat(Loads.of(sixty(60), 1800)).isEqualTo(new Loads(1, 60, 1800 + Loads.CHANGE));
        assertThat(Loads.of(sixty(7), 1800).count()).isEqualTo(9);
        assertThat(Requests.equipped(sixty(60), new Request.Equipment(true, true, OptionalInt.empty(), List.of()))
                        .piecesAtOnce())
                .isEqualTo(60);
    }

    private static List<ZonedDateTime> times(Plan plan, Plan.StepKind kind) {
        return plan.clock().stream()
                .filter(step -> step.kind() == kind)
                .map(Plan.Step::time)
                .toList();
    }
}
