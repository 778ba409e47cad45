package org.tautlog.cli.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tautlog.line.SimulatedTightening;

/** The file beside a simulated line's logs that tells what really happened to each bolt. */
final class TruthTable implements AutoCloseable {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setRecordSeparator('\n')
            .setHeader(
                    "serial",
                    "station",
                    "spindle",
                    "bolt",
                    "attempt",
                    "fault",
                    "good",
                    "clamp load (kN)",
                    "turn of the head (deg)",
                    "yield strength (MPa)",
                    "thread friction",
                    "head friction",
                    "onset past snug (deg)")
            .get();

    private final CSVPrinter rows;

    private TruthTable(CSVPrinter rows) {
        this.rows = rows;
    }

    static TruthTable in(Path file) throws IOException {
        return new TruthTable(new CSVPrinter(Files.newBufferedWriter(file), FORMAT));
    }

    void add(SimulatedTightening tightening) throws IOException {
        var identity = tightening.trace().identity();
        var truth = tightening.truth();
        var onsetDeg = truth.onsetPastSnugDeg();
        rows.printRecord(
                identity.serial(),
                identity.station(),
                identity.spindle(),
                identity.bolt(),
                identity.attempt(),
                truth.fault().word(),
                truth.good() ? "yes" : "no",
                digits(truth.clampLoadKN(), 2),
                digits(truth.turnDeg(), 1),
                digits(truth.yieldStrengthMPa(), 0),
                digits(truth.threadMu(), 4),
                digits(truth.underHeadMu(), 4),
                onsetDeg == null ? "" : digits(onsetDeg, 1));
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }

    private static String digits(double value, int count) {
        return String.format(Locale.ROOT, "%." + count + "f", value);
    }
}
