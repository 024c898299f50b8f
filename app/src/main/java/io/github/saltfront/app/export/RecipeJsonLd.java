package io.github.saltfront.app.export;

import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.Effort;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.words.Phrases;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plan as a recipe in the vocabulary of schema.org, for publishing: weights in metric and US units, sodium of a serving. */
public final class RecipeJsonLd {
    private static final Phrases PHRASES = Phrases.of(RecipeJsonLd.class);

    private RecipeJsonLd() {}

    /**
     * Returns the recipe.
     *
     * @param plan the plan
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(Plan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("@context", "https://schema.org");
        json.put("@type", "Recipe");
        String name = plan.request().food().meat().name();
        json.put("name", name);
        json.put("description", description(plan));
        json.put(
                "recipeIngredient",
                ShoppingList.of(plan).stream().map(ShoppingList.Item::line).toList());
        json.put("recipeYield", servings(plan));
        json.put("cookingMethod", plan.request().cook().appliance().name());
        json.put("prepTime", iso(work(plan) * 60));
        json.put("cookTime", iso(plan.cooking().timeToPull().median()));
        List<Plan.Step> clock = plan.clock();
        json.put(
                "totalTime",
                iso(Duration.between(
                                clock.get(0).time(), clock.get(clock.size() - 1).time())
                        .getSeconds()));
        json.put("recipeInstructions", instructions(plan));
        json.put(
                "tool",
                List.of(tool(PHRASES.say("a-thermometer-with-a-thin")), tool(PHRASES.say("a-scale-that-shows-grams"))));
        Map<String, Object> nutrition = new LinkedHashMap<>();
        nutrition.put("@type", "NutritionInformation");
        nutrition.put("servingSize", PHRASES.say("85-g-3-oz-cooked"));
        nutrition.put(
                "sodiumContent",
                Phrases.figures(
                        "%.0f mg", Sodium.declared(plan.result().servingSodium().median()) * 1e6));
        json.put("nutrition", nutrition);
        return json;
    }

    private static String description(Plan plan) {
        return PHRASES.say(
                "taken-out-and-rested-min",
                TakeOut.when(plan),
                plan.cooking().rest() / 60,
                plan.cooking().verdict().rule().consumerMinimum().describe());
    }

    private static String servings(Plan plan) {
        double cooked =
                plan.request().food().mass() * (1 - plan.result().massLoss().median());
        return PHRASES.say(
                "servings-of-85-g-3",
                ShoppingList.both(cooked),
                Math.max(1, Math.round(cooked * plan.request().food().edibleShare() / BrineSheet.SERVING)));
    }

    private static double work(Plan plan) {
        return plan.clock().stream()
                .mapToDouble(step -> Effort.minutes(
                        step.kind(),
                        plan.salting().treatment(),
                        plan.request().food().pieces()))
                .sum();
    }

    private static List<Map<String, Object>> instructions(Plan plan) {
        List<Map<String, Object>> steps = new ArrayList<>();
        for (Plan.Step step : plan.clock()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("@type", "HowToStep");
            json.put("name", PlanCalendar.title(step.kind()));
            json.put("text", step.words());
            steps.add(json);
        }
        return steps;
    }

    private static Map<String, Object> tool(String name) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("@type", "HowToTool");
        json.put("name", name);
        return json;
    }

    /** A duration as ISO 8601, to the minute. */
    private static String iso(double seconds) {
        return Duration.ofMinutes(Math.round(seconds / 60)).toString();
    }
}
