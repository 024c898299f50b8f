package io.github.saltfront.app.export;

import io.github.saltfront.plan.Effort;
import io.github.saltfront.plan.Meal;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/**
 * The clock of a plan as a calendar with alarms (RFC 5545). Times are in UTC, so that no zone table is needed and every calendar
 * shows them in its own zone; what happens at the same instant of the same plan has the same identifier, so that a second import
 * replaces the first.
 */
public final class PlanCalendar {
    private static final Phrases PHRASES = Phrases.of(PlanCalendar.class);

    /** Longest line without its end, in octets (RFC 5545, section 3.1). */
    private static final int LONGEST_LINE = 75;

    private static final String END = "\r\n";
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final StringBuilder out = new StringBuilder();
    private final Map<String, Integer> seen = new HashMap<>();

    private PlanCalendar() {}

    /**
     * Returns the calendar.
     *
     * @param plan the plan
     * @return the text, with the line ends of the standard
     */
    public static String of(Plan plan) {
        PlanCalendar calendar = new PlanCalendar();
        calendar.begin();
        plan.clock()
                .forEach(step ->
                        calendar.event(plan, plan.request().food().meat().name(), step));
        return calendar.end();
    }

    /**
     * Returns the calendar of a meal.
     *
     * @param meal the meal
     * @return the text, with the line ends of the standard
     */
    public static String of(Meal meal) {
        PlanCalendar calendar = new PlanCalendar();
        calendar.begin();
        for (Meal.Course course : meal.courses()) {
            course.plan()
                    .clock()
                    .forEach(step -> calendar.event(course.plan(), course.dish().name(), step));
        }
        return calendar.end();
    }

    private void begin() {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//saltfront//plan//EN");
        line("CALSCALE:GREGORIAN");
        line("METHOD:PUBLISH");
    }

    private String end() {
        line("END:VCALENDAR");
        return out.toString();
    }

    private void event(Plan plan, String name, Plan.Step step) {
        Instant time = step.time().toInstant();
        double minutes = Effort.minutes(
                step.kind(), plan.salting().treatment(), plan.request().piecesAtOnce());
        line("BEGIN:VEVENT");
        line("UID:" + uid(plan, name, step) + "@saltfront");
        line("DTSTAMP:" + UTC.format(plan.request().timing().now().toInstant()));
        line("DTSTART:" + UTC.format(time));
        line("DURATION:PT" + Math.max(1, (int) Math.ceil(minutes)) + "M");
        line("SUMMARY:" + escaped(title(step.kind()) + ": " + name));
        line("DESCRIPTION:" + escaped(step.words()));
        line("TRANSP:" + (step.active() ? "OPAQUE" : "TRANSPARENT"));
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        line("TRIGGER;RELATED=START:" + trigger(step.kind()));
        line("DESCRIPTION:" + escaped(step.words()));
        line("END:VALARM");
        line("END:VEVENT");
    }

    /** The same for the same plan; the second step of a kind and those after it count on. */
    private String uid(Plan plan, String name, Plan.Step step) {
        String key = plan.request().timing().now().toInstant() + "|" + name + "|" + step.kind() + "|"
                + plan.request().timing().serve().map(Object::toString).orElse("") + "|" + plan.seed();
        int number = seen.merge(key, 1, Integer::sum);
        String whole = number > 1 ? key + "|" + number : key;
        return UUID.nameUUIDFromBytes(whole.getBytes(StandardCharsets.UTF_8)).toString();
    }

    /** Time to fetch what a step needs; watching and taking out begin on the minute. */
    private static String trigger(Plan.StepKind kind) {
        return switch (kind) {
            case THAW, SALT -> "-PT15M";
            case PAT_DRY, PREHEAT, COOK, SALT_OUTSIDE -> "-PT5M";
            case NEXT, WATCH, REST, SERVE -> "PT0M";
        };
    }

    static String title(Plan.StepKind kind) {
        return switch (kind) {
            case THAW -> PHRASES.say("thaw");
            case SALT -> PHRASES.say("salt");
            case PAT_DRY -> PHRASES.say("pat-dry");
            case SALT_OUTSIDE -> PHRASES.say("salt-the-outside");
            case PREHEAT -> PHRASES.say("preheat");
            case COOK -> PHRASES.say("into-the-heat");
            case NEXT -> PHRASES.say("on-to-the-next");
            case WATCH -> PHRASES.say("watch-the-thermometer");
            case REST -> PHRASES.say("out-and-resting");
            case SERVE -> PHRASES.say("serve");
        };
    }

    /** Text as section 3.3.11 wants it. */
    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\n", "\\n");
    }

    /** Adds a line, folded so that no part is longer than 75 octets and no character is torn. */
    private void line(String content) {
        int octets = 0;
        for (int i = 0; i < content.length(); ) {
            int point = content.codePointAt(i);
            int length = Character.toString(point).getBytes(StandardCharsets.UTF_8).length;
            if (octets + length > LONGEST_LINE) {
                out.append(END).append(' ');
                octets = 1;
            }
            out.appendCodePoint(point);
            octets += length;
            i += Character.charCount(point);
        }
        out.append(END);
    }
}
