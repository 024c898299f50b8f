package io.github.saltfront.app.probe;

import java.time.LocalDate;

/**
 * Reads one time as loggers write it: a number, {@code h:mm:ss}, an ISO date and time, or a date with the day or the month first.
 * Reused from row to row.
 */
final class TimeCell {
    /** What a cell turned out to be. */
    enum Kind {
        /** No time. */
        NONE,
        /** A plain number; its unit is told elsewhere. */
        NUMBER,
        /** Two numbers with a colon: hours and minutes, or minutes and seconds. */
        TWO_PART,
        /** Hours, minutes and seconds. */
        CLOCK,
        /** A date without a time. */
        DATE,
        /** A date and a time. */
        DATE_TIME
    }

    private static final int MAX_GROUPS = 9;

    private final int[] groups = new int[MAX_GROUPS];
    private final int[] lengths = new int[MAX_GROUPS];
    private final char[] before = new char[MAX_GROUPS];
    private int groupCount;
    private boolean afternoon;
    private boolean morning;
    private boolean malformed;

    private Kind kind = Kind.NONE;
    private double value;
    private double alternative;
    private boolean zoned;

    /** Returns what the last parsed cell is. */
    Kind kind() {
        return kind;
    }

    /** Returns the time with the day first [s], or the number, or both parts as hours and minutes [s]; NaN if that order is impossible. */
    double value() {
        return value;
    }

    /** Returns the time with the month first [s]; the same as the value where nothing is ambiguous. */
    double alternative() {
        return alternative;
    }

    /** Returns whether the time names its zone, so that the clock never jumps. */
    boolean isZoned() {
        return zoned;
    }

    /** Parses a cell. */
    Kind parse(String text, int from, int to) {
        zoned = false;
        double number = Numbers.parse(text, from, to);
        if (!Double.isNaN(number)) {
            value = number;
            alternative = number;
            kind = Kind.NUMBER;
            return kind;
        }
        split(text, from, to);
        kind = malformed || groupCount < 2 ? Kind.NONE : interpret();
        return kind;
    }

    /** Adds the time of a second cell to the date of the first. */
    void addClock(TimeCell clock) {
        boolean isTime = clock.kind == Kind.TWO_PART || clock.kind == Kind.CLOCK;
        if (kind == Kind.DATE && isTime) {
            value += clock.value;
            alternative += clock.value;
            kind = Kind.DATE_TIME;
        } else {
            kind = Kind.NONE;
        }
    }

    private void split(String text, int from, int to) {
        groupCount = 0;
        afternoon = false;
        morning = false;
        malformed = false;
        int i = from;
        char separator = ' ';
        while (i < to && !malformed) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                i = group(text, i, to, separator);
                separator = ' ';
            } else {
                separator = accept(text, i, c, separator);
                i++;
            }
        }
    }

    private int group(String text, int from, int to, char separator) {
        int i = from;
        int number = 0;
        while (i < to && text.charAt(i) >= '0' && text.charAt(i) <= '9' && i - from < 9) {
            number = 10 * number + (text.charAt(i) - '0');
            i++;
        }
        if (groupCount == MAX_GROUPS) {
            malformed = true;
            return i;
        }
        groups[groupCount] = number;
        lengths[groupCount] = i - from;
        before[groupCount++] = separator;
        return i;
    }

    private char accept(String text, int at, char c, char separator) {
        switch (c) {
            case ' ', 'T', 't' -> {
                return ' ';
            }
            case ',' -> {
                return '.';
            }
            case ':', '/', '-', '.', '+' -> {
                return c;
            }
            case 'Z', 'z' -> zoned = true;
            case 'P', 'p' -> afternoon = true;
            case 'A', 'a' -> morning = true;
            case 'M', 'm' -> {
                if (at == 0 || !(afternoon || morning)) {
                    malformed = true;
                }
            }
            default -> malformed = true;
        }
        return separator;
    }

    private Kind interpret() {
        if (before[1] == ':') {
            value = clock(0);
            alternative = value;
            if (Double.isNaN(value)) {
                return Kind.NONE;
            }
            return groupCount == 2 ? Kind.TWO_PART : Kind.CLOCK;
        }
        if (groupCount < 3 || before[1] != before[2] || before[1] == ' ' || before[1] == '+') {
            return Kind.NONE;
        }
        boolean hasTime = groupCount > 3;
        double time = hasTime ? clock(3) : 0;
        if (lengths[0] == 4) {
            value = date(groups[0], groups[1], groups[2]) + time;
            alternative = value;
        } else {
            int year = groups[2] < 100 ? 2000 + groups[2] : groups[2];
            value = date(year, groups[1], groups[0]) + time;
            // with dots the day always comes first
            alternative = before[1] == '.' ? value : date(year, groups[0], groups[1]) + time;
        }
        if (Double.isNaN(value) && Double.isNaN(alternative)) {
            return Kind.NONE;
        }
        return hasTime ? Kind.DATE_TIME : Kind.DATE;
    }

    /** Returns the seconds of the groups from one on: hours, minutes, seconds, fraction, zone. */
    private double clock(int first) {
        if (first + 1 >= groupCount || before[first + 1] != ':' || groups[first + 1] > 59) {
            return Double.NaN;
        }
        int next = first + 2;
        double seconds = 3600.0 * hours(groups[first]) + 60.0 * groups[first + 1];
        if (next < groupCount && before[next] == ':') {
            if (groups[next] > 59) {
                return Double.NaN;
            }
            seconds += groups[next++];
            if (next < groupCount && before[next] == '.' && lengths[next] > 0) {
                seconds += groups[next] / Math.pow(10, lengths[next]);
                next++;
            }
        }
        if (next < groupCount && (before[next] == '+' || before[next] == '-')) {
            zoned = true;
            double offset = lengths[next] == 4
                    ? 3600.0 * (groups[next] / 100) + 60.0 * (groups[next] % 100)
                    : 3600.0 * groups[next];
            if (next + 1 < groupCount && before[next + 1] == ':') {
                offset += 60.0 * groups[next + 1];
                next++;
            }
            seconds += before[next] == '-' || (before[next] == ':' && before[next - 1] == '-') ? offset : -offset;
            next++;
        }
        return next == groupCount ? seconds : Double.NaN;
    }

    private int hours(int written) {
        if (afternoon) {
            return written == 12 ? 12 : written + 12;
        }
        return morning && written == 12 ? 0 : written;
    }

    private static double date(int year, int month, int day) {
        if (month < 1 || month > 12 || day < 1 || day > 31 || year < 1970 || year > 2200) {
            return Double.NaN;
        }
        if (day > 28 && day > LocalDate.of(year, month, 1).lengthOfMonth()) {
            return Double.NaN;
        }
        // days from civil date, with March as the first month so that the leap day comes last
        int y = month <= 2 ? year - 1 : year;
        int era = y / 400;
        int yearOfEra = y - era * 400;
        int dayOfYear = (153 * (month > 2 ? month - 3 : month + 9) + 2) / 5 + day - 1;
        int dayOfEra = yearOfEra * 365 + yearOfEra / 4 - yearOfEra / 100 + dayOfYear;
        return 86400.0 * (era * 146097L + dayOfEra - 719468);
    }
}
