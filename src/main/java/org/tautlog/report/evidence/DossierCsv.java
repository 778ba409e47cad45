package org.tautlog.report.evidence;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.tautlog.report.judged.VerdictsCsv;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;

/**
 * One row a recording of an engine, as in {@link VerdictsCsv}, and one for each bolt position that has none; the last column
 * tells how the bolt position stands.
 */
public final class DossierCsv {
    private DossierCsv() {}

    /**
     * Writes the table.
     *
     * @param dossier what is known
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(EngineDossier dossier, Appendable out) throws IOException {
        var printer = CSVFormat.RFC4180.print(out);
        var header = new ArrayList<>(VerdictsCsv.header());
        header.add("standing");
        printer.printRecord(header);
        for (var position : dossier.positions()) {
            var rows = position.attempts().isEmpty()
                    ? List.of(unrecorded(dossier.serial(), position))
                    : position.attempts().stream()
                            .map(attempt -> VerdictsCsv.cells(attempt.judgement()))
                            .toList();
            for (var row : rows) {
                var cells = new ArrayList<>(row);
                cells.add(position.standing().word());
                printer.printRecord(cells);
            }
        }
        printer.flush();
    }

    private static List<Object> unrecorded(String serial, BoltPosition position) {
        var known = Map.of("serial", serial, "bolt", position.bolt(), "station", position.station());
        return VerdictsCsv.header().stream()
                .<Object>map(name -> VerdictsCsv.text(known.getOrDefault(name, "")))
                .toList();
    }
}
