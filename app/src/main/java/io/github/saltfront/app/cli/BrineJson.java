package io.github.saltfront.app.cli;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure.UnitSystem;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.Bath;
import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.SoakWindow;
import io.github.saltfront.plan.SoakWindow.Speed;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.plan.SpoonedSalt;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Temperature;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a sheet as JSON; its names are a contract. */
final class BrineJson {
    /** Name and version of the contract. */
    static final String SCHEMA = "saltfront-brine-1";

    private static final double TABLE_TEMPERATURE = Temperature.fromCelsius(20);
    private static final double HALF_HOUR = 1800;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private BrineJson() {}

    static String refused(String reason) {
        ObjectNode root = root().put("refused", true).put("reason", reason);
        return text(root);
    }

    static String write(BrineSheet sheet, Catalog catalog) {
        ObjectNode root = root().put("refused", false);
        root.put("equilibrium_dose", sheet.isEquilibrium());
        root.put("meat", sheet.order().food().name());
        root.put("edible_mass_kg", sheet.order().food().edibleMass());
        root.put("temperature_c", Temperature.toCelsius(sheet.order().temperature()));
        mix(root.putObject("mix"), sheet, catalog);
        strength(root.putObject("strength"), sheet.bath());
        hydrometer(root.putObject("hydrometer"), sheet);
        window(root.putObject("window"), sheet.window());
        series(root.putObject("series"), sheet.window());
        end(root.putObject("equilibrium"), sheet);
        table(root.putObject("table"), sheet);
        root.put("floats", sheet.floats());
        root.put("acid_advice", sheet.acid().name().toLowerCase(Locale.ROOT));
        ArrayNode cautions = root.putArray("cautions");
        sheet.cautions()
                .forEach(c -> cautions.addObject()
                        .put("id", c.id())
                        .put("level", c.level().name().toLowerCase(Locale.ROOT))
                        .put("text", c.text()));
        return text(root);
    }

    private static ObjectNode root() {
        String version = Optional.ofNullable(BrineJson.class.getPackage().getImplementationVersion())
                .orElse("development");
        return MAPPER.createObjectNode().put("schema", SCHEMA).put("version", version);
    }

    private static void mix(ObjectNode node, BrineSheet sheet, Catalog catalog) {
        Bath bath = sheet.bath();
        node.put("liquid", sheet.order().mix().liquid().id());
        node.put("liquid_kg", bath.liquidMass());
        node.put(
                "liquid_l",
                1000 * bath.liquidMass() / sheet.order().mix().liquid().density());
        node.put("water_kg", bath.water());
        sheet.iceFromTap().ifPresent(ice -> node.put("of_which_ice_kg", ice));
        node.put("salt_added_g", 1000 * bath.addedSalt());
        node.put("salt_of_liquid_g", 1000 * bath.liquidSalt());
        node.put("salt_total_g", 1000 * bath.salt());
        node.put("sugar_added_g", 1000 * bath.addedSugar());
        node.put("shortcut_salt_g", 1000 * sheet.shortcutDose());
        node.put("salt_form", sheet.order().mix().salt().id());
        ArrayNode allergens = node.putArray("allergens");
        bath.allergens().forEach(a -> allergens.add(a.name().toLowerCase(Locale.ROOT)));
        spoons(
                node.putObject("spoons_us"),
                SpoonedSalt.of(bath.addedSalt(), sheet.order().mix().salt(), UnitSystem.US, catalog));
        spoons(
                node.putObject("spoons_metric"),
                SpoonedSalt.of(bath.addedSalt(), sheet.order().mix().salt(), UnitSystem.METRIC, catalog));
    }

    private static void spoons(ObjectNode node, SpoonedSalt spoons) {
        node.put("cups", spoons.quarterCups() / 4.0);
        node.put("tablespoons", spoons.tablespoons());
        node.put("teaspoons", spoons.eighthTeaspoons() / 8.0);
        band(node, "salt", "_g", spoons.mass(), 1000);
    }

    private static void strength(ObjectNode node, Bath bath) {
        SaltStrength strength = bath.strength();
        node.put("of_solution_pct", 100 * strength.saltFraction());
        node.put("of_water_pct", 100 * strength.saltPerWater());
        node.put("per_liter_of_water_g", strength.saltPerWaterVolume(TABLE_TEMPERATURE));
        node.put("per_liter_of_brine_g", strength.saltPerSolutionVolume(TABLE_TEMPERATURE));
        node.put("volumes_at_c", 20);
        node.put("of_saturation_at_20_c_pct", 100 * strength.saturationShare(TABLE_TEMPERATURE));
        node.put("salometer_deg", strength.salometer());
        node.put("specific_gravity_60f", strength.specificGravity());
        node.put("of_whole_bath_pct", 100 * bath.saltOfMass());
    }

    private static void hydrometer(ObjectNode node, BrineSheet sheet) {
        node.put("density_kg_m3", sheet.hydrometer().density());
        node.put("specific_gravity", sheet.hydrometer().specificGravity());
        node.put(
                "reads_as_salt_pct", 100 * sheet.hydrometer().apparentStrength().saltFraction());
        node.put("sugar_read_as_salt_pct", 100 * sheet.hydrometer().sugarAsSalt());
    }

    private static void window(ObjectNode node, SoakWindow window) {
        crossing(node.putObject("lowest"), window.levels().low(), window.first());
        crossing(node.putObject("wanted"), window.levels().typical(), window.best());
        crossing(node.putObject("highest"), window.levels().high(), window.latest());
        node.put("wider_than_its_uncertainty", window.isWiderThanItsUncertainty());
        node.put("longest_s", BrineSheet.LONGEST);
    }

    private static void crossing(ObjectNode node, double level, SoakWindow.Crossing crossing) {
        node.put("salt_pct", 100 * level);
        seconds(node, "earliest_s", crossing.earliest());
        seconds(node, "median_s", crossing.median());
        seconds(node, "latest_s", crossing.latest());
    }

    private static void seconds(ObjectNode node, String name, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(name, value.getAsDouble());
        } else {
            node.putNull(name);
        }
    }

    private static void series(ObjectNode node, SoakWindow window) {
        ArrayNode times = node.putArray("time_s");
        ArrayNode slow = node.putArray("salt_mean_low_pct");
        ArrayNode median = node.putArray("salt_mean_pct");
        ArrayNode fast = node.putArray("salt_mean_high_pct");
        for (double time = 0; time <= BrineSheet.LONGEST; time += HALF_HOUR) {
            times.add(time);
            slow.add(100 * window.meanSalt(Speed.SLOW, time));
            median.add(100 * window.meanSalt(Speed.MEDIAN, time));
            fast.add(100 * window.meanSalt(Speed.FAST, time));
        }
    }

    private static void end(ObjectNode node, BrineSheet sheet) {
        node.put("meat_salt_pct", 100 * sheet.equilibrium().meatSaltFraction());
        node.put("bath_of_solution_pct", 100 * sheet.equilibrium().bathSaltFraction());
        band(node, "net_mass_gain", "_pct", sheet.netGain(), 100);
    }

    private static void table(ObjectNode node, BrineSheet sheet) {
        double sodium = sheet.servingSodium();
        node.put("serving_cooked_g", 1000 * BrineSheet.SERVING);
        node.put("sodium_mg", 1e6 * sodium);
        node.put("sodium_declared_mg", Math.rint(1e6 * Sodium.declared(sodium)));
        node.put("daily_value_pct", Sodium.dailyValuePercent(sodium));
        node.put("pan_juice_salt_pct", 100 * sheet.panJuiceSalt());
    }

    private static void band(ObjectNode node, String name, String unit, Band band, double factor) {
        node.put(name + "_low" + unit, factor * band.low());
        node.put(name + unit, factor * band.typical());
        node.put(name + "_high" + unit, factor * band.high());
    }

    private static String text(ObjectNode root) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }
}
