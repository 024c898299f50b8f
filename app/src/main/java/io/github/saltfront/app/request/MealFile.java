package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Meal;
import io.github.saltfront.plan.MealPlanner;
import io.github.saltfront.words.Phrases;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a request for a meal: what is common to all dishes, and each dish as in a request for one.
 *
 * @param dishes the dishes
 * @param counts how many there are of an appliance, by its id
 */
public record MealFile(List<Meal.Dish> dishes, Map<String, Integer> counts) {
    private static final Phrases PHRASES = Phrases.of(MealFile.class);

    private static final String DISHES = "dishes";
    private static final int MOST_OF_ONE = 20;

    /** Copies list and map. */
    public MealFile {
        dishes = List.copyOf(dishes);
        counts = Map.copyOf(counts);
    }

    /**
     * Reads a document.
     *
     * @param document the document
     * @param catalog the catalog
     * @param now present time, for requests that do not say when it is
     * @return the meal
     * @throws io.github.saltfront.app.document.DocumentException with all problems of the file
     */
    public static MealFile read(Document document, Catalog catalog, ZonedDateTime now) {
        Node root = document.root();
        PlanFile.Occasion occasion = new PlanFile(catalog, now).readOccasion(root);
        if (occasion.timing().serve().isEmpty()) {
            root.problem("serve", PHRASES.say("got-no-time-expected-the"));
        }
        List<Meal.Dish> dishes = new ArrayList<>();
        List<Node> nodes = root.list(DISHES);
        if (nodes.size() > MealPlanner.MOST_DISHES) {
            root.problem(DISHES, PHRASES.say("got-dishes-expected-at-most", nodes.size(), MealPlanner.MOST_DISHES));
        }
        for (Node node : nodes) {
            String name = node.text("name");
            if (dishes.stream().anyMatch(dish -> dish.name().equals(name))) {
                node.problem("name", PHRASES.say("got-twice-expected-a-name", name));
            }
            Optional<Integer> load =
                    node.findInteger("load", 1, 500).stream().boxed().findFirst();
            PlanFile.Occasion own = load.map(pieces -> loaded(occasion, pieces)).orElse(occasion);
            dishes.add(new Meal.Dish(name, new PlanFile(catalog, now).read(node, any -> own)));
        }
        Map<String, Integer> counts = counts(root, catalog);
        document.requireNoErrors();
        return new MealFile(dishes, counts);
    }

    private static PlanFile.Occasion loaded(PlanFile.Occasion occasion, int pieces) {
        return new PlanFile.Occasion(
                occasion.timing(), occasion.guests(), occasion.equipment().loading(pieces));
    }

    private static Map<String, Integer> counts(Node root, Catalog catalog) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        root.findChild("appliances").ifPresent(node -> {
            for (Appliance appliance : catalog.appliances().all()) {
                node.findInteger(appliance.id(), 1, MOST_OF_ONE).ifPresent(count -> counts.put(appliance.id(), count));
            }
        });
        return counts;
    }
}
