package io.github.saltfront.matter;

import io.github.saltfront.matter.ChoiOkos1986.Component;
import io.github.saltfront.matter.ChoiOkos1986.Property;

/** Volumes and conductivities of the phases of meat per kg of dry solids; temperatures in degrees Celsius. */
final class MeatPhases {
    private static final QuadraticInCelsius WATER_DENSITY = ChoiOkos1986.of(Component.WATER, Property.DENSITY);
    private static final QuadraticInCelsius ICE_DENSITY = ChoiOkos1986.of(Component.ICE, Property.DENSITY);
    private static final QuadraticInCelsius PROTEIN_DENSITY = ChoiOkos1986.of(Component.PROTEIN, Property.DENSITY);
    private static final QuadraticInCelsius FAT_DENSITY = ChoiOkos1986.of(Component.FAT, Property.DENSITY);
    private static final QuadraticInCelsius CARBOHYDRATE_DENSITY =
            ChoiOkos1986.of(Component.CARBOHYDRATE, Property.DENSITY);
    private static final QuadraticInCelsius ASH_DENSITY = ChoiOkos1986.of(Component.ASH, Property.DENSITY);

    private static final QuadraticInCelsius WATER_CONDUCTIVITY =
            ChoiOkos1986.of(Component.WATER, Property.THERMAL_CONDUCTIVITY);
    private static final QuadraticInCelsius ICE_CONDUCTIVITY =
            ChoiOkos1986.of(Component.ICE, Property.THERMAL_CONDUCTIVITY);
    private static final QuadraticInCelsius PROTEIN_CONDUCTIVITY =
            ChoiOkos1986.of(Component.PROTEIN, Property.THERMAL_CONDUCTIVITY);
    private static final QuadraticInCelsius FAT_CONDUCTIVITY =
            ChoiOkos1986.of(Component.FAT, Property.THERMAL_CONDUCTIVITY);
    private static final QuadraticInCelsius CARBOHYDRATE_CONDUCTIVITY =
            ChoiOkos1986.of(Component.CARBOHYDRATE, Property.THERMAL_CONDUCTIVITY);
    private static final QuadraticInCelsius ASH_CONDUCTIVITY =
            ChoiOkos1986.of(Component.ASH, Property.THERMAL_CONDUCTIVITY);

    private final DryMatter dry;

    MeatPhases(DryMatter dry) {
        this.dry = dry;
    }

    /** Volume per dry solids [m3/kg]; all contents per dry solids [kg/kg]. */
    double volume(double t, double liquid, double ice, double salt) {
        return liquid / WATER_DENSITY.atCelsius(t) + iceVolume(t, ice) + solidsVolume(t, salt);
    }

    /** Conductivity [W/(m.K)]; all contents per dry solids [kg/kg]. */
    double conductivity(ConductivityModel model, double t, double liquid, double ice, double salt) {
        double iceVolume = iceVolume(t, ice);
        double wetVolume = liquid / WATER_DENSITY.atCelsius(t) + iceVolume;
        double solidsVolume = solidsVolume(t, salt);
        double solids = solidsConductivity(model, t, salt, solidsVolume);
        if (!(wetVolume > 0)) {
            return solids;
        }
        double water = WATER_CONDUCTIVITY.atCelsius(t);
        double wet = ice > 0 ? model.mix(water, ICE_CONDUCTIVITY.atCelsius(t), iceVolume / wetVolume) : water;
        return model.mix(wet, solids, solidsVolume / (solidsVolume + wetVolume));
    }

    private static double iceVolume(double t, double ice) {
        return ice > 0 ? ice / ICE_DENSITY.atCelsius(t) : 0;
    }

    private double solidsVolume(double t, double salt) {
        return dry.protein() / PROTEIN_DENSITY.atCelsius(t)
                + dry.fat() / FAT_DENSITY.atCelsius(t)
                + dry.carbohydrate() / CARBOHYDRATE_DENSITY.atCelsius(t)
                + (dry.ash() + salt) / ASH_DENSITY.atCelsius(t);
    }

    private double solidsConductivity(ConductivityModel model, double t, double salt, double solidsVolume) {
        double ash = (dry.ash() + salt) / ASH_DENSITY.atCelsius(t);
        double carbohydrate = dry.carbohydrate() / CARBOHYDRATE_DENSITY.atCelsius(t);
        double fat = dry.fat() / FAT_DENSITY.atCelsius(t);
        double conductivity = PROTEIN_CONDUCTIVITY.atCelsius(t);
        double volume = solidsVolume - ash - carbohydrate;
        conductivity =
                volume > 0 ? model.mixSolids(conductivity, FAT_CONDUCTIVITY.atCelsius(t), fat / volume) : conductivity;
        volume += carbohydrate;
        conductivity = volume > 0
                ? model.mixSolids(conductivity, CARBOHYDRATE_CONDUCTIVITY.atCelsius(t), carbohydrate / volume)
                : conductivity;
        return model.mixSolids(conductivity, ASH_CONDUCTIVITY.atCelsius(t), ash / solidsVolume);
    }
}
