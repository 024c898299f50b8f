package io.github.saltfront.live;

import io.github.saltfront.plan.CookSequence;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.UnknownProbeError;
import java.util.OptionalDouble;

/**
 * What a live cook starts from: the plan, and what is known about the probe.
 *
 * @param request the request that was planned
 * @param meat the meat, with the salt it has when the heat starts
 * @param startTemperature its temperature when the heat starts [K]
 * @param wished core temperature to end at by carry-over [K]
 * @param pull reading at which the plan takes it out of the main heat [K]
 * @param rest rest before serving [s]
 * @param longest time from the first heat that 95 % of the plan's ensemble do not exceed until the reading is reached [s]
 * @param correction what layers are corrected by, from the check in three dimensions
 * @param probeError what is known of the thermometer in the meat
 * @param placement what the cook vouches for about the place of the tip
 * @param serveAt when it is to be served, since the start of the heat [s], if there is such a time
 * @param salted whether salt went in, for the rule
 */
public record LiveSetup(
        Request request,
        MeatModel meat,
        double startTemperature,
        double wished,
        double pull,
        double rest,
        double longest,
        SolidCheck.Correction correction,
        ProbeError probeError,
        Placement placement,
        OptionalDouble serveAt,
        boolean salted) {

    /**
     * Takes over a plan. Meat that was salted ahead comes from the refrigerator.
     *
     * @param plan the plan
     * @return a setup with a thermometer that was not checked, in a place nobody vouches for
     */
    public static LiveSetup of(Plan plan) {
        Request request = plan.request();
        Plan.CookPlan cook = plan.cooking();
        boolean ahead = plan.salting().treatment().isSoak() || plan.salting().treatment() == Request.Treatment.DRY_SALT;
        return new LiveSetup(
                request,
                salted(request.food().meat(), plan.result().rawMeanSalt().median()),
                ahead ? request.salting().refrigerator() : request.food().startTemperature(),
                cook.wished(),
                cook.pullTemperature(),
                cook.rest(),
                request.cook().sequence().before().stream()
                                .mapToDouble(CookSequence.Step::time)
                                .sum()
                        + cook.timeToPull().high(),
                cook.check().map(SolidCheck::correction).orElse(SolidCheck.Correction.NONE),
                new UnknownProbeError(),
                Placement.unknown(),
                OptionalDouble.empty(),
                Planner.rule(request).salted());
    }

    private static MeatModel salted(MeatModel meat, double salt) {
        return new MeatModel(
                meat.name(),
                meat.species(),
                meat.composition(),
                salt,
                meat.diffusivity(),
                meat.juiceFactor(),
                meat.safety(),
                meat.hasSkin());
    }

    /**
     * Returns the setup with what is known of the thermometer.
     *
     * @param error its error
     * @param place what the cook vouches for about the place of the tip
     * @return the setup
     */
    public LiveSetup withProbe(ProbeError error, Placement place) {
        return new LiveSetup(
                request,
                meat,
                startTemperature,
                wished,
                pull,
                rest,
                longest,
                correction,
                error,
                place,
                serveAt,
                salted);
    }

    /**
     * Returns the setup with a time to serve.
     *
     * @param seconds when, since the start of the heat [s]
     * @return the setup
     */
    public LiveSetup servedAt(double seconds) {
        return new LiveSetup(
                request,
                meat,
                startTemperature,
                wished,
                pull,
                rest,
                longest,
                correction,
                probeError,
                placement,
                OptionalDouble.of(seconds),
                salted);
    }

    /** Returns what is required. */
    public SafetyRule rule() {
        return Planner.rule(request).withSalt(salted);
    }
}
