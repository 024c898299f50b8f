package io.github.saltfront.transport;

/** Keeps account of what a block held at its start and what came in, to report the errors of the balances. */
final class Balance {
    private final LaneBlock block;
    private final double[] startEnthalpy;
    private final double[] startSalt;
    private final double[] startWater;
    private final double[] startMass;
    private final double[] saltIn;
    private final double[] waterIn;
    private final double[] stageSalt;
    private final double[] stageWater;
    private boolean inStage;

    Balance(LaneBlock block) {
        this.block = block;
        int lanes = block.lanes;
        startEnthalpy = new double[lanes];
        startSalt = new double[lanes];
        startWater = new double[lanes];
        startMass = new double[lanes];
        saltIn = new double[lanes];
        waterIn = new double[lanes];
        stageSalt = new double[lanes];
        stageWater = new double[lanes];
        for (int l = 0; l < lanes; l++) {
            startEnthalpy[l] = enthalpy(l);
            startSalt[l] = salt(l);
            startWater[l] = water(l);
            startMass[l] = dryMass(l) + startSalt[l] + startWater[l];
        }
    }

    /** Goes on with the account of the same pieces in another grid, in which a lane has a multiple of the mass per area. */
    void takeOver(Balance from, double[] factor) {
        for (int l = 0; l < block.lanes; l++) {
            startEnthalpy[l] = factor[l] * from.startEnthalpy[l];
            startSalt[l] = factor[l] * from.startSalt[l];
            startWater[l] = factor[l] * from.startWater[l];
            startMass[l] = factor[l] * from.startMass[l];
            saltIn[l] = factor[l] * from.saltIn[l];
            waterIn[l] = factor[l] * from.waterIn[l];
        }
    }

    void beginStage() {
        inStage = true;
        for (int l = 0; l < block.lanes; l++) {
            stageSalt[l] = reservoirSalt(l);
            stageWater[l] = reservoirWater(l);
        }
    }

    void endStage() {
        for (int l = 0; l < block.lanes; l++) {
            saltIn[l] += stageSalt[l] - reservoirSalt(l);
            waterIn[l] += stageWater[l] - reservoirWater(l);
        }
        inStage = false;
    }

    BalanceError error(int lane) {
        double heat = 0;
        double film = 0;
        double filmSalt = 0;
        double evaporated = 0;
        for (int f = 0; f < block.faces; f++) {
            heat += block.heatIn[f][lane];
            film += block.filmWater[f][lane] + block.unfed[f][lane];
            filmSalt += block.filmSalt[f][lane];
            evaporated += block.waterFixed[lane] ? 0 : block.evaporated[f][lane];
        }
        double salt = saltIn[lane] + (inStage ? stageSalt[lane] - reservoirSalt(lane) : 0);
        double water = waterIn[lane] + (inStage ? stageWater[lane] - reservoirWater(lane) : 0);
        return new BalanceError(
                relative(startEnthalpy[lane], heat, enthalpy(lane) + block.dripEnthalpy[lane]),
                relative(startSalt[lane], salt, salt(lane) + filmSalt + block.dripSalt[lane]),
                relative(startWater[lane], water, water(lane) + film + block.dripWater[lane] + evaporated));
    }

    private static double relative(double start, double in, double end) {
        double scale = Math.max(Math.abs(start), Math.max(Math.abs(in), Math.abs(end)));
        return scale == 0 ? 0 : Math.abs(end - start - in) / scale;
    }

    double mass(int lane) {
        return dryMass(lane) + salt(lane) + water(lane);
    }

    double massLoss(int lane) {
        if (block.waterFixed[lane]) {
            return evaporatedShare(lane);
        }
        double now = mass(lane);
        for (double[] face : block.filmSalt) {
            now += face[lane];
        }
        return 1 - now / startMass[lane];
    }

    double evaporatedShare(int lane) {
        double sum = 0;
        for (double[] face : block.evaporated) {
            sum += face[lane];
        }
        return sum / startMass[lane];
    }

    double drippedSaltShare(int lane) {
        return block.dripSalt[lane] / (salt(lane) + block.dripSalt[lane] + 1e-300);
    }

    private double reservoirSalt(int lane) {
        double sum = 0;
        for (int f = 0; f < block.faces; f++) {
            sum += block.slotSalt[block.faceSlot(f)][lane];
        }
        return sum;
    }

    private double reservoirWater(int lane) {
        double sum = 0;
        for (int f = 0; f < block.faces; f++) {
            sum += block.reservoirWater[f][lane];
        }
        return sum;
    }

    private double dryMass(int lane) {
        double sum = 0;
        for (double[] row : block.dryMass) {
            sum += row[lane];
        }
        return sum;
    }

    private double enthalpy(int lane) {
        return weighted(lane, block.enthalpy, 0);
    }

    private double salt(int lane) {
        return weighted(lane, block.slotSalt, 1);
    }

    private double water(int lane) {
        return weighted(lane, block.water, 0);
    }

    private double weighted(int lane, double[][] values, int firstRow) {
        double sum = 0;
        for (int i = 0; i < block.cells; i++) {
            sum += block.dryMass[i][lane] * values[i + firstRow][lane];
        }
        return sum;
    }
}
