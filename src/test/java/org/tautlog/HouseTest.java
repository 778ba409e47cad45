package org.tautlog;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The house of DEVELOPERS.md, held by the build: which room may import which, and which room may see which library. */
@AnalyzeClasses(packages = "org.tautlog", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    private static final int LONGEST_FILE_LINES = 600;

    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            entry("problem", Set.of()),
            entry("trace", Set.of()),
            entry("spc", Set.of()),
            entry("joint", Set.of()),
            entry("line", Set.of("joint", "trace")),
            entry("intake", Set.of("joint", "trace", "problem")),
            entry("signature", Set.of("joint", "trace")),
            entry("judge", Set.of("signature", "joint", "trace")),
            entry("archive", Set.of("judge", "signature", "joint", "trace", "problem")),
            entry("review", Set.of("archive", "judge", "signature", "spc", "joint", "trace", "problem")),
            entry("report", Set.of("review", "archive", "judge", "signature", "spc", "joint", "trace", "problem")),
            entry(
                    "cli",
                    Set.of(
                            "report",
                            "review",
                            "archive",
                            "judge",
                            "signature",
                            "intake",
                            "line",
                            "joint",
                            "trace",
                            "spc",
                            "problem")));

    private static final Map<String, Set<String>> LIBRARY_LIVES_IN = Map.ofEntries(
            entry("picocli..", Set.of("cli")),
            entry("me.tongfei..", Set.of("cli")),
            entry("org.apache.commons.csv..", Set.of("intake", "report", "cli")),
            entry("org.tomlj..", Set.of("intake")),
            entry("com.fasterxml.jackson..", Set.of("report", "intake", "archive", "cli")),
            entry("org.duckdb..", Set.of("archive")),
            entry("freemarker..", Set.of("report.page")),
            entry("org.jfree..", Set.of("report")),
            entry("java.awt..", Set.of("report")),
            entry("org.apache.batik..", Set.of("report")),
            entry("com.openhtmltopdf..", Set.of("report")),
            entry("org.apache.pdfbox..", Set.of("report")),
            entry("org.apache.fontbox..", Set.of("report")),
            entry("tech.tablesaw..", Set.of("review", "report")),
            entry("org.hipparchus..", Set.of("spc", "joint", "signature", "line", "review")),
            entry("org.apache.commons.math3..", Set.of()));

    @ArchTest
    static void arrows_run_one_way(JavaClasses classes) {
        var house = layeredArchitecture().consideringOnlyDependenciesInAnyPackage("org.tautlog..");
        for (var name : MAY_IMPORT.keySet()) house = house.layer(name).definedBy(room(name));
        for (var rule : MAY_IMPORT.entrySet()) {
            var layer = house.whereLayer(rule.getKey());
            house = rule.getValue().isEmpty()
                    ? layer.mayNotAccessAnyLayer()
                    : layer.mayOnlyAccessLayers(rule.getValue().toArray(String[]::new));
        }
        house.ensureAllClassesAreContainedInArchitecture().check(classes);
    }

    @ArchTest
    static void rooms_have_no_cycles(JavaClasses classes) {
        slices().matching("org.tautlog.(**)").should().beFreeOfCycles().check(classes);
    }

    @ArchTest
    static void each_library_lives_in_its_rooms(JavaClasses classes) {
        LIBRARY_LIVES_IN.forEach((library, rooms) -> noClasses()
                .that()
                .resideOutsideOfPackages(rooms.stream().map(HouseTest::room).toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .allowEmptyShould(true)
                .check(classes));
    }

    @ArchTest
    static void only_the_command_line_has_a_clock_and_a_printer(JavaClasses classes) {
        noClasses()
                .that()
                .resideOutsideOfPackage(room("cli"))
                .should()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.OffsetDateTime.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "getenv", String.class)
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callConstructor(java.util.Random.class)
                .orShould()
                .callMethod(Math.class, "random")
                .check(classes);
    }

    @ArchTest
    static void the_test_saw_every_room(JavaClasses classes) {
        var seen = classes.stream()
                .filter(alwaysTrue())
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith("org.tautlog."))
                .map(name -> name.split("\\.", -1)[2])
                .collect(Collectors.toSet());
        assertEquals(MAY_IMPORT.keySet(), seen, "rooms in the table and rooms in the code");
    }

    @ArchTest
    static void no_file_outgrows_its_reader(JavaClasses classes) {
        var sizes = new TreeMap<String, Long>();
        for (var root : List.of("src/main/java", "src/test/java")) {
            try (var files = Files.walk(Path.of(root))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .forEach(file -> sizes.put(file.toString(), lines(file)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        assertTrue(sizes.size() > 10, "the check saw " + sizes.size() + " files");
        sizes.values().removeIf(lines -> lines <= LONGEST_FILE_LINES);
        assertTrue(sizes.isEmpty(), "longer than " + LONGEST_FILE_LINES + " lines: " + sizes);
    }

    private static long lines(Path file) {
        try (var lines = Files.lines(file)) {
            return lines.count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String room(String name) {
        return "org.tautlog." + name + "..";
    }
}
