package org.tautlog.cli.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.report.study.TestsJson;
import org.tautlog.spc.Digits;
import org.tautlog.spc.Sample;
import org.tautlog.spc.study.StudyRow;
import org.tautlog.spc.study.TestStudy;

/**
 * Tests of one table in words.
 *
 * @param study what was looked for
 * @param value the columns tested
 * @param level chance of a positive result by chance alone, for each test or for all together
 * @param chance what chance alone would show, one sentence
 * @param rejected how many rows could not be used
 * @param spread how far apart the values of a group lie, for the digits of what is told; 0 for unknown
 * @param groups the tests of each group by its name
 */
record TestStudying(
        String study,
        String value,
        double level,
        String chance,
        int rejected,
        double spread,
        Map<String, List<TestStudy>> groups) {
    private static final int MOST_MARKS = 40;

    static List<StudyRow> rows(List<CsvRow> rows) {
        return new AsStudied(rows, row -> new StudyRow("line " + row.line(), row.numbers(), "", ""));
    }

    /** The least standard deviation of the first column in any group, but for groups without any. */
    static double spread(Collection<List<CsvRow>> groups) {
        return groups.stream()
                .filter(rows -> !rows.isEmpty())
                .mapToDouble(rows -> Sample.derived(rows.stream()
                                .mapToDouble(row -> row.numbers().get(0))
                                .toArray())
                        .sd())
                .filter(sd -> sd > 0)
                .min()
                .orElse(0);
    }

    /** How often tests that keep to the level are positive by chance. */
    static String ofEach(double level) {
        return "each test alone is positive by chance in " + Digits.of(100 * level) + " % of calm groups or fewer";
    }

    String json() {
        return TestsJson.of(study, value, level, chance, rejected, groups);
    }

    int exitCode() {
        var all = groups.values().stream().flatMap(List::stream).toList();
        boolean any = all.stream().anyMatch(test -> test.result().found().isPresent());
        return StudyCode.of(
                any, rejected > 0 || !untested().isEmpty() || all.stream().anyMatch(TestStudy::positive));
    }

    /** The groups in which no test at all could be made. */
    private List<String> untested() {
        return groups.entrySet().stream()
                .filter(group -> group.getValue().stream()
                        .noneMatch(test -> test.result().found().isPresent()))
                .map(Map.Entry::getKey)
                .toList();
    }

    List<String> lines() {
        var lines = new ArrayList<String>();
        groups.forEach((name, tests) -> {
            lines.add(value + (name.isEmpty() ? "" : ", " + name) + ": " + study);
            tests.forEach(test -> test.result()
                    .found()
                    .ifPresentOrElse(
                            found -> add(lines, test.test(), found),
                            () -> lines.add("  " + test.test() + ": no test: "
                                    + test.result().whyMissing().orElse(""))));
        });
        lines.add(chance);
        var untested = untested();
        if (!untested.isEmpty() && untested.size() < groups.size()) {
            lines.add("NOT ALL TESTED: "
                    + untested.stream().limit(MOST_MARKS).collect(Collectors.joining("; "))
                    + (untested.size() > MOST_MARKS ? " and " + (untested.size() - MOST_MARKS) + " more" : "")
                    + "; exit code " + exitCode());
        }
        return lines;
    }

    private void add(List<String> lines, String test, TestStudy.Result result) {
        lines.add("  " + test + ": " + result.said() + "  ("
                + result.figures().stream()
                        .map(figure -> figure.name() + " " + Digits.of(figure.value(), figure.inUnit() ? spread : 0))
                        .collect(Collectors.joining(", "))
                + ")");
        result.marks().stream()
                .limit(MOST_MARKS)
                .forEach(mark ->
                        lines.add("    " + mark.place() + ", " + Digits.of(mark.value(), spread) + ": " + mark.said()));
        if (result.marks().size() > MOST_MARKS) {
            lines.add("    and " + (result.marks().size() - MOST_MARKS) + " more; --json gives all");
        }
    }
}
