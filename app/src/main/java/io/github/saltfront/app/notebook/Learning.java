package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.NotedCooks;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.learn.DiffusivityKnowledge;
import io.github.saltfront.learn.KitchenKnowledge;
import io.github.saltfront.learn.LearnedValue;
import io.github.saltfront.learn.NormalLearning;
import io.github.saltfront.learn.OvenKnowledge;
import io.github.saltfront.learn.SaltTaste;
import io.github.saltfront.learn.TimedCook;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Learns from the cooks of a kitchen, each quantity from those after its last reset. */
public final class Learning {
    private static final Phrases PHRASES = Phrases.of(Learning.class);

    /** What can be learned, and forgotten, by name. */
    public static final List<String> QUANTITIES = List.of("oven", "refrigerator", "salt", "thickness", "meat");

    private static final double STATED_REFRIGERATOR = Temperature.fromCelsius(4);

    private final NotedCooks cooks;
    private final Catalog catalog;

    Learning(NotedCooks cooks, Catalog catalog) {
        this.cooks = cooks;
        this.catalog = catalog;
    }

    /** A cook with its evidence. */
    private record Noted(NotedCook cook, String butcher, Evidence evidence) {}

    /** Returns the kitchens that have cooks, in order of the alphabet. */
    public List<String> profiles() {
        return cooks.list("", "").stream()
                .map(NotedCook::profile)
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Learns.
     *
     * @param profile the kitchen
     * @param butcher where the meat is from; empty for all
     * @return what was learned
     */
    public KitchenKnowledge knowledge(String profile, String butcher) {
        List<Noted> noted = cooks.list("", "").stream()
                .filter(cook -> cook.profile().equalsIgnoreCase(profile))
                .map(Learning::noted)
                .toList();
        Map<String, Long> resets = cooks.resets(profile);
        return new KitchenKnowledge(
                ovens(since(noted, resets, "oven")),
                refrigerator(since(noted, resets, "refrigerator")),
                salt(since(noted, resets, "salt")),
                thickness(since(noted, resets, "thickness"), butcher),
                diffusivities(since(noted, resets, "meat")));
    }

    private static Noted noted(NotedCook cook) {
        return new Noted(
                cook,
                NotebookJson.read(cook.document()).path("butcher").asString(""),
                Evidence.read(NotebookJson.read(cook.evidence())));
    }

    private static List<Noted> since(List<Noted> noted, Map<String, Long> resets, String quantity) {
        long time = resets.getOrDefault(quantity, 0L);
        return noted.stream().filter(n -> n.cook().created() > time).toList();
    }

    private Map<String, OvenKnowledge> ovens(List<Noted> noted) {
        Map<String, List<Evidence>> byAppliance = new LinkedHashMap<>();
        for (Noted each : noted) {
            Evidence evidence = each.evidence();
            if (evidence.timed().isPresent() || evidence.ovenOffset().isPresent()) {
                byAppliance
                        .computeIfAbsent(evidence.appliance(), id -> new ArrayList<>())
                        .add(evidence);
            }
        }
        Map<String, OvenKnowledge> known = new LinkedHashMap<>();
        byAppliance.forEach((id, list) -> {
            Optional<Appliance> appliance = catalog.appliances().find(id);
            List<TimedCook> timed =
                    list.stream().flatMap(e -> e.timed().stream()).toList();
            List<Double> readings = values(list, Evidence::ovenOffset);
            appliance.ifPresent(a -> known.put(id, OvenKnowledge.learn(a, timed, readings, list.size())));
        });
        return known;
    }

    private static List<Double> values(List<Evidence> list, Function<Evidence, OptionalDouble> of) {
        return list.stream()
                .map(of)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
    }

    private static Optional<LearnedValue> refrigerator(List<Noted> noted) {
        List<Double> readings = values(noted.stream().map(Noted::evidence).toList(), Evidence::refrigerator);
        return readings.isEmpty()
                ? Optional.empty()
                : Optional.of(NormalLearning.refrigerator(STATED_REFRIGERATOR).learn(readings));
    }

    private static Optional<LearnedValue> salt(List<Noted> noted) {
        List<SaltTaste.Tasting> tastings =
                noted.stream().flatMap(n -> n.evidence().tasting().stream()).toList();
        return tastings.isEmpty() ? Optional.empty() : Optional.of(SaltTaste.learn(tastings));
    }

    private static Optional<LearnedValue> thickness(List<Noted> noted, String butcher) {
        List<Evidence> own = noted.stream()
                .filter(n -> butcher.isEmpty() || n.butcher().equalsIgnoreCase(butcher))
                .map(Noted::evidence)
                .toList();
        List<Double> logs = values(own, Evidence::thickness);
        return logs.isEmpty()
                ? Optional.empty()
                : Optional.of(NormalLearning.thickness().learn(logs));
    }

    private Map<String, DiffusivityKnowledge> diffusivities(List<Noted> noted) {
        Map<String, List<DiffusivityKnowledge.WeighedSoak>> byMeat = new LinkedHashMap<>();
        for (Noted each : noted) {
            each.evidence()
                    .soak()
                    .ifPresent(soak -> byMeat.computeIfAbsent(each.evidence().meat(), id -> new ArrayList<>())
                            .add(soak));
        }
        Map<String, DiffusivityKnowledge> known = new LinkedHashMap<>();
        byMeat.forEach((id, soaks) ->
                diffusivity(id).ifPresent(d -> known.put(id, DiffusivityKnowledge.learn(d, soaks))));
        return known;
    }

    private Optional<SaltDiffusivity> diffusivity(String id) {
        return catalog.cuts().all().stream()
                .map(Cut::saltDiffusivity)
                .filter(d -> d.id().equals(id))
                .findFirst();
    }

    /**
     * Forgets.
     *
     * @param profile the kitchen
     * @param quantity one of {@link #QUANTITIES}, or {@code all}
     * @throws IllegalArgumentException if it is none of them
     */
    public void forget(String profile, String quantity) {
        boolean all = quantity.equals("all");
        if (!all && !QUANTITIES.contains(quantity)) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected-one-of-or", quantity, String.join(", ", QUANTITIES)));
        }
        long now = System.currentTimeMillis();
        for (String each : QUANTITIES) {
            if (all || each.equals(quantity)) {
                cooks.reset(profile, each, now);
            }
        }
    }
}
