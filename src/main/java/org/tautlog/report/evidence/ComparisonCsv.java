package org.tautlog.report.evidence;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tautlog.judge.Judgement;
import org.tautlog.problem.Problem;
import org.tautlog.report.judged.VerdictsCsv;
import org.tautlog.report.words.Times;
import org.tautlog.review.evidence.SpecificationComparison;

/**
 * One row for each recording whose verdict changes, and one for each problem that kept something out; cells are guarded as in
 * {@link VerdictsCsv}.
 */
public final class ComparisonCsv {
    private static final List<String> HEADER = List.of(
            "serial",
            "bolt",
            "station",
            "spindle",
            "attempt",
            "time",
            "firstVersion",
            "firstVerdict",
            "firstFindings",
            "secondVersion",
            "secondVerdict",
            "secondFindings",
            "file",
            "line",
            "sha256",
            "problem");

    private ComparisonCsv() {}

    /**
     * Writes the table.
     *
     * @param comparison what changes
     * @param problems what could not be judged, and why
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(SpecificationComparison comparison, List<Problem> problems, Appendable out)
            throws IOException {
        var printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEADER);
        for (var change : comparison.changes()) {
            var identity = change.first().identity();
            var time = identity.time();
            var source = change.first().source();
            printer.printRecord(
                    VerdictsCsv.text(identity.serial()),
                    VerdictsCsv.text(identity.bolt()),
                    VerdictsCsv.text(identity.station()),
                    VerdictsCsv.text(identity.spindle()),
                    identity.attempt(),
                    time == null ? "" : Times.iso(time),
                    VerdictsCsv.text(change.first().specificationVersion()),
                    change.first().verdict().word(),
                    findings(change.first()),
                    VerdictsCsv.text(change.second().specificationVersion()),
                    change.second().verdict().word(),
                    findings(change.second()),
                    VerdictsCsv.text(source.file()),
                    source.line(),
                    source.sha256(),
                    "");
        }
        for (var problem : problems) {
            var cells = new ArrayList<>(Collections.nCopies(HEADER.size() - 1, ""));
            cells.add(VerdictsCsv.text(problem.sentence()));
            printer.printRecord(cells);
        }
        printer.flush();
    }

    private static String findings(Judgement judgement) {
        return judgement.findings().stream()
                .map(finding -> finding.code().word())
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
