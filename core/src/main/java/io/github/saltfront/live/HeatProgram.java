package io.github.saltfront.live;

import io.github.saltfront.plan.CookSequence;
import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.CookingMedium;
import io.github.saltfront.plan.Request;
import java.util.ArrayList;
import java.util.List;

/** The heats of a cook in order: those of given time before, the main one that the thermometer ends, those after. Immutable. */
final class HeatProgram {
    /** Kind of a heat of given time before the main one. */
    static final String BEFORE = "heat-before";

    /** Kind of a heat of given time after it. */
    static final String AFTER = "heat-after";

    private final List<Heat> heats;
    private final int main;
    private final CookingMedium bench;

    /** One heat; the time of the main one has no end of its own. */
    record Heat(String kind, CookSequence.Step step, CookStages stages) {
        CookingMedium medium() {
            return stages.mediumAt(step.setting());
        }

        CookingMedium mediumAt(double setting) {
            return stages.mediumAt(setting);
        }
    }

    HeatProgram(LiveSetup setup) {
        Request request = setup.request();
        CookSequence sequence = request.cook().sequence();
        List<Heat> list = new ArrayList<>();
        sequence.before().forEach(step -> list.add(heat(BEFORE, step, setup)));
        main = list.size();
        CookStages own = new CookStages(request, setup.rule());
        CookSequence.Step step =
                new CookSequence.Step(request.cook().appliance(), request.cook().setting(), 1, sequence.turnInterval());
        list.add(new Heat(CookStages.HEAT, step, own));
        sequence.after().forEach(after -> list.add(heat(AFTER, after, setup)));
        heats = List.copyOf(list);
        bench = own.restMedium();
    }

    /** A step is the main heat of a request that has nothing else. */
    private static Heat heat(String kind, CookSequence.Step step, LiveSetup setup) {
        Request request = setup.request();
        CookSequence alone = new CookSequence(
                List.of(),
                List.of(),
                step.turnInterval(),
                0,
                request.cook().sequence().rest());
        Request.Cook cook = new Request.Cook(
                step.appliance(), step.setting(), request.cook().altitude(), alone);
        Request only = new Request(
                request.food(),
                request.salting(),
                cook,
                request.taste(),
                request.timing(),
                request.guests(),
                request.assumptions());
        return new Heat(kind, step, new CookStages(only, setup.rule()));
    }

    int size() {
        return heats.size();
    }

    Heat heat(int number) {
        return heats.get(number);
    }

    /** Place of the main heat. */
    int main() {
        return main;
    }

    /** The heats after the main one. */
    List<Heat> after() {
        return heats.subList(main + 1, heats.size());
    }

    CookingMedium bench() {
        return bench;
    }
}
