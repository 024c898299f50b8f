package io.github.saltfront.live;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.function.Function;

/**
 * One cook as it goes on. An ensemble of the planned piece is simulated once at the start; each reading then only changes the
 * weights of its members ({@link #absorb}, some milliseconds). When few members carry the weight ({@link #wantsRefresh}), and
 * after an event ({@link #tell}), the ensemble is drawn and simulated anew around what the readings left likely, which takes
 * seconds on the given executor.
 *
 * <p>What becomes of a reading does not depend on the order in which the readings of a probe arrive, and one that is given twice
 * counts once. The same readings, events and seed give the same outlook; only {@link #refresh} draws anew, and does so from the
 * same seed too. Time is counted from the start of the heat; the class has no clock. Not thread-safe.
 */
public final class LiveCook {
    /** Simulated members. */
    public static final int MEMBERS = 500;

    /** Particles of each member, which differ in pace and probe. */
    private static final int HANDS = 8;

    /** Members and particles that must carry the weight. */
    private static final double FEWEST_CURVES = 25;

    private static final double FEWEST_PARTICLES = 80;

    /** Members that should carry the weight of a distribution from which a new ensemble is drawn. */
    private static final double PROPOSING_CURVES = 40;

    private static final int MOST_ROUNDS = 3;

    /** Largest factor on the error of the model [-]. */
    private static final double MOST_DOUBT = 16;

    private final LiveSetup setup;
    private final CookStages stages;
    private final SolidLag lag;
    private final int members;
    private final long seed;
    private final double bin;
    private final double correlation;
    private final List<CookEvent> events = new ArrayList<>();
    private final Map<String, ProbeTrack> tracks = new LinkedHashMap<>();
    private final Map<String, Reading.Role> roles = new LinkedHashMap<>();
    private final Map<String, ProbeFilter> filters = new LinkedHashMap<>();
    private final AirTrack air = new AirTrack();
    private Course course;
    private Swarm swarm;
    private double until;
    private double newest;
    private double doubt = 1;
    private int beside;
    private long weighedBin = Long.MIN_VALUE;
    private double[] weights = new double[0];

    private LiveCook(
            LiveSetup setup, Optional<SolidLag> known, int members, long seed, Function<Swarm.Scene, Swarm> first) {
        this.setup = setup;
        this.members = members;
        this.seed = seed;
        stages = new CookStages(setup.request(), setup.rule());
        bin = Math.max(5, Math.min(120, setup.longest() / 120));
        correlation = Math.max(300, Math.min(2400, setup.longest() / 4));
        until = 1.6 * setup.longest() + 1200;
        course = Course.of(setup, events);
        lag = known.orElseGet(() -> SolidLag.of(setup, course));
        swarm = first.apply(scene());
        reweigh();
    }

    /**
     * Starts a cook.
     *
     * @param setup what it starts from
     * @param seed seed of the ensemble
     * @param executor where to run parts of the simulation; has no effect on the numbers
     * @return the cook, without readings
     */
    public static LiveCook start(LiveSetup setup, long seed, Executor executor) {
        return start(setup, MEMBERS, seed, executor);
    }

    /**
     * Starts a cook with an ensemble of another size.
     *
     * @param setup what it starts from
     * @param members simulated members, 50 to 5000
     * @param seed seed of the ensemble
     * @param executor where to run parts of the simulation; has no effect on the numbers
     * @return the cook, without readings
     */
    public static LiveCook start(LiveSetup setup, int members, long seed, Executor executor) {
        Checks.requireInRange("members of the ensemble", members, 50, 5000, "-");
        return new LiveCook(setup, Optional.empty(), members, seed, scene -> Swarm.prior(scene, seed, executor));
    }

    /**
     * Starts another cook of the same plan from the simulation of this one, before anything was absorbed here.
     *
     * @return a cook without readings
     */
    public LiveCook another() {
        Checks.require(
                events.isEmpty() && tracks.isEmpty(),
                "another cook can only start from one that has absorbed nothing yet.");
        return new LiveCook(setup, Optional.of(lag), members, seed, scene -> swarm.copy(seed));
    }

    private Swarm.Scene scene() {
        return new Swarm.Scene(setup, course, lag, until, members, HANDS);
    }

    /**
     * Absorbs a reading and looks ahead from its time.
     *
     * @param reading the reading
     * @return what is known and expected
     */
    public Outlook absorb(Reading reading) {
        add(reading);
        return outlook(Math.max(newest, 0));
    }

    /**
     * Absorbs a reading without looking ahead.
     *
     * @param reading the reading
     * @return what became of it
     */
    public ReadingState add(Reading reading) {
        if (!reading.role().isInMeat()) {
            if (reading.role() == Reading.Role.OVEN_AIR
                    && reading.time() >= 0
                    && air.keep(reading.time(), reading.temperature())) {
                weighedBin = Long.MIN_VALUE;
            }
            beside++;
            newest = Math.max(newest, reading.time());
            return ReadingState.NOT_IN_MEAT;
        }
        roles.putIfAbsent(reading.probe(), reading.role());
        ProbeTrack track = tracks.computeIfAbsent(reading.probe(), name -> new ProbeTrack(name, bin));
        boolean late = !track.raw().isEmpty() && reading.time() <= track.raw().lastKey();
        if (track.keep(reading.time(), reading.temperature())) {
            newest = Math.max(newest, reading.time());
            if (late) {
                replay();
            } else {
                process(track, reading.time(), reading.temperature());
            }
        }
        return state(reading.probe(), reading.time());
    }

    /**
     * Returns what became of a reading.
     *
     * @param probe name of the probe
     * @param time time of the reading [s]
     * @return its state; of readings that are not in the meat, that they are not
     */
    public ReadingState state(String probe, double time) {
        ProbeTrack track = tracks.get(probe);
        return track == null ? ReadingState.NOT_IN_MEAT : track.states().getOrDefault(time, ReadingState.NOT_IN_MEAT);
    }

    private void process(ProbeTrack track, double time, double temperature) {
        ProbeFilter filter = filters.computeIfAbsent(track.probe(), name -> track.restart(swarm, correlation, doubt));
        long number = (long) Math.floor(time / bin);
        if (number != weighedBin) {
            reweigh();
            weighedBin = number;
        }
        track.process(time, temperature, filter, swarm, weights);
    }

    /** Judges and absorbs all readings of the probes in the meat anew, in order of time. */
    private void replay() {
        filters.clear();
        weighedBin = Long.MIN_VALUE;
        reweigh();
        List<Kept> all = new ArrayList<>();
        for (ProbeTrack track : tracks.values()) {
            filters.put(track.probe(), track.restart(swarm, correlation, doubt));
            track.raw().forEach((time, temperature) -> all.add(new Kept(track, time, temperature)));
        }
        all.sort(Comparator.comparingDouble(Kept::time));
        all.forEach(kept -> process(kept.track, kept.time, kept.temperature));
    }

    private record Kept(ProbeTrack track, double time, double temperature) {}

    /** Computes the weights of the particles from all that was absorbed. */
    private void reweigh() {
        double[] logs = new double[swarm.count()];
        OptionalDouble level = airLevel();
        double setting = course.mediumAt(newest).setting();
        for (int p = 0; p < logs.length; p++) {
            logs[p] = swarm.logRatio(p);
            if (level.isPresent()) {
                double off = (level.getAsDouble() - setting - ovenError(p)) / AirTrack.SPOT_ERROR;
                logs[p] -= 0.5 * off * off;
            }
        }
        for (ProbeFilter filter : filters.values()) {
            for (int p = 0; p < logs.length; p++) {
                logs[p] += filter.logLikelihood(p);
            }
        }
        weights = normalized(logs, 1);
    }

    private OptionalDouble airLevel() {
        return isInAir() ? air.level(lastChange()) : OptionalDouble.empty();
    }

    /** Whether the piece is in the air of an appliance that is set to a temperature. */
    private boolean isInAir() {
        return course.takenOut().isEmpty()
                && course.mediumAt(newest).appliance().medium() == Appliance.Medium.AIR;
    }

    private double lastChange() {
        double told = events.stream()
                .filter(e -> e instanceof CookEvent.SettingChanged || e instanceof CookEvent.DoorOpened)
                .mapToDouble(CookEvent::time)
                .filter(time -> time <= newest)
                .max()
                .orElse(0);
        return Math.max(told, course.heatStart(newest));
    }

    private double ovenError(int particle) {
        double z = swarm.variate(LuckSpace.SIMULATED.indexOf(Uncertainty.SETTING), particle);
        return z / Draw.NINETY_FIVE * course.mediumAt(newest).appliance().setPointError();
    }

    /** Exponentials of the logarithms to a power, with sum 1. */
    private static double[] normalized(double[] logs, double power) {
        double highest = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            highest = Math.max(highest, log);
        }
        double[] result = new double[logs.length];
        double sum = 0;
        for (int p = 0; p < logs.length; p++) {
            double exponent = power * (logs[p] - highest);
            result[p] = exponent > -40 ? Math.exp(exponent) : 0;
            sum += result[p];
        }
        for (int p = 0; p < logs.length; p++) {
            result[p] /= sum;
        }
        return result;
    }

    private static double effective(double[] weights, int together) {
        double squares = 0;
        for (int first = 0; first < weights.length; first += together) {
            double sum = 0;
            for (int p = first; p < first + together; p++) {
                sum += weights[p];
            }
            squares += sum * sum;
        }
        return 1 / squares;
    }

    /** Returns whether few members carry the weight, or the cook goes on beyond what is simulated. */
    public boolean wantsRefresh() {
        reweigh();
        return isDepleted(weights) || newest > 0.85 * until;
    }

    private static boolean isDepleted(double[] weights) {
        return effective(weights, HANDS) < FEWEST_CURVES || effective(weights, 1) < FEWEST_PARTICLES;
    }

    /**
     * Draws and simulates a new ensemble around what the readings left likely, until enough members carry the weight. If they
     * do not after some rounds, the readings lie outside of what the model can do: then its own error is taken for larger, until
     * enough members explain them; the intervals widen, and the cook is told.
     *
     * @param executor where to run parts of the simulation
     */
    public void refresh(Executor executor) {
        if (newest > 0.85 * until) {
            until = 1.5 * newest + 1200;
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            renew(executor);
            if (!isDepleted(weights)) {
                return;
            }
        }
        while (isDepleted(weights) && doubt < MOST_DOUBT) {
            doubt *= 1.5;
            replay();
            reweigh();
            if (isDepleted(weights)) {
                // members drawn under a smaller doubt are too close together for the larger one
                renew(executor);
            }
        }
    }

    private void renew(Executor executor) {
        reweigh();
        swarm = swarm.proposed(scene(), tempered(), executor);
        replay();
        reweigh();
    }

    /** Weights to the highest power at which enough members carry them. */
    private double[] tempered() {
        if (effective(weights, HANDS) >= PROPOSING_CURVES) {
            return weights;
        }
        double[] logs = new double[weights.length];
        for (int p = 0; p < logs.length; p++) {
            logs[p] = Math.log(Math.max(1e-300, weights[p]));
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 30; i++) {
            double power = 0.5 * (low + high);
            if (effective(normalized(logs, power), HANDS) >= PROPOSING_CURVES) {
                low = power;
            } else {
                high = power;
            }
        }
        return normalized(logs, low);
    }

    /**
     * Takes note of what the cook did. Where it changes the course, the ensemble is simulated anew.
     *
     * @param event what happened
     * @param executor where to run parts of the simulation
     * @return what is known and expected now
     */
    public Outlook tell(CookEvent event, Executor executor) {
        return tell(List.of(event), executor);
    }

    /**
     * Takes note of several things the cook did, with one simulation for all of them. The outlook does not depend on the order
     * in which they are told.
     *
     * @param told what happened
     * @param executor where to run parts of the simulation
     * @return what is known and expected now
     */
    public Outlook tell(List<CookEvent> told, Executor executor) {
        int before = events.size();
        boolean judgedAnew = false;
        for (CookEvent event : told) {
            if (event instanceof CookEvent.UnitConfirmed confirmed) {
                track(confirmed.probe()).confirmUnit();
                judgedAnew = true;
            } else if (event instanceof CookEvent.ProbeMoved moved) {
                track(moved.probe()).move(moved.time());
                judgedAnew = true;
            } else {
                events.add(event);
                newest = Math.max(newest, event.time());
            }
        }
        if (events.size() > before) {
            course = Course.of(setup, events);
            if (course.restStart().isPresent()) {
                until = course.restStart().getAsDouble() + Math.max(2700, 2 * setup.rest());
            }
            renew(executor);
        } else if (judgedAnew) {
            replay();
        }
        return outlook(Math.max(newest, 0));
    }

    private ProbeTrack track(String probe) {
        ProbeTrack track = tracks.get(probe);
        Checks.require(
                track != null, "no probe in the meat is named \"" + probe + "\"; there are " + tracks.keySet() + ".");
        return Objects.requireNonNull(track);
    }

    /**
     * Looks ahead.
     *
     * @param now the present time since the start of the heat [s], not negative
     * @return what is known and expected
     */
    public Outlook outlook(double now) {
        Checks.requireInRange("present time", now, 0, 4 * 86400.0, "s");
        reweigh();
        Optional<ProbeTrack> core = coreTrack();
        Forecast forecast = forecast(now, core);
        Outlook.Pull pull = forecast.pull(stages.isBath());
        Outlook.Inferred inferred = forecast.inferred();
        Outlook.Plate plate = forecast.plate(pull);
        Optional<MeasuredHold> measured = core.flatMap(track -> MeasuredHold.of(track.accepted(), setup));
        Outlook.Phase phase = course.takenOut().isPresent() ? Outlook.Phase.REST : Outlook.Phase.HEAT;
        int shocks = filters.values().stream().mapToInt(ProbeFilter::shocks).sum();
        Spread oven = forecast.ovenError();
        LiveWarnings warnings = new LiveWarnings();
        warnings.safety(measured);
        warnings.comeUp(inferred, now);
        tracks.values().forEach(track -> warnings.probe(track, now));
        warnings.mismatch(shocks, doubt);
        warnings.door(air.doorSeen(lastChange()) && phase == Outlook.Phase.HEAT);
        if (phase == Outlook.Phase.HEAT) {
            if (isInAir()) {
                warnings.oven(oven);
            }
            warnings.place(inferred.probeAbove());
            warnings.stalled(forecast.rise(1200), pull);
        }
        warnings.serving(plate, phase);
        int leftOut = (int) tracks.values().stream()
                .flatMap(track -> track.states().values().stream())
                .filter(ReadingState::isLeftOut)
                .count();
        int used = tracks.values().stream().mapToInt(t -> t.accepted().size()).sum();
        return new Outlook(
                now,
                phase,
                pull,
                measured,
                forecast.measuredTimeLeft(measured),
                inferred,
                plate,
                warnings.list(),
                new Outlook.Quality(used, leftOut, effective(weights, HANDS), shocks, oven),
                setup.rule().consumerMinimum());
    }

    private Forecast forecast(double now, Optional<ProbeTrack> core) {
        Optional<ProbeFilter> filter = core.map(track -> filters.get(track.probe()));
        return new Forecast(swarm, weights, setup, course, filter, now, seed);
    }

    /** The probe aimed at the coldest spot, or else any in the meat, that has readings which count. */
    private Optional<ProbeTrack> coreTrack() {
        Optional<ProbeTrack> any = Optional.empty();
        for (ProbeTrack track : tracks.values()) {
            if (!track.accepted().isEmpty()) {
                if (roles.get(track.probe()) == Reading.Role.CORE) {
                    return Optional.of(track);
                }
                any = any.isPresent() ? any : Optional.of(track);
            }
        }
        return any;
    }

    /**
     * Returns the time in this course until the coldest spot is at a temperature.
     *
     * @param temperature temperature [K]
     * @param now present time since the start of the heat [s]
     * @return time left [s]
     */
    public Spread timeToCore(double temperature, double now) {
        reweigh();
        return forecast(now, coreTrack()).timeToCore(temperature);
    }

    /**
     * Returns the time in this course until the core probe shows a temperature, wherever its tip sits.
     *
     * @param temperature temperature [K]
     * @param now present time since the start of the heat [s]
     * @return time left [s]; empty without readings that count
     */
    public Optional<Spread> timeToReading(double temperature, double now) {
        reweigh();
        Optional<ProbeTrack> core = coreTrack();
        return core.isEmpty()
                ? Optional.empty()
                : Optional.of(forecast(now, core).timeToReading(temperature));
    }

    /**
     * One moment of a fan of predictions.
     *
     * @param time time since the start of the heat [s]
     * @param core temperature of the coldest spot [K]
     * @param probe reading of the core probe [K]; empty without readings that count
     */
    public record FanPoint(double time, Spread core, Optional<Spread> probe) {}

    /**
     * Returns the fan of predictions in this course.
     *
     * @param now present time since the start of the heat [s]
     * @param ahead how far to look [s]
     * @param points number of points, at least 2
     * @return the points in order, the first one now
     */
    public List<FanPoint> fan(double now, double ahead, int points) {
        Checks.require(points >= 2, "a fan needs at least 2 points, got " + points + ".");
        reweigh();
        Optional<ProbeTrack> core = coreTrack();
        Forecast forecast = forecast(now, core);
        List<FanPoint> fan = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double time = now + ahead * i / (points - 1);
            fan.add(new FanPoint(
                    time,
                    forecast.core(time),
                    core.isPresent() ? Optional.of(forecast.probe(time)) : Optional.empty()));
        }
        return List.copyOf(fan);
    }

    /**
     * One heat of the cook.
     *
     * @param appliance name of the appliance
     * @param setting temperature it is set to by the plan [K]
     * @param main whether the thermometer ends it
     * @param begin when it began, or begins by the plan's clock [s]; empty where the end of the main heat decides
     * @param told whether the cook said so
     */
    public record Heat(String appliance, double setting, boolean main, OptionalDouble begin, boolean told) {}

    /** Returns the heats in order; most cooks have one. */
    public List<Heat> heats() {
        HeatProgram program = course.program();
        List<Heat> heats = new ArrayList<>();
        for (int h = 0; h < program.size(); h++) {
            int number = h + 1;
            double begin = course.begin(h);
            boolean told = h == 0
                    || events.stream()
                            .anyMatch(e -> e instanceof CookEvent.HeatBegun begun && begun.number() == number);
            heats.add(new Heat(
                    program.heat(h).step().appliance().name(),
                    program.heat(h).step().setting(),
                    h == program.main(),
                    Double.isFinite(begin) ? OptionalDouble.of(begin) : OptionalDouble.empty(),
                    told));
        }
        return List.copyOf(heats);
    }

    double doubt() {
        return doubt;
    }

    /**
     * Returns the front of heat from the start to a time, as the readings make it likely.
     *
     * @param now present time since the start of the heat [s]
     * @param until last moment [s]
     * @param points number of moments, at least 2
     * @return the moments in order
     */
    public List<FrontMoment> front(double now, double until, int points) {
        Checks.require(points >= 2, "a front needs at least 2 moments, got " + points + ".");
        reweigh();
        Forecast forecast = forecast(now, coreTrack());
        List<FrontMoment> moments = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            moments.add(forecast.front(until * i / (points - 1)));
        }
        return List.copyOf(moments);
    }

    /** Returns the name of the probe that is taken for the one in the coldest spot; empty without readings that count. */
    public Optional<String> coreProbe() {
        return coreTrack().map(ProbeTrack::probe);
    }

    /** Returns how many readings of probes that are not in the meat were kept beside. */
    public int beside() {
        return beside;
    }

    /** Returns the time of the newest reading or event [s]. */
    public double newest() {
        return newest;
    }
}
