package io.github.saltfront.live;

import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.MemberDay;
import io.github.saltfront.plan.StageQuality;
import io.github.saltfront.transport.LayerSolver;

/** What a rest makes of one member that is taken out at a given core temperature. */
final class RestRecord implements DayEnsemble.DayRecorder {
    private final MemberDay day = new MemberDay();

    @Override
    public void beginStage(String kind) {
        day.beginStage(kind);
    }

    @Override
    public void step(LayerSolver solver, int member, double start, double end) {
        day.step(solver, member, start, end);
    }

    @Override
    public void endStage(LayerSolver solver, int member, StageQuality quality) {
        day.endStage(solver, member, quality);
    }

    /** Whether it came to the temperature at which it was to be taken out. */
    boolean isReached() {
        return day.end(CookStages.HEAT).stopped();
    }

    /** Core temperature when it is taken out [K]. */
    double pull() {
        return day.end(CookStages.HEAT).coreTemperature();
    }

    /** Highest core temperature from then on [K]. */
    double peak() {
        return day.peakCore(day.end(CookStages.HEAT).end());
    }

    /** Time from taking it out to the peak [s]. */
    double timeToPeak() {
        double out = day.end(CookStages.HEAT).end();
        return day.peakTime(out) - out;
    }

    /** Share of the hold at the worst place after the rest [-]. */
    double kill() {
        return day.end(CookStages.REST).leastKill();
    }

    /** Loss of mass after the rest [kg/kg]. */
    double loss() {
        return day.end(CookStages.REST).massLoss();
    }

    /** Time of the core at or above a temperature [s]. */
    double stay(double temperature) {
        return day.timeAbove(temperature, 0);
    }
}
