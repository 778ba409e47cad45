package org.tautlog.report.judged;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.report.words.Rounded;
import org.tautlog.report.words.Times;
import org.tautlog.review.shape.ComparedShape;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.Envelope;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.trace.TraceIdentity;

/**
 * One row a tightening, for a spreadsheet: commas, quotes only where needed, UTF-8 without a byte-order mark, decimal
 * points. {@code finalTorqueNm} is read from a line through the samples before the stop, {@code peakTorqueNm} is the highest
 * single sample: noise and the step of angle can leave it below. {@code shape} says whether the curve leaves the envelope of
 * its peers: {@code leaves}, {@code within}, {@code learning} (too few peers before it), {@code later-attempt} (held against
 * none), {@code no-elastic-line}, {@code not-compared}; empty where no shapes were asked for. A text cell that a spreadsheet would take for a formula gets an apostrophe in front. The program's own words are
 * plain ASCII here (Nm, not N·m), so that a spreadsheet that guesses the encoding wrongly still shows them.
 */
public final class VerdictsCsv implements Closeable {
    private static final String FORMULA_STARTS = "=+-@\t\r\n";

    private static final List<String> SHAPE =
            List.of("shape", "shapePeers", "shapeFromDeg", "shapeToDeg", "shapeExcessNm");

    private final CSVPrinter printer;
    private final Map<TraceIdentity, ComparedShape> shapes = new HashMap<>();
    private final Map<TraceIdentity, String> notCompared;
    private boolean closed;

    /**
     * Starts a file with its header row.
     *
     * @param out where to write; closed with this
     * @param review where the curves lie against those of their peers
     * @throws IOException where it cannot be written
     */
    public VerdictsCsv(Appendable out, ShapeReview review) throws IOException {
        printer = new CSVPrinter(out, CSVFormat.RFC4180);
        notCompared = review.notCompared();
        review.compared().forEach(one -> shapes.putIfAbsent(one.tightening(), one));
        printer.printRecord(Stream.concat(header().stream(), SHAPE.stream()).toList());
    }

    /**
     * Adds one tightening.
     *
     * @param judgement the verdict on it
     * @throws IOException where it cannot be written
     */
    public void add(Judgement judgement) throws IOException {
        var cells = new ArrayList<>(cells(judgement));
        cells.addAll(shape(judgement));
        printer.printRecord(cells);
    }

    /** Without a place where that means nothing. */
    private List<Object> shape(Judgement judgement) {
        var compared = shapes.get(judgement.identity());
        if (compared == null) {
            return List.of(withoutEnvelope(judgement), "", "", "", "");
        }
        var departure = compared.departure();
        boolean place = departure.leaves() && Departure.hasPlace(judgement.findings());
        return List.of(
                departure.leaves() ? "leaves" : "within",
                departure.peers(),
                place ? Rounded.of(departure.fromDeg(), 1).toPlainString() : "",
                place ? Rounded.of(departure.toDeg(), 1).toPlainString() : "",
                place ? Rounded.of(departure.excessNm(), 2).toPlainString() : "");
    }

    private String withoutEnvelope(Judgement judgement) {
        var why = notCompared.get(judgement.identity());
        if (why == null) {
            return "";
        }
        if (judgement.identity().attempt() > 1) {
            return "later-attempt";
        }
        if (!judgement.signature().elastic().originDeg().isFound()) {
            return "no-elastic-line";
        }
        return why.startsWith(Envelope.LEARNING) ? "learning" : "not-compared";
    }

    /**
     * {@return the cells of one row, as {@link #header} names them}
     *
     * @param judgement the verdict on one tightening
     */
    public static List<Object> cells(Judgement judgement) {
        var identity = judgement.identity();
        var time = identity.time();
        var cells = new ArrayList<Object>();
        cells.add(judgement.verdict().word());
        cells.add(text(identity.serial()));
        cells.add(text(identity.bolt()));
        cells.add(text(identity.station()));
        cells.add(text(identity.spindle()));
        cells.add(identity.attempt());
        cells.add(time == null ? "" : Times.iso(time));
        cells.add(text(identity.boltLot()));
        cells.add(judgement.findings().stream()
                .map(finding -> finding.code().word())
                .distinct()
                .collect(Collectors.joining(" ")));
        cells.add(text(judgement.findings().stream().map(Finding::message).collect(Collectors.joining("; "))));
        for (var field : SignatureField.values()) {
            cells.add(field.written(judgement.signature())
                    .map(number -> number.toPlainString())
                    .orElse(""));
        }
        cells.add(judgement.signature().onset().endState().word());
        cells.add(judgement.signature().samples());
        cells.add(text(judgement.specificationName()));
        cells.add(text(judgement.specificationVersion()));
        cells.add(text(judgement.source().file()));
        cells.add(judgement.source().line());
        cells.add(judgement.source().sha256());
        return cells;
    }

    @Override
    public void close() throws IOException {
        if (!closed) {
            closed = true;
            printer.close(true);
        }
    }

    /** {@return the names of the columns that every table of verdicts begins with} */
    public static List<String> header() {
        return Stream.of(
                        Stream.of("verdict", "serial", "bolt", "station", "spindle", "attempt", "time", "boltLot"),
                        Stream.of("findings", "messages"),
                        Stream.of(SignatureField.values()).map(SignatureField::key),
                        Stream.of("endState", "samples", "specification", "specificationVersion"),
                        Stream.of("file", "line", "sha256"))
                .flatMap(names -> names)
                .toList();
    }

    /**
     * {@return a text as a cell that no spreadsheet takes for a formula}
     *
     * @param cell the text
     */
    public static String text(String cell) {
        var plain = cell.replace("N·m", "Nm");
        return !plain.isEmpty() && FORMULA_STARTS.indexOf(plain.charAt(0)) >= 0 ? '\'' + plain : plain;
    }
}
