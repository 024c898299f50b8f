package io.github.saltfront.app.request;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.SaltSection;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class SaltingExamplesTest {
    private static final Path FOLDER = Path.of("../examples/salting");
    private static final Catalog CATALOG = Catalog.load();

    @TestFactory
    List<DynamicTest> all() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted()
                    .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                        Request request = PlanFile.read(
                                DocumentReader.read(file), CATALOG, ZonedDateTime.parse("2026-11-23T12:00-05:00"));
                        long start = System.nanoTime();
                        Plan.SaltPlan plan = Planner.planSalting(request, Runnable::run, 1);
                        String text = SaltSection.of(request, plan);
                        Files.writeString(
                                Path.of("/tmp/salt4-" + file.getFileName() + ".txt"),
                                "==== " + file.getFileName() + " " + (System.nanoTime() - start) / 1000000 + " ms\n"
                                        + text);
                        assertThat(text).isNotEmpty();
                    }))
                    .toList();
        }
    }
}
