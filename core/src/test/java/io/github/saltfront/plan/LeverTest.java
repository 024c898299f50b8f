package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class LeverTest {
    /** A promised change must happen: with as much more time as the lever says another treatment is chosen, and not with less. */
    @Test
    void moreTimeLeadsToWhatTheLeverSays() {
        Plan hurried = Planner.plan(chops(70), Runnable::run, 1);
        List<Lever> levers = Lever.ofTime(hurried);
        assertThat(hurried.salting().treatment()).isEqualTo(Request.Treatment.SURFACE_SALT);
        assertThat(levers).hasSize(1);
        Lever more = levers.get(0);
        assertThat(more.change()).matches("With (.*) more");
        assertThat(more.effect()).isEqualTo(SaltAdvice.name(Request.Treatment.WET_BRINE));
        long minutes = minutes(more.change());
        Plan later = Planner.plan(chops(70 + minutes + 15), Runnable::run, 1);
        assertThat(later.salting().treatment()).isEqualTo(Request.Treatment.WET_BRINE);
        Plan sooner = Planner.plan(chops(70 + minutes - 30), Runnable::run, 1);
        assertThat(sooner.salting().treatment()).isEqualTo(Request.Treatment.SURFACE_SALT);
    }

    @Test
    void guestsAtRiskAndSafetyAreToldOfWhereTheyMatter() {
        PlanSearch.Found found = PlanSearch.find(
                Requests.of(
                        "chicken-breast-skinless",
                        "oven-fan",
                        Request.Treatment.SURFACE_SALT,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        List.of()),
                Runnable::run,
                1);
        assertThat(found.levers())
                .anyMatch(lever -> lever.change().equals("With a guest who is pregnant, very young, old or ill"))
                .anyMatch(lever -> lever.effect().contains("the wish sets the reading")
                        || lever.effect().contains("safety alone"));
    }

    private static long minutes(String change) {
        long sum = 0;
        Matcher parts = Pattern.compile("(\\d+) (h|min)").matcher(change);
        while (parts.find()) {
            sum += Long.parseLong(parts.group(1)) * (parts.group(2).equals("h") ? 60 : 1);
        }
        return sum;
    }

    private static Request chops(long minutes) {
        return Requests.of(
                "pork-loin-chop",
                "oven-fan",
                Request.Treatment.AUTO,
                OptionalDouble.empty(),
                Optional.of(Requests.NOON.plusMinutes(minutes)),
                List.of());
    }
}
