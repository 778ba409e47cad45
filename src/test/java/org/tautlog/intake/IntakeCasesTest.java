package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tautlog.problem.Problem;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;
import org.tomlj.Toml;
import org.tomlj.TomlArray;

/**
 * One small folder of logs for each oddity, with the rule it shows and the outcome beside it in {@code expected.toml}.
 * Oddities of real exports are common practice, no source; the units are those of NIST SP 811 and ISO 80000-3.
 */
class IntakeCasesTest {
    private static final Path CASES = Path.of("src/test/resources/intake");
    private static final int HOW_MANY = 82;

    @TestFactory
    Stream<DynamicTest> each_case_has_the_outcome_beside_it() throws IOException {
        List<Path> cases;
        try (var folders = Files.list(CASES)) {
            cases = folders.filter(Files::isDirectory).sorted().toList();
        }
        assertEquals(HOW_MANY, cases.size(), "cases; a new one raises this number");
        return cases.stream().map(folder -> {
            var expected = expected(folder);
            return dynamicTest(folder.getFileName() + ": " + expected.getString("rule"), () -> check(folder, expected));
        });
    }

    @Test
    void the_index_names_every_case_with_its_rule() throws IOException {
        List<String> rows;
        try (var folders = Files.list(CASES)) {
            rows = folders.filter(Files::isDirectory)
                    .sorted()
                    .map(folder -> "| `" + folder.getFileName() + "` | "
                            + expected(folder).getString("rule") + " |")
                    .toList();
        }
        var index = Files.readAllLines(CASES.resolve("README.md"));
        assertEquals(
                String.join("\n", rows),
                index.stream().filter(line -> line.startsWith("| `")).collect(Collectors.joining("\n")));
    }

    private static void check(Path folder, org.tomlj.TomlTable expected) {
        var traces = new ArrayList<Trace>();
        var summary = LogReader.read(List.of(folder), ReadOptions.withDefaults(), traces::add);
        var why = summary.problems().toString();
        assertEquals(
                list(expected.getArrayOrEmpty("traces")),
                traces.stream().map(IntakeCasesTest::words).toList(),
                why);
        assertEquals(expected.getLong("kept"), summary.traces().kept(), why);
        assertEquals(expected.getLong("rejected"), summary.traces().rejected(), why);
        assertEquals(
                String.join("\n", list(expected.getArrayOrEmpty("problems"))),
                String.join(
                        "\n",
                        summary.problems().stream()
                                .map(problem -> words(folder, problem, expected))
                                .toList()),
                why);
        var assumed = summary.assumptions().stream()
                .map(problem -> problem.where().key())
                .toList();
        for (var key : list(expected.getArrayOrEmpty("assumed"))) {
            assertTrue(assumed.contains(key), () -> "no assumption about " + key + " among " + assumed);
        }
        expected.getArrayOrEmpty("assumed-lines")
                .toList()
                .forEach(line -> assertTrue(
                        summary.assumptions().stream()
                                .anyMatch(problem -> problem.where().line() == (Long) line),
                        () -> "no assumption about line " + line));
        traces.forEach(trace -> assertEquals(64, trace.source().sha256().length()));
    }

    /** The line of a cut in packed bytes is no matter of the rule; a {@code *} stands for it. */
    private static String words(Path folder, Problem problem, org.tomlj.TomlTable expected) {
        var file = problem.where().file().substring(folder.toString().length() + 1);
        boolean anyLine = expected.getArrayOrEmpty("problems").toString().contains("*")
                || list(expected.getArrayOrEmpty("problems")).stream().anyMatch(text -> text.endsWith(":*"));
        return problem.code().word()
                + ' '
                + file
                + ':'
                + (anyLine ? "*" : String.valueOf(problem.where().line()));
    }

    private static String words(Trace trace) {
        var identity = trace.identity();
        var curve = trace.curve();
        int last = curve.size() - 1;
        return identity.serial() + '|' + identity.station() + '|' + identity.spindle() + '|' + identity.bolt() + '|'
                + identity.attempt() + (identity.time() == null ? "" : " " + identity.time()) + ' ' + curve.size()
                + ": "
                + rounded(curve.angleDeg(0)) + ".." + rounded(curve.angleDeg(last)) + " deg "
                + rounded(curve.torqueNm(0)) + ".." + rounded(curve.torqueNm(last)) + " Nm" + further(curve, last);
    }

    private static String further(Curve curve, int last) {
        return (curve.hasTime() ? " time " + rounded(curve.timeS(0)) + ".." + rounded(curve.timeS(last)) : "")
                + (curve.hasStages() ? " stages " + curve.stage(0) + ".." + curve.stage(last) : "");
    }

    /** Four decimals, as the factors of the units are printed. */
    private static double rounded(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.4f", value));
    }

    private static List<String> list(TomlArray array) {
        return array.toList().stream().map(String.class::cast).toList();
    }

    private static org.tomlj.TomlTable expected(Path folder) {
        try {
            var parsed = Toml.parse(folder.resolve("expected.toml"));
            assertEquals(List.of(), parsed.errors());
            return parsed;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("each case needs its expected.toml", e);
        }
    }
}
