package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSimulation;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Plans of all examples whose piece has a shape of three dimensions, carried out by the solver in three dimensions for the piece
 * that is at the 5th percentile of the kill: 19 of 20 pieces have more. Pieces heated on one face at a time, and frozen ones till
 * they are thawed, are not covered by that solver; the plans say so.
 */
class SafeInThreeDimensionsTest {
    private static final Path FOLDER = Path.of("../examples");
    private static final ZonedDateTime NOW = ZonedDateTime.of(2026, 11, 1, 12, 0, 0, 0, ZoneOffset.UTC);
    private static final double FIFTH = 0.05;

    @TestFactory
    Stream<DynamicTest> slowPieceIsSafe() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String folder : List.of("", "salting", "week")) {
            try (Stream<Path> found = Files.list(FOLDER.resolve(folder))) {
                found.filter(f -> f.toString().endsWith(".yaml") && !f.endsWith("slab.yaml"))
                        .sorted()
                        .forEach(files::add);
            }
        }
        return files.stream()
                .filter(f -> isCovered(request(f)))
                .map(f -> DynamicTest.dynamicTest(String.valueOf(f.getFileName()), () -> check(request(f))));
    }

    private static boolean isCovered(Request request) {
        return SolidGrid.covers(request.food().shape())
                && request.food().startTemperature() >= Thawing.FROZEN_BELOW
                && SolidCheck.whyNot(request).isEmpty()
                && request.equipment().thermometer();
    }

    private static Request request(Path file) {
        try {
            return PlanFile.read(
                    DocumentReader.read(file.toString(), Files.readAllBytes(file), DocumentFormat.YAML),
                    Catalog.load(),
                    NOW);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void check(Request asked) {
        Plan plan = PlanSearch.planOnly(asked, Runnable::run, 1).plan();
        Request request = plan.request();
        SafetyRule rule = plan.cooking().verdict().rule();
        SolverSettings settings = Planner.settings(rule);
        CookStages stages = new CookStages(request, rule);
        List<DayEnsemble.StageFor> heat = stages.through(plan.cooking().pullTemperature(), SaltExchange.NONE);
        Draw draw = slow(request, settings, heat);
        DayEnsemble member = ensemble(request, settings, List.of(draw));
        SolidSolver solver = new SolidSolver(
                SolidGrid.of(request.food().shape(), 4000, 1), SolidPiece.of(member.member(draw, false)), settings);
        List<double[]> core = new ArrayList<>();
        double[] begin = {0};
        for (DayEnsemble.StageFor each : heat) {
            Stage stage = each.stage(draw);
            solver.run(
                    SolidSimulation.input(stage, solver),
                    (s, start, end) -> core.add(new double[] {begin[0] + end, s.coreTemperature(1)}));
            begin[0] += solver.stageTime();
        }
        TemperatureHistory history = TemperatureHistory.of(
                core.stream().mapToDouble(point -> point[0]).toArray(),
                core.stream().mapToDouble(point -> point[1]).toArray());
        boolean byHold = rule.allowsHold() && solver.leastKill() >= 1;
        assertThat(byHold || rule.consumerMinimum().isMetBy(history))
                .as(
                        "hold %.2f, hottest %.1f K",
                        solver.leastKill(),
                        core.stream().mapToDouble(p -> p[1]).max().orElse(0))
                .isTrue();
    }

    /** The luck of the piece of the plan's ensemble whose kill is at its 5th percentile. */
    private static Draw slow(Request request, SolverSettings settings, List<DayEnsemble.StageFor> heat) {
        List<Draw> draws = Draw.ensemble(Planner.MEMBERS, 1);
        List<MemberDay> days = ensemble(request, settings, draws).run(heat, Runnable::run);
        List<Integer> order = IntStream.range(0, draws.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> days.get(i).end(CookStages.REST).leastKill()))
                .toList();
        return draws.get(order.get((int) Math.round(FIFTH * draws.size())));
    }

    private static DayEnsemble ensemble(Request request, SolverSettings settings, List<Draw> draws) {
        Request.Food food = request.food();
        return new DayEnsemble(food.meat(), food.shape(), food.startTemperature(), draws, settings, 20);
    }
}
