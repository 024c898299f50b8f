package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.quality.Browning;
import io.github.saltfront.quality.CollagenTenderness;
import io.github.saltfront.quality.DonenessWords;
import io.github.saltfront.quality.SkinDryness;
import io.github.saltfront.quality.Tenderness;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Crust, skin and tenderness, read off the ensemble. All of it is softer than the numbers of heat and salt: bands are those of the
 * ensemble, widened by what the relation itself is good for.
 *
 * @param dripped juice that dripped per raw mass [kg/kg]
 * @param browning browning index of the first face [-], 1 golden brown
 * @param surfaceMaximum highest temperature of the outside [K]
 * @param drynessBefore share of the surface's water that is gone before the heat [-], negative if it has taken water up
 * @param dryness the same when served [-]; 0 where the last heat is that of a liquid, which keeps the surface wet
 * @param collagen share of the way to tender, for cuts rich in collagen [-]
 * @param moreTime time at the last temperature that the median lacks to tender [s], for cuts rich in collagen; 0 if none
 * @param coreActin share of actin changed in the middle [-]
 * @param skin whether the surface is skin
 * @param dark whether it is dark meat of poultry, of whose tenderness no relation is known
 * @param doneness words for the temperature of the middle, each with who uses it so; empty but for red meat
 */
public record PlateQuality(
        Interval dripped,
        Interval browning,
        Interval surfaceMaximum,
        Interval drynessBefore,
        Interval dryness,
        Optional<Interval> collagen,
        double moreTime,
        Interval coreActin,
        boolean skin,
        boolean dark,
        List<String> doneness) {
    private static final Phrases PHRASES = Phrases.of(PlateQuality.class);

    /** Copies the list. */
    public PlateQuality {
        doneness = List.copyOf(doneness);
    }

    static PlateQuality of(Request request, List<MemberDay> days) {
        double sugar = request.salting().liquor().sugarPerSalt() > 0 ? Browning.SUGAR : 1;
        double raw = request.food().meat().composition().waterPerSolids();
        boolean dark = request.food()
                .cut()
                .filter(cut -> cut.group() == Cut.Group.POULTRY_DARK)
                .isPresent();
        boolean tough = !dark
                && request.food()
                        .cut()
                        .filter(cut -> cut.traits().isCollagenRich())
                        .isPresent();
        double age =
                request.food().meat().species().equals("beef") ? CollagenTenderness.MATURE : CollagenTenderness.YOUNG;
        Interval dissolved = widened(interval(days, day -> collagen(day, age)), CollagenTenderness.FACTOR);
        double peak = interval(days, day -> day.peakCore(day.heatStart())).median();
        return new PlateQuality(
                interval(days, day -> served(day).massLoss() - served(day).evaporated() - taken(day)),
                widened(interval(days, day -> browned(day, sugar)), Browning.FACTOR),
                interval(days, PlateQuality::hottest),
                interval(days, day -> SkinDryness.share(beforeHeat(day, raw), raw)),
                interval(
                        days,
                        day -> isWetted(request)
                                ? 0
                                : SkinDryness.share(served(day).quality().skinWater(), raw)),
                tough ? Optional.of(dissolved) : Optional.empty(),
                tough ? Math.max(0, 1 - dissolved.median()) * CollagenTenderness.tenderTime(peak, age) : 0,
                interval(days, day -> served(day).quality().coreActin()),
                request.food().meat().hasSkin(),
                dark,
                doneness(request, peak));
    }

    /** Returns the word for the color of the crust. */
    public String browningWord() {
        return Browning.word(browning.median());
    }

    /** Returns the word for the dryness of skin or surface. */
    public String drynessWord() {
        return SkinDryness.word(dryness.median());
    }

    /** Returns the word for tenderness. */
    public String tenderness() {
        if (dark) {
            return PHRASES.say("not-told-no-figures-are");
        }
        return collagen.map(share -> Tenderness.ofCollagen(share.median()))
                .orElseGet(() -> Tenderness.ofActin(coreActin.median()));
    }

    /** Tenderness as one number: collagen dissolved where a cut is rich in it, else muscle protein still soft [-]. */
    static double tenderness(Request request, List<MemberDay> days) {
        PlateQuality quality = of(request, days);
        if (quality.dark) {
            return 0;
        }
        return quality.collagen
                .map(share -> Math.min(1, share.median()))
                .orElseGet(() ->
                        1 - interval(days, day -> served(day).quality().actin()).median());
    }

    /** Whether the last heat is that of water around the meat; what little of it a dry surface takes up is not computed. */
    private static boolean isWetted(Request request) {
        List<CookSequence.Step> after = request.cook().sequence().after();
        Appliance last = after.isEmpty()
                ? request.cook().appliance()
                : after.get(after.size() - 1).appliance();
        return last.medium() == Appliance.Medium.LIQUID || last.medium() == Appliance.Medium.STEAM;
    }

    private static Interval interval(List<MemberDay> days, ToDoubleFunction<MemberDay> value) {
        return Interval.of(days.stream().mapToDouble(value).toArray());
    }

    private static Interval widened(Interval band, double factor) {
        return new Interval(band.low() / factor, band.median(), band.high() * factor);
    }

    private static MemberDay.StageEnd served(MemberDay day) {
        return day.ends().get(day.ends().size() - 1);
    }

    /** Loss that salting left, mostly negative, so that what the brine gave is not counted as drip. */
    private static double taken(MemberDay day) {
        return day.beforeHeat().map(end -> end.massLoss() - end.evaporated()).orElse(0.0);
    }

    private static double beforeHeat(MemberDay day, double raw) {
        return day.beforeHeat().map(end -> end.quality().skinWater()).orElse(raw);
    }

    private static double browned(MemberDay day, double sugar) {
        return integral(day.outsideHistory(day.heatStart()), kelvin -> Browning.rate(kelvin, sugar));
    }

    private static double hottest(MemberDay day) {
        TemperatureHistory outside = day.outsideHistory(day.heatStart());
        double hottest = outside.temperature(0);
        for (int i = 1; i < outside.size(); i++) {
            hottest = Math.max(hottest, outside.temperature(i));
        }
        return hottest;
    }

    private static double collagen(MemberDay day, double age) {
        return integral(day.coreHistory(day.heatStart()), kelvin -> CollagenTenderness.rate(kelvin, age));
    }

    private static double integral(TemperatureHistory history, ToDoubleFunction<Double> rate) {
        double sum = 0;
        for (int i = 1; i < history.size(); i++) {
            double middle = 0.5 * (history.temperature(i - 1) + history.temperature(i));
            sum += rate.applyAsDouble(middle) * (history.time(i) - history.time(i - 1));
        }
        return sum;
    }

    private static List<String> doneness(Request request, double peak) {
        Cut.Group group = request.food().cut().map(Cut::group).orElse(Cut.Group.POULTRY_WHITE);
        if (group != Cut.Group.BEEF && group != Cut.Group.LAMB && group != Cut.Group.VEAL) {
            return List.of();
        }
        DonenessWords words = DonenessWords.load();
        List<String> said = new ArrayList<>();
        said.add(PHRASES.say(
                "restaurants",
                words.nearest(DonenessWords.Scale.RESTAURANT, peak).word()));
        said.add(PHRASES.say(
                "government-advice",
                words.nearest(DonenessWords.Scale.GOVERNMENT, peak).word()));
        said.add(PHRASES.say(
                "research", words.nearest(DonenessWords.Scale.RESEARCH, peak).word()));
        return said;
    }
}
