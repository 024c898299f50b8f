package io.github.saltfront.matter;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * Density and transport properties of dry air.
 *
 * <pre>
 * mu = 1.458e-6 T^1.5 / (T + 110.4),  k = 2.64638e-3 T^1.5 / (T + 245.4 x 10^(-12/T)),  rho = p / (287.05 T)
 * </pre>
 *
 * <p>Heat capacity by straight lines between the rows of air_heat_capacity.csv. Validity: 200 to 700 K (heat capacity 250
 * to 600 K, constant beyond); outside 200 to 700 K the methods throw.
 *
 * @see "icao1993, viscosity and conductivity; incropera2007, Table A.4, heat capacity"
 */
public final class DryAir {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "icao1993";

    /** Standard gravity [m/s2] (CODATA, exact). */
    private static final double GRAVITY = 9.80665;

    private static final double GAS_CONSTANT = 287.05;
    private static final double LOWEST = 200;
    private static final double HIGHEST = 700;
    private static final double[] TEMPERATURE;
    private static final double[] HEAT_CAPACITY;

    static {
        List<CsvTable.Row> rows =
                CsvTable.load(DryAir.class, "air_heat_capacity.csv").rows();
        TEMPERATURE = rows.stream().mapToDouble(r -> r.number("temperature_k")).toArray();
        HEAT_CAPACITY = rows.stream()
                .mapToDouble(r -> 1000 * r.number("heat_capacity_kj_per_kg_k"))
                .toArray();
    }

    private DryAir() {}

    /**
     * Returns the density [kg/m3].
     *
     * @param temperature temperature [K]
     * @param pressure pressure [Pa]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if a value is NaN or out of range
     */
    public static double density(double temperature, double pressure) {
        return Checks.requirePositive("pressure", pressure, "Pa") / (GAS_CONSTANT * check(temperature));
    }

    /**
     * Returns the dynamic viscosity [Pa.s].
     *
     * @param temperature temperature [K]
     * @return viscosity [Pa.s]
     * @throws IllegalArgumentException if the temperature is NaN or out of range
     */
    public static double viscosity(double temperature) {
        double t = check(temperature);
        return 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
    }

    /**
     * Returns the thermal conductivity [W/(m.K)].
     *
     * @param temperature temperature [K]
     * @return thermal conductivity [W/(m.K)]
     * @throws IllegalArgumentException if the temperature is NaN or out of range
     */
    public static double conductivity(double temperature) {
        double t = check(temperature);
        return 2.64638e-3 * t * Math.sqrt(t) / (t + 245.4 * Math.pow(10, -12 / t));
    }

    /**
     * Returns the specific heat capacity at constant pressure [J/(kg.K)].
     *
     * @param temperature temperature [K]
     * @return heat capacity [J/(kg.K)]
     * @throws IllegalArgumentException if the temperature is NaN or out of range
     */
    public static double heatCapacity(double temperature) {
        double t = check(temperature);
        int last = TEMPERATURE.length - 1;
        if (t <= TEMPERATURE[0]) {
            return HEAT_CAPACITY[0];
        }
        if (t >= TEMPERATURE[last]) {
            return HEAT_CAPACITY[last];
        }
        int i = 1;
        while (t > TEMPERATURE[i]) {
            i++;
        }
        double share = (t - TEMPERATURE[i - 1]) / (TEMPERATURE[i] - TEMPERATURE[i - 1]);
        return HEAT_CAPACITY[i - 1] + share * (HEAT_CAPACITY[i] - HEAT_CAPACITY[i - 1]);
    }

    /**
     * Returns the Prandtl number [-].
     *
     * @param temperature temperature [K]
     * @return Prandtl number [-]
     * @throws IllegalArgumentException if the temperature is NaN or out of range
     */
    public static double prandtl(double temperature) {
        return viscosity(temperature) * heatCapacity(temperature) / conductivity(temperature);
    }

    /**
     * Returns the Rayleigh number of free convection [-], with the properties at the film temperature and the expansion of an
     * ideal gas.
     *
     * @param surface surface temperature [K]
     * @param air air temperature [K]
     * @param length characteristic length [m]
     * @param pressure pressure [Pa]
     * @return Rayleigh number [-]
     * @throws IllegalArgumentException if a value is NaN or out of range
     */
    public static double rayleigh(double surface, double air, double length, double pressure) {
        Checks.requirePositive("length", length, "m");
        double film = film(surface, air);
        double kinematic = viscosity(film) / density(film, pressure);
        double thermal = conductivity(film) / (density(film, pressure) * heatCapacity(film));
        return GRAVITY * Math.abs(surface - air) * length * length * length / (film * kinematic * thermal);
    }

    /**
     * Returns the Reynolds number [-].
     *
     * @param film film temperature [K]
     * @param speed speed of the air [m/s], not negative
     * @param length characteristic length [m]
     * @param pressure pressure [Pa]
     * @return Reynolds number [-]
     * @throws IllegalArgumentException if a value is NaN or out of range
     */
    public static double reynolds(double film, double speed, double length, double pressure) {
        Checks.requireInRange("air speed", speed, 0, 340, "m/s");
        Checks.requirePositive("length", length, "m");
        return speed * length * density(film, pressure) / viscosity(film);
    }

    static double film(double surface, double air) {
        return 0.5 * (check(surface) + check(air));
    }

    private static double check(double temperature) {
        return Checks.requireInRange("air temperature", temperature, LOWEST, HIGHEST, "K");
    }
}
