package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import java.util.ArrayList;
import java.util.List;

/** The stages of salting before the heat. */
final class SaltStages {
    /** Kind of a soak. */
    static final String SOAK = "soak";

    /** Kind of dry salting. */
    static final String DRY_SALT = "dry-salt";

    /** Heat transfer in a still bath in the refrigerator [W/(m2.K)]; natural convection is 260 and up, estimate with pieces touching. */
    private static final double BATH_COEFFICIENT = 100;

    private static final double REFRIGERATOR_SPREAD = 2;
    private static final NetMassGain GAIN = NetMassGain.load();

    private SaltStages() {}

    static List<DayEnsemble.StageFor> of(Request request, Plan.SaltPlan salting) {
        return switch (salting.treatment()) {
            case WET_BRINE, EQUILIBRIUM, DAIRY, MARINADE ->
                List.of(soak(request, salting.soaking().orElseThrow().bath(), salting.time()));
            case DRY_SALT -> List.of(drySalt(request, salting.salt(), salting.time()));
            default -> List.of();
        };
    }

    /** Salting, heat and rest; what is salted just before the heat goes into it undissolved. */
    static List<DayEnsemble.StageFor> wholeDay(
            Request request, Plan.SaltPlan salting, CookStages stages, double pullTemperature) {
        List<DayEnsemble.StageFor> day = new ArrayList<>(of(request, salting));
        boolean onSurface = salting.treatment() == Request.Treatment.SURFACE_SALT && salting.salt() > 0;
        double onTop = onSurface ? salting.salt() : salting.finish();
        day.addAll(stages.through(pullTemperature, onTop > 0 ? dose(request, onTop) : SaltExchange.KEEP));
        return day;
    }

    /** A soak; bone takes no salt, so the bath is shared by the edible part. */
    static DayEnsemble.StageFor soak(Request request, Bath mixed, double time) {
        double mass = edible(request);
        MeatModel meat = request.food().meat();
        return draw -> {
            double temperature = request.salting().refrigerator()
                    + draw.normal(Uncertainty.START) / Draw.NINETY_FIVE * REFRIGERATOR_SPREAD;
            double position = Math.max(-1, Math.min(1, draw.normal(Uncertainty.SWELLING) / Draw.NINETY_FIVE));
            double partition = draw.linear(Uncertainty.PARTITION, DayEnsemble.PARTITION);
            SaltExchange bath = new SaltExchange.Bath(
                    mixed.salt() / mass,
                    mixed.water() / mass,
                    GAIN.swelling(meat.composition().water(), meat.nativeSalt(), partition, position));
            return new Stage(
                    SOAK, List.of(FaceCondition.convection(temperature, BATH_COEFFICIENT)), bath, time, StopRule.NEVER);
        };
    }

    static double edible(Request request) {
        return request.food().mass() * request.food().edibleShare();
    }

    static SaltExchange dose(Request request, double salt) {
        double edible = edible(request);
        double saturated = SaltSolubility.saturation(request.salting().refrigerator());
        return new SaltExchange.Dose(salt / edible, saturated / (1 - saturated));
    }

    static DayEnsemble.StageFor drySalt(Request request, double salt, double time) {
        Appliance refrigerator = Catalog.load().appliances().get("refrigerator");
        CookingMedium medium = new CookingMedium(
                refrigerator,
                request.salting().refrigerator(),
                StandardAtmosphere.pressure(request.cook().altitude()),
                request.food().meat().hasSkin());
        SaltExchange dose = dose(request, salt);
        return draw -> new Stage(DRY_SALT, medium.faces(draw, false), dose, time, StopRule.NEVER);
    }
}
