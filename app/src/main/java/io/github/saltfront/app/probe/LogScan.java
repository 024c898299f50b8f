package io.github.saltfront.app.probe;

import io.github.saltfront.app.probe.LogColumns.Probe;
import io.github.saltfront.app.probe.LogOptions.TemperatureUnit;
import io.github.saltfront.app.probe.LogOptions.TimeUnit;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One pass over the text of a log. */
final class LogScan {
    private static final Phrases PHRASES = Phrases.of(LogScan.class);

    private static final double EPOCH_SECONDS = 1e8;
    private static final double EPOCH_MILLISECONDS = 1e11;

    private static final int MOST_PROBES = 31;

    private final String text;
    private final LogOptions options;
    private final Cells cells;
    private final TimeCell time = new TimeCell();
    private final TimeCell clock = new TimeCell();
    private final TimeAxis axis = new TimeAxis();
    private final List<LogProblem> problems = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private double[] kelvin = new double[1024];
    private int[] lines = new int[1024];
    private int[] lacking = new int[1024];
    private int lackingNow;
    private int nextNul = -1;
    private double[] settled = new double[0];
    private List<Probe> used = List.of();
    private boolean[] isFahrenheit = new boolean[0];
    private boolean[] everRead = new boolean[0];
    private Optional<LogColumns> columns = Optional.empty();
    private int width;
    private int previousDecimals;
    private int uncounted;
    private boolean fatal;
    private double timeScale = Double.NaN;
    private TimeCell.Kind timeKind = TimeCell.Kind.NONE;

    LogScan(String text, LogOptions options) {
        this.text = text.indexOf('\n') < 0 ? text.replace('\r', '\n') : text;
        this.options = options;
        this.cells = new Cells(this.text, Separators.find(this.text));
    }

    void run() {
        List<String> header = List.of();
        int line = 0;
        int headerLine = 0;
        for (int from = 0; from < text.length() && !fatal; ) {
            int newline = text.indexOf('\n', from);
            boolean closed = newline >= 0;
            int end = closed ? newline : text.length();
            int next = closed ? newline + 1 : end;
            if (end > from && text.charAt(end - 1) == '\r') {
                end--;
            }
            line++;
            if (isReadable(from, end, line)) {
                cells.split(from, end);
                if (columns.isEmpty() && looksLikeHeader()) {
                    header = names();
                    headerLine = line;
                } else {
                    if (columns.isEmpty()) {
                        open(header, headerLine > 0 ? headerLine : line);
                    }
                    if (!fatal) {
                        row(line, closed);
                    }
                }
            }
            from = next;
        }
        finish();
    }

    private boolean isReadable(int from, int end, int line) {
        if (nextNul < from) {
            int found = text.indexOf(0, from);
            nextNul = found < 0 ? Integer.MAX_VALUE : found;
        }
        if (nextNul < end) {
            problem(line, PHRASES.say("nul-bytes-as-after-a"));
            return false;
        }
        int i = from;
        while (i < end && (text.charAt(i) <= ' ' || text.charAt(i) == ';' || text.charAt(i) == ',')) {
            i++;
        }
        return i < end && text.charAt(from) != '#';
    }

    private boolean looksLikeHeader() {
        for (int i = 0; i < cells.count(); i++) {
            if (!cells.isEmpty(i) && time.parse(text, cells.start(i), cells.end(i)) != TimeCell.Kind.NONE) {
                return false;
            }
        }
        return true;
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < cells.count(); i++) {
            names.add(cells.get(i));
        }
        return names;
    }

    private void open(List<String> header, int line) {
        width = header.size() > 1 ? header.size() : cells.count();
        LogColumns found = header.size() > 1 ? LogColumns.fromHeader(header) : withoutHeader();
        columns = Optional.of(found);
        List<Probe> probes = choose(found, line);
        if (!fatal) {
            settleUnits(probes, line);
        }
        used = probes;
        everRead = new boolean[probes.size()];
    }

    private LogColumns withoutHeader() {
        boolean dateThenClock = cells.count() > 2
                && time.parse(text, cells.start(0), cells.end(0)) == TimeCell.Kind.DATE
                && time.parse(text, cells.start(1), cells.end(1)).compareTo(TimeCell.Kind.NUMBER) > 0;
        return LogColumns.withoutHeader(cells.count(), dateThenClock);
    }

    private List<Probe> choose(LogColumns found, int line) {
        if (found.probes().isEmpty()) {
            return fail(line, PHRASES.say("found-no-temperature-column-expected"));
        }
        if (options.probe().isPresent()) {
            String wanted = options.probe().get().toLowerCase(Locale.ROOT).strip();
            List<Probe> named = found.probes().stream()
                    .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(wanted))
                    .toList();
            List<Probe> containing = found.probes().stream()
                    .filter(p -> p.name().toLowerCase(Locale.ROOT).contains(wanted))
                    .toList();
            List<Probe> match = named.isEmpty() ? containing : named;
            return match.size() == 1
                    ? match
                    : fail(
                            line,
                            PHRASES.say(
                                    "probe-must-name-one-column",
                                    options.probe().get(),
                                    match.size(),
                                    TemperatureLogReader.names(found.probes())));
        }
        List<Probe> inMeat = found.probes().stream().filter(p -> !p.ambient()).toList();
        if (inMeat.isEmpty()) {
            return fail(line, PHRASES.say("only-air-or-bath-columns"));
        }
        if (inMeat.size() < found.probes().size()) {
            notes.add(PHRASES.say("air-or-bath-columns-were"));
        }
        if (inMeat.size() > MOST_PROBES) {
            return fail(line, PHRASES.say("found-temperature-columns-at-most", inMeat.size(), MOST_PROBES));
        }
        if (inMeat.size() > 1) {
            notes.add(PHRASES.say("several-probes-at-every-time"));
        }
        return inMeat;
    }

    private List<Probe> fail(int line, String message) {
        problem(line, message);
        fatal = true;
        return List.of();
    }

    private void settleUnits(List<Probe> probes, int line) {
        isFahrenheit = new boolean[probes.size()];
        for (int i = 0; i < probes.size(); i++) {
            Probe probe = probes.get(i);
            Optional<TemperatureUnit> unit =
                    probe.unit().or(() -> unitInCell(probe.index())).or(options::unit);
            if (unit.isEmpty()) {
                fail(line, PHRASES.say("cannot-tell-the-unit-of", TemperatureLogReader.names(List.of(probe))));
            } else if (options.unit().isPresent()
                    && unit.get() != options.unit().get()) {
                fail(
                        line,
                        PHRASES.say(
                                "says-but-unit-says-remove",
                                TemperatureLogReader.names(List.of(probe)),
                                unit.get(),
                                options.unit().get()));
            } else {
                isFahrenheit[i] = unit.get() == TemperatureUnit.F;
            }
        }
    }

    private Optional<TemperatureUnit> unitInCell(int index) {
        String cell = cells.get(index).toUpperCase(Locale.ROOT);
        if (cell.endsWith("C")) {
            return Optional.of(TemperatureUnit.C);
        }
        return cell.endsWith("F") ? Optional.of(TemperatureUnit.F) : Optional.empty();
    }

    private void row(int line, boolean closed) {
        LogColumns known = columns.orElseThrow();
        if (cells.count() > width) {
            problem(line, PHRASES.say("found-cells-expected-decimal-commas", cells.count(), width));
            return;
        }
        double coldest = coldest(line, closed);
        if (Double.isNaN(coldest)) {
            return;
        }
        int index = known.timeIndex();
        if (cells.isEmpty(index) || time.parse(text, cells.start(index), cells.end(index)) == TimeCell.Kind.NONE) {
            problem(line, formula(index, PHRASES.say("cannot-read-the-time-the", cells.get(index))));
            return;
        }
        int clockIndex = known.clockIndex();
        if (clockIndex >= 0 && !cells.isEmpty(clockIndex)) {
            clock.parse(text, cells.start(clockIndex), cells.end(clockIndex));
            time.addClock(clock);
        }
        if (!settleTime(line)) {
            return;
        }
        if (axis.size() == kelvin.length) {
            kelvin = Arrays.copyOf(kelvin, 2 * kelvin.length);
            lines = Arrays.copyOf(lines, kelvin.length);
            lacking = Arrays.copyOf(lacking, kelvin.length);
        }
        kelvin[axis.size()] = coldest;
        lines[axis.size()] = line;
        lacking[axis.size()] = lackingNow;
        axis.add(time, timeScale);
    }

    /** Settles on the first row what the times are; later rows must be of the same kind. */
    private boolean settleTime(int line) {
        if (Double.isNaN(timeScale)) {
            timeKind = time.kind();
            timeScale = scale(line);
            return !fatal;
        }
        if (time.kind() != timeKind) {
            problem(line, PHRASES.say("the-time-is-written-in"));
            return false;
        }
        return true;
    }

    private double scale(int line) {
        LogColumns known = columns.orElseThrow();
        switch (timeKind) {
            case DATE_TIME, CLOCK -> {
                return 1;
            }
            case NUMBER -> {
                if (time.value() > EPOCH_SECONDS) {
                    return time.value() > EPOCH_MILLISECONDS ? 1e-3 : 1;
                }
                Optional<TimeUnit> unit = known.timeUnit().or(options::timeUnit);
                if (unit.isEmpty()) {
                    fail(line, PHRASES.say("cannot-tell-the-unit-of-2"));
                    return 1;
                }
                return unit.get().seconds();
            }
            case TWO_PART -> {
                Optional<Integer> meaning = known.twoPartSeconds();
                if (meaning.isEmpty()) {
                    fail(line, PHRASES.say("may-be-h-min-or", cells.get(known.timeIndex())));
                    return 1;
                }
                return meaning.get() / 3600.0;
            }
            default -> {
                fail(line, PHRASES.say("the-time-column-holds-dates"));
                return 1;
            }
        }
    }

    private double coldest(int line, boolean closed) {
        double coldest = Double.POSITIVE_INFINITY;
        lackingNow = 0;
        for (int i = 0; i < used.size(); i++) {
            int index = used.get(i).index();
            if (cells.isEmpty(index)) {
                lackingNow |= 1 << i;
                continue;
            }
            double shown = cells.number(index);
            if (Double.isNaN(shown)) {
                shown = withUnit(index, isFahrenheit[i]);
            }
            if (Double.isNaN(shown) || !closed && isCutOff(index)) {
                String what = Double.isNaN(shown)
                        ? formula(index, PHRASES.say("cannot-read-the-temperature-the", cells.get(index)))
                        : PHRASES.say("the-file-ends-inside-this");
                problem(line, what);
                return Double.NaN;
            }
            double value = isFahrenheit[i] ? Temperature.fromFahrenheit(shown) : Temperature.fromCelsius(shown);
            if (!(value >= 200 && value <= 700)) {
                problem(line, PHRASES.say("temperature-is-out-of-range", cells.get(index)));
                return Double.NaN;
            }
            everRead[i] = true;
            previousDecimals = cells.decimals(index);
            coldest = Math.min(coldest, value);
        }
        if (coldest == Double.POSITIVE_INFINITY) {
            problem(
                    line,
                    closed ? PHRASES.say("a-temperature-is-missing-the") : PHRASES.say("the-file-ends-inside-this"));
            return Double.NaN;
        }
        return coldest;
    }

    /** A last line without an end, with fewer decimals than the rows before, may have lost digits. */
    private boolean isCutOff(int index) {
        return index == cells.count() - 1 && cells.decimals(index) < previousDecimals;
    }

    private double withUnit(int index, boolean fahrenheit) {
        String cell = cells.get(index).toUpperCase(Locale.ROOT);
        String number = cell.replaceFirst("\\s*(°|º|DEG)?\\s*" + (fahrenheit ? "F" : "C") + "$", "");
        return Numbers.parse(number, 0, number.length());
    }

    private String formula(int index, String otherwise) {
        return cells.get(index).startsWith("=") ? PHRASES.say("a-formula-stands-in-a") : otherwise;
    }

    private void problem(int line, String message) {
        if (problems.size() < TemperatureLogReader.MOST_PROBLEMS) {
            problems.add(new LogProblem(line, message));
        } else {
            uncounted++;
        }
    }

    private void finish() {
        if (!fatal && axis.size() > 0) {
            settled = axis.settle(notes, problems);
            leaveOutIncomplete();
            turnIfNewestFirst();
        }
        if (!fatal && settled.length == 0) {
            problem(0, PHRASES.say("found-no-row-with-a"));
        }
        if (uncounted > 0) {
            problems.add(new LogProblem(0, PHRASES.say("more-rows-with-problems-are", uncounted)));
        }
    }

    /** The lowest of several probes is known only where all that ever gave a reading gave one. */
    private void leaveOutIncomplete() {
        int alive = 0;
        for (int i = 0; i < used.size(); i++) {
            alive |= everRead[i] ? 1 << i : 0;
        }
        int kept = 0;
        for (int i = 0; i < settled.length; i++) {
            if ((lacking[i] & alive) == 0) {
                settled[kept] = settled[i];
                kelvin[kept++] = kelvin[i];
            } else {
                problem(lines[i], PHRASES.say("a-temperature-is-missing-the"));
            }
        }
        settled = Arrays.copyOf(settled, kept);
    }

    private void turnIfNewestFirst() {
        int falling = 0;
        for (int i = 1; i < settled.length; i++) {
            falling += settled[i] < settled[i - 1] ? 1 : 0;
        }
        if (settled.length > 2 && falling > 0.9 * (settled.length - 1)) {
            notes.add(PHRASES.say("the-newest-row-comes-first"));
            for (int i = 0, j = settled.length - 1; i < j; i++, j--) {
                double swap = settled[i];
                settled[i] = settled[j];
                settled[j] = swap;
                swap = kelvin[i];
                kelvin[i] = kelvin[j];
                kelvin[j] = swap;
            }
        }
    }

    boolean isFatal() {
        return fatal;
    }

    double[] times() {
        return settled;
    }

    double[] kelvin() {
        return Arrays.copyOf(kelvin, settled.length);
    }

    List<String> usedProbes() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < used.size(); i++) {
            if (everRead[i]) {
                names.add(used.get(i).name());
            }
        }
        return List.copyOf(names);
    }

    List<LogProblem> problems() {
        return List.copyOf(problems);
    }

    List<String> notes() {
        return List.copyOf(notes);
    }
}
