package io.github.saltfront.app.probe;

import io.github.saltfront.words.Phrases;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;

/** Collects the times of all rows and settles what one row cannot tell: date order, midnight, daylight saving, direction. */
final class TimeAxis {
    private static final Phrases PHRASES = Phrases.of(TimeAxis.class);

    private static final double DAY = 86400;
    private static final double HOUR = 3600;

    private double[] dayFirst = new double[1024];
    private double[] monthFirst = new double[1024];
    private int size;
    private boolean dayFirstFails;
    private boolean monthFirstFails;
    private boolean clockOnly;
    private boolean localDates;

    void add(TimeCell cell, double scale) {
        if (size == dayFirst.length) {
            dayFirst = java.util.Arrays.copyOf(dayFirst, 2 * size);
            monthFirst = java.util.Arrays.copyOf(monthFirst, 2 * size);
        }
        dayFirst[size] = cell.value() * scale;
        monthFirst[size] = cell.alternative() * scale;
        dayFirstFails |= Double.isNaN(cell.value());
        monthFirstFails |= Double.isNaN(cell.alternative());
        clockOnly |= cell.kind() == TimeCell.Kind.CLOCK || cell.kind() == TimeCell.Kind.TWO_PART;
        localDates |= cell.kind() == TimeCell.Kind.DATE_TIME && !cell.isZoned();
        size++;
    }

    int size() {
        return size;
    }

    /** Returns the settled times [s], or adds a problem and returns none. */
    double[] settle(List<String> notes, List<LogProblem> problems) {
        if (dayFirstFails && monthFirstFails) {
            problems.add(new LogProblem(0, PHRASES.say("the-dates-fit-neither-day")));
            return new double[0];
        }
        double[] times = java.util.Arrays.copyOf(choose(notes), size);
        if (clockOnly) {
            unrollMidnight(times, notes);
        }
        if (localDates) {
            unrollDaylightSaving(times, notes);
        }
        return times;
    }

    private double[] choose(List<String> notes) {
        if (dayFirstFails) {
            notes.add(PHRASES.say("dates-read-as-month-day"));
            return monthFirst;
        }
        if (monthFirstFails || same()) {
            return dayFirst;
        }
        double daySpan = span(dayFirst);
        double monthSpan = span(monthFirst);
        boolean day = daySpan <= monthSpan;
        if (daySpan != monthSpan) {
            notes.add(PHRASES.say("dates-read-as-which-makes", PHRASES.say(day ? "day-month" : "month-day")));
        }
        return day ? dayFirst : monthFirst;
    }

    private boolean same() {
        return java.util.Arrays.equals(dayFirst, 0, size, monthFirst, 0, size);
    }

    private double span(double[] times) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            low = Math.min(low, times[i]);
            high = Math.max(high, times[i]);
        }
        return high - low;
    }

    private static void unrollMidnight(double[] times, List<String> notes) {
        double added = 0;
        double before = times.length > 0 ? times[0] : 0;
        for (int i = 1; i < times.length; i++) {
            double now = times[i];
            if (before - now > DAY / 2 && before < DAY) {
                added += DAY;
            }
            before = now;
            times[i] = now + added;
        }
        if (added > 0) {
            notes.add(PHRASES.say("the-clock-passes-midnight-a"));
        }
    }

    /** Puts the repeated hour of autumn after the first one; the hour left out in spring stays a gap, which credits nothing. */
    private static void unrollDaylightSaving(double[] times, List<String> notes) {
        double added = 0;
        double before = times.length > 0 ? times[0] : 0;
        double step = 60;
        for (int i = 1; i < times.length; i++) {
            double now = times[i];
            double jump = now - before;
            if (added == 0 && jump < 0 && Math.abs(jump + HOUR) <= 2 * step && isChangeNight(before)) {
                added = HOUR;
            } else if (jump > 0) {
                step = Math.min(jump, 600);
            }
            before = now;
            times[i] = now + added;
        }
        if (added > 0) {
            notes.add(PHRASES.say("the-clock-was-set-back"));
        }
    }

    private static boolean isChangeNight(double local) {
        LocalDate date = LocalDate.ofEpochDay((long) Math.floor(local / DAY));
        double hour = (local - DAY * Math.floor(local / DAY)) / HOUR;
        Month month = date.getMonth();
        boolean season =
                month == Month.OCTOBER || month == Month.NOVEMBER || month == Month.MARCH || month == Month.APRIL;
        return season && date.getDayOfWeek() == DayOfWeek.SUNDAY && hour >= 0.9 && hour <= 3.1;
    }
}
