package org.tautlog.intake;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.file.LogOutput;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.intake.text.FormulaGuard;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/**
 * Writes traces as a log that {@link LogReader} reads back without a layout file: identity, order and every sample are
 * the same, to the last bit. Text is UTF-8 with {@code ,} and {@code .}; equal traces give equal bytes.
 *
 * <p>No existing file is overwritten. Text cells that a spreadsheet would evaluate as a formula get an apostrophe in
 * front, which the reader takes off again. Identity text with control characters or outer blanks is refused: no table
 * gives it back.
 */
public final class LogWriter implements Closeable {
    private static final CSVFormat PLAIN_CELLS = CSVFormat.DEFAULT
            .builder()
            .setRecordSeparator('\n')
            .setQuoteMode(QuoteMode.MINIMAL)
            .get();
    /** A spreadsheet of another country splits at other signs: a text that holds one is quoted. */
    private static final CSVFormat QUOTED_CELLS =
            PLAIN_CELLS.builder().setQuoteMode(QuoteMode.NON_NUMERIC).get();

    private static final String SPLITTING_SIGNS = ",;|";

    private static final List<String> IDENTITY =
            List.of("Serial", "Station", "Spindle", "Bolt", "Attempt", "Recorded", "Bolt lot");
    private static final List<String> SAMPLES = List.of("Time (s)", "Angle (deg)", "Torque (N·m)", "Stage");

    private final LogShape shape;
    private final LogOutput output;
    private @Nullable Writer table;
    private long written;

    private LogWriter(LogShape shape, LogOutput output) {
        this.shape = shape;
        this.output = output;
    }

    /**
     * Opens a log for writing; missing folders are made.
     *
     * @param target a folder for {@link LogShape#FILE_PER_TRACE} unless packed as an archive; otherwise the file itself,
     *     whose name should end in {@code .csv}, {@code .csv.gz} or {@code .zip}
     * @param shape how the traces lie
     * @param packing how the log is packed
     * @return the writer; the log is whole once it was closed
     * @throws IOException where the target is already there or cannot be written
     */
    public static LogWriter open(Path target, LogShape shape, Packing packing) throws IOException {
        Objects.requireNonNull(shape, "shape");
        boolean many = shape == LogShape.FILE_PER_TRACE;
        var output = packing == Packing.ZIP
                ? LogOutput.archive(target)
                : many
                        ? LogOutput.folder(target, packing == Packing.GZIP)
                        : LogOutput.file(target, packing == Packing.GZIP);
        var writer = new LogWriter(shape, output);
        if (!many) {
            var name = Objects.requireNonNull(target.getFileName(), "target").toString();
            writer.beginTable(name.replaceFirst("(?i)\\.zip$", "") + ".csv");
        }
        return writer;
    }

    /**
     * Writes one trace after those before it.
     *
     * @param trace the trace; where it was read is not written
     * @throws IOException where the file cannot be written
     * @throws IllegalArgumentException where a text of its identity cannot be written so that it reads back the same
     */
    public void write(Trace trace) throws IOException {
        var identity = identityCells(trace.identity());
        written++;
        if (shape == LogShape.FILE_PER_TRACE) {
            try (var file = output.begin(fileName(trace.identity()))) {
                writeFile(file, identity, trace.curve());
            }
        } else if (shape == LogShape.LONG_TABLE) {
            writeRows(openTable(), identity, trace.curve());
        } else {
            writeRow(openTable(), identity, trace.curve());
        }
    }

    /** {@return how many traces were written} */
    public long written() {
        return written;
    }

    @Override
    public void close() throws IOException {
        try (output) {
            if (table != null) {
                table.close();
            }
        }
    }

    private void beginTable(String name) throws IOException {
        table = output.begin(name);
        var head = new ArrayList<Object>(List.of("Trace"));
        head.addAll(IDENTITY);
        head.addAll(SAMPLES);
        print(table, head);
    }

    private Writer openTable() {
        return Objects.requireNonNull(table, "table");
    }

    private static void writeFile(Writer file, List<Object> identity, Curve curve) throws IOException {
        for (int i = 0; i < IDENTITY.size(); i++) {
            print(file, List.of(IDENTITY.get(i) + ": " + identity.get(i)));
        }
        print(file, List.of("Samples: " + curve.size()));
        file.append('\n');
        print(file, List.copyOf(SAMPLES));
        writeSamples(file, List.of(), curve);
    }

    private void writeRows(Writer rows, List<Object> identity, Curve curve) throws IOException {
        var leading = new ArrayList<Object>(List.of(written));
        leading.addAll(identity);
        writeSamples(rows, leading, curve);
    }

    private static void writeSamples(Writer rows, List<Object> leading, Curve curve) throws IOException {
        try (var printer = new CSVPrinter(new KeptOpen(rows), formatFor(leading))) {
            for (int i = 0; i < curve.size(); i++) {
                for (var cell : leading) {
                    printer.print(cell);
                }
                printer.print(curve.hasTime() ? number(curve.timeS(i)) : null);
                printer.print(number(curve.angleDeg(i)));
                printer.print(number(curve.torqueNm(i)));
                printer.print(curve.hasStages() ? curve.stage(i) : null);
                printer.println();
            }
        }
    }

    private void writeRow(Writer rows, List<Object> identity, Curve curve) throws IOException {
        var row = new ArrayList<Object>(List.of(written));
        row.addAll(identity);
        row.add(curve.hasTime() ? list(curve, i -> number(curve.timeS(i))) : "");
        row.add(list(curve, i -> number(curve.angleDeg(i))));
        row.add(list(curve, i -> number(curve.torqueNm(i))));
        row.add(curve.hasStages() ? list(curve, curve::stage) : "");
        print(rows, row);
    }

    private static String list(Curve curve, IntFunction<Object> cell) {
        return IntStream.range(0, curve.size())
                .mapToObj(i -> cell.apply(i).toString())
                .collect(Collectors.joining(" "));
    }

    private static void print(Writer rows, List<Object> cells) throws IOException {
        try (var printer = new CSVPrinter(new KeptOpen(rows), formatFor(cells))) {
            printer.printRecord(cells);
        }
    }

    private static CSVFormat formatFor(List<Object> cells) {
        return cells.stream().anyMatch(LogWriter::splits) ? QUOTED_CELLS : PLAIN_CELLS;
    }

    private static boolean splits(Object cell) {
        return cell instanceof String text && text.chars().anyMatch(c -> SPLITTING_SIGNS.indexOf(c) >= 0);
    }

    private static List<Object> identityCells(TraceIdentity identity) {
        return List.of(
                text("serial", identity.serial()),
                text("station", identity.station()),
                text("spindle", identity.spindle()),
                text("bolt", identity.bolt()),
                identity.attempt(),
                identity.time() == null
                        ? ""
                        : FormulaGuard.guard(identity.time().toString()),
                text("boltLot", identity.boltLot()));
    }

    private static String text(String name, String value) {
        if (!value.equals(value.strip()) || value.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    name + " is '" + value + "'; a log takes no control characters and no outer blanks");
        }
        return FormulaGuard.guard(value);
    }

    /** The shortest text that {@link Double#parseDouble} turns into the same number. */
    private static Number number(double value) {
        long whole = (long) value;
        boolean negativeZero = value == 0.0 && 1.0 / value < 0.0;
        return whole == value && Math.abs(value) < 1.0e15 && !negativeZero ? (Number) whole : (Number) value;
    }

    /** The running number keeps the order of writing and keeps names apart. */
    private String fileName(TraceIdentity identity) {
        var words = identity.serial() + "_b" + identity.bolt() + "_a" + identity.attempt();
        return String.format(
                Locale.ROOT,
                "%06d_%s.csv",
                written,
                words.substring(0, Math.min(60, words.length())).replaceAll("[^A-Za-z0-9_-]", "-"));
    }

    /** A printer is made for a few rows; closing it must not close what the next one writes to. */
    private static final class KeptOpen extends java.io.FilterWriter {
        KeptOpen(Writer writer) {
            super(writer);
        }

        @Override
        public void write(String text, int from, int length) throws IOException {
            out.write(text, from, length);
        }

        @Override
        public void close() {
            // the one who opened the file closes it
        }
    }
}
