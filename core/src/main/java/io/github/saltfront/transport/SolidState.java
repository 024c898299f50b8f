package io.github.saltfront.transport;

import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.units.Temperature;

/**
 * State of one piece on a three-dimensional grid. Extensive values belong to the computed part, an eighth or a quarter of the
 * piece. Temperatures inside are in degrees Celsius, since the property polynomials are. Not thread-safe.
 */
final class SolidState {
    /** Zero of the Celsius scale [K]. */
    static final double KELVIN = Temperature.ZERO_CELSIUS;

    final SolidLines lines;
    final SolidPiece piece;
    final HeatProperties heat;
    final SaltProperties salt;
    final int cells;
    final int faces;

    /** Dry mass of each cell [kg]. */
    final double[] dryMass;

    /** Enthalpy per dry mass [J/kg]. */
    final double[] enthalpy;

    final double[] temperature;

    /** Heat capacity per dry mass [J/(kg.K)]. */
    final double[] capacity;

    /** Water per dry mass [kg/kg]. */
    final double[] water;

    /** Salt per dry mass [kg/kg]. */
    final double[] saltContent;

    /** Juice that has left, per dry mass [kg/kg]. */
    final double[] expelled;

    /** Kill of each kind at the node of each cell, and on each patch of the surface. */
    final double[][] kill;

    final double[][] surfaceKill;
    final double[][] extents;

    /** Juice on each face [kg] and salt in it [kg]. */
    final double[] filmWater;

    final double[] filmSalt;

    /** Dry salt on each patch [kg/m2]. */
    final double[] doseSalt;

    /** Salt and water of the bath at each face [kg]. */
    final double[] bathSalt;

    final double[] bathWater;

    /** Heat that came in, water that evaporated, through each face [J, kg]. */
    final double[] heatIn;

    final double[] evaporated;

    /** Part of it that came from the juice on the face [kg]. */
    double evaporatedFilm;

    /** Area of each face in the computed part [m2]. */
    final double[] faceArea;

    double dripWater;
    double dripSalt;
    double dripEnthalpy;
    double stageTime;

    SolidState(SolidGrid grid, SolidPiece piece, int kinds, int reactions) {
        this.piece = piece;
        lines = new SolidLines(grid);
        heat = piece.heat();
        salt = piece.salt();
        cells = lines.cells;
        faces = grid.faces();
        dryMass = new double[cells];
        enthalpy = new double[cells];
        temperature = new double[cells];
        capacity = new double[cells];
        water = new double[cells];
        saltContent = new double[cells];
        expelled = new double[cells];
        kill = new double[kinds][cells];
        surfaceKill = new double[kinds][lines.patches];
        extents = new double[reactions][cells];
        filmWater = new double[faces];
        filmSalt = new double[faces];
        faceArea = new double[faces];
        for (int p = 0; p < lines.patches; p++) {
            faceArea[lines.patchFace[p]] += lines.patchArea[p];
        }
        doseSalt = new double[lines.patches];
        bathSalt = new double[faces];
        bathWater = new double[faces];
        heatIn = new double[faces];
        evaporated = new double[faces];
        InitialState start = piece.start();
        double h = heat.enthalpy(start.temperature() - KELVIN, start.water(), start.salt());
        for (int c = 0; c < cells; c++) {
            dryMass[c] = heat.dryDensity() * lines.volume[c];
            enthalpy[c] = h;
            water[c] = start.water();
            saltContent[c] = start.salt();
        }
    }

    /** Whether moving salt takes enthalpy along; not with constant properties. */
    boolean carriesSaltEnthalpy() {
        return heat.saltCapacity(0) != 0 || heat.saltCapacity(1) != 0 || heat.saltCapacity(2) != 0;
    }

    /** Enthalpy of liquid water above 0 degrees Celsius [J/kg]; zero where water carries none (constant properties). */
    double waterEnthalpy(double t) {
        return t * (heat.waterCapacity(0) + t * (heat.waterCapacity(1) / 2 + t * heat.waterCapacity(2) / 3));
    }

    /** Enthalpy of dissolved salt above 0 degrees Celsius [J/kg]. */
    double saltEnthalpy(double t) {
        return t * (heat.saltCapacity(0) + t * (heat.saltCapacity(1) / 2 + t * heat.saltCapacity(2) / 3));
    }

    /** Whether salt per water is the same in all cells but for rounding, so that nothing moves by itself. */
    boolean isUniform() {
        double first = saltContent[0] / water[0];
        for (int c = 1; c < cells; c++) {
            if (!(Math.abs(saltContent[c] / water[c] - first) <= 1e-12 * first)) {
                return false;
            }
        }
        return true;
    }

    /** Sum over the cells of a value per dry mass [unit times kg]. */
    double total(double[] perDryMass) {
        double sum = 0;
        for (int c = 0; c < cells; c++) {
            sum += dryMass[c] * perDryMass[c];
        }
        return sum;
    }

    /** Sum over the patches of a value per area [unit times m2]. */
    double totalOnPatches(double[] perArea) {
        double sum = 0;
        for (int p = 0; p < lines.patches; p++) {
            sum += lines.patchArea[p] * perArea[p];
        }
        return sum;
    }
}
