package org.tautlog.cli.simulate;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.GZIPOutputStream;
import org.tautlog.intake.LogWriter;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.line.Fault;
import org.tautlog.line.SimulatedTightening;

/**
 * One file of a simulated line's logs.
 *
 * @param place where it lies and how
 * @param tightenings what it holds, in time order; still growing until it is written
 */
record SimulatedLog(Place place, List<SimulatedTightening> tightenings) {
    /** How many rows of a damaged tightening are spoilt. */
    private static final int SPOILT_ROWS = 4;

    /** How a file lies. */
    enum Kind {
        LONG_TABLE,
        FILE_PER_TRACE,
        ROW_PER_TRACE
    }

    /**
     * Where a file lies and how.
     *
     * @param name its path below the folder of the logs
     * @param kind how it lies
     */
    record Place(String name, Kind kind) {}

    void write(Path folder) throws IOException {
        var file = folder.resolve(place.name());
        switch (place.kind()) {
            case FILE_PER_TRACE -> write(file, LogShape.FILE_PER_TRACE, Packing.ZIP);
            case ROW_PER_TRACE -> writeChanged(file, LogShape.ROW_PER_TRACE, (row, line) -> ofAnotherCountry(line));
            case LONG_TABLE -> {
                var spoilt = spoiltRows();
                if (spoilt.isEmpty()) {
                    write(file, LogShape.LONG_TABLE, Packing.GZIP);
                } else {
                    writeChanged(
                            file,
                            LogShape.LONG_TABLE,
                            (row, line) -> spoilt.contains(row) ? line.substring(0, line.length() / 2) : line);
                }
            }
        }
    }

    private void write(Path file, LogShape shape, Packing packing) throws IOException {
        try (var writer = LogWriter.open(file, shape, packing)) {
            for (var tightening : tightenings) {
                writer.write(tightening.trace());
            }
        }
    }

    private void writeChanged(Path file, LogShape shape, LineChange change) throws IOException {
        var plain = file.resolveSibling(file.getFileName() + ".part");
        write(plain, shape, Packing.PLAIN);
        try (var lines = Files.newBufferedReader(plain);
                var packed = new BufferedWriter(new OutputStreamWriter(
                        new GZIPOutputStream(Files.newOutputStream(file)), StandardCharsets.UTF_8))) {
            change(lines, packed, change);
        }
        Files.delete(plain);
    }

    private static void change(BufferedReader lines, BufferedWriter changed, LineChange change) throws IOException {
        long row = 0;
        for (var line = lines.readLine(); line != null; line = lines.readLine()) {
            changed.append(change.of(row++, line)).append('\n');
        }
    }

    /** Neither texts nor times of the simulated line hold a comma or a point, so that sign by sign is enough. */
    private static String ofAnotherCountry(String line) {
        return line.replace(',', ';').replace('.', ',');
    }

    /** Row numbers below the header, from 1: a few in the turn of each tightening whose rows cannot be read. */
    private Set<Long> spoiltRows() {
        var rows = new HashSet<Long>();
        long before = 1;
        for (var tightening : tightenings) {
            int size = tightening.trace().curve().size();
            if (tightening.truth().fault() == Fault.UNREADABLE_ROWS) {
                for (int i = 0; i < SPOILT_ROWS; i++) {
                    rows.add(before + size * 9L / 10 + 3L * i);
                }
            }
            before += size;
        }
        return rows;
    }

    /** Makes another line of a line. */
    private interface LineChange {
        String of(long row, String line);
    }
}
