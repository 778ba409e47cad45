package org.tautlog.cli.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tautlog.intake.table.OutcomeFile;
import org.tautlog.trace.MeasuredClampLoad;

/** The file beside a simulated trial's logs that tells the clamp loads measured. */
final class OutcomeTable implements AutoCloseable {
    static final String NAME = "outcomes.csv";

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setRecordSeparator('\n')
            .setHeader(OutcomeFile.SERIAL, OutcomeFile.BOLT, OutcomeFile.ATTEMPT, OutcomeFile.ANGLE, OutcomeFile.LOAD)
            .get();

    private final CSVPrinter rows;

    private OutcomeTable(CSVPrinter rows) {
        this.rows = rows;
    }

    static OutcomeTable in(Path folder) throws IOException {
        return new OutcomeTable(new CSVPrinter(Files.newBufferedWriter(folder.resolve(NAME)), FORMAT));
    }

    void add(MeasuredClampLoad measured) throws IOException {
        for (var point : measured.points()) {
            rows.printRecord(
                    measured.serial(),
                    measured.bolt(),
                    measured.attempt(),
                    String.format(Locale.ROOT, "%.1f", point.angleDeg()),
                    String.format(Locale.ROOT, "%.2f", point.loadKN()));
        }
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
