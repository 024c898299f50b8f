package io.github.saltfront.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The package table: a package may use only those above it in the list, and there are no cycles. */
@AnalyzeClasses(packages = "io.github.saltfront", importOptions = ImportOption.DoNotIncludeTests.class)
class PackageDependencyTest {
    private static final String ROOT = "io.github.saltfront.";
    private static final List<String> ORDER = List.of(
            "words",
            "units",
            "data",
            "numerics",
            "matter",
            "shape",
            "transport",
            "safety",
            "quality",
            "catalog",
            "plan",
            "live",
            "learn",
            "trial");

    @ArchTest
    static final ArchRule noCycles =
            slices().matching("io.github.saltfront.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyDataReadsFilesThreadsAndClocksStayOutside = ArchRuleDefinition.noClasses()
            .that()
            .resideInAPackage("io.github.saltfront..")
            .and()
            .resideOutsideOfPackage("io.github.saltfront.data..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "java.lang.reflect..")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.time.Clock.class, "systemUTC")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Thread.class);

    @TestFactory
    List<DynamicTest> packagesUseOnlyThoseAboveThem() {
        var classes = new com.tngtech.archunit.core.importer.ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("io.github.saltfront");
        return ORDER.stream()
                .filter(name ->
                        classes.stream().anyMatch(c -> c.getPackageName().startsWith(ROOT + name)))
                .map(name -> DynamicTest.dynamicTest(
                        name,
                        () -> ArchRuleDefinition.noClasses()
                                .that()
                                .resideInAPackage(ROOT + name + "..")
                                .should()
                                .dependOnClassesThat(below(name))
                                .allowEmptyShould(true)
                                .check(classes)))
                .toList();
    }

    private static DescribedPredicate<JavaClass> below(String name) {
        String[] packages = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()).stream()
                .map(p -> ROOT + p + "..")
                .toArray(String[]::new);
        return packages.length == 0
                ? DescribedPredicate.alwaysFalse()
                : JavaClass.Predicates.resideInAnyPackage(packages);
    }
}
