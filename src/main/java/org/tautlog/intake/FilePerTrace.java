package org.tautlog.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.file.BrokenFile;
import org.tautlog.intake.layout.LayoutSniffer;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.RowsAlike;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * One trace under its heading lines. Exports that were put one behind another into a file are as many traces: the next
 * one begins where heading lines or the table's header come again. Tables under the same headings are parts of one trace where
 * the rows carry on or a line begins the next stage; else nobody knows what they are, and the trace is rejected.
 */
final class FilePerTrace extends TraceTable {
    private final TraceGate gate;
    private final String sha256;
    private final Map<String, String> headings = new HashMap<>();
    private final Map<String, String> units = new HashMap<>();
    /** Finished tables under the same headings, which may be parts of one trace with what comes. */
    private final List<TraceDraft> parts = new ArrayList<>();

    private final Optional<RowsAlike> rows;
    private @Nullable TraceDraft draft;
    private int stage;
    private boolean inTable;
    private boolean sawTable;

    FilePerTrace(LogText text, ReadLedger ledger, int mostSamples, TraceGate gate, String sha256) {
        super(text, ledger, mostSamples);
        this.gate = gate;
        this.sha256 = sha256;
        this.rows = text.alike(Row.none(), 0);
    }

    @Override
    void take(Line line) {
        var layout = text.layout();
        if (line.isBlank()) {
            ledger.lines.ignored(1);
        } else if (!inTable && (line.number() == layout.headerLine() || isHeader(line))) {
            beginTable(line);
        } else if (line.number() == layout.unitsLine()) {
            text.noteUnits(line);
            ledger.lines.kept(1);
        } else if (text.stage(line).isPresent()) {
            beginStage(text.stage(line).getAsInt());
        } else if (inTable) {
            takeRow(line);
        } else if (line.number() < layout.headerLine() || !text.isOtherHeader(line)) {
            takeHeading(line);
        } else {
            changesColumns(line, Optional.empty());
        }
    }

    private void takeRow(Line line) {
        var row = text.row(line);
        if (!text.isComment(line) && changesColumns(line, row)) {
            spoilLast(line);
        } else if (text.isComment(line) || row.filter(text::isUnitsAgain).isPresent()) {
            ledger.lines.ignored(1);
        } else if (row.filter(text::isHeader).isPresent()) {
            setAside();
            beginTable(line);
        } else if (row.isEmpty() && beginsNext(line)) {
            settle();
            headings.clear();
            stage = 0;
            inTable = false;
            takeHeading(line);
        } else {
            addRow(line, row);
        }
    }

    /** Other columns under the same headings are of the same trace, which is not whole without them. */
    private void spoilLast(Line line) {
        setAside();
        if (!parts.isEmpty()) {
            parts.get(parts.size() - 1)
                    .spoil(
                            ProblemCode.BAD_TRACE,
                            text.at(line),
                            "the columns or their units change within the trace",
                            "one header for one trace",
                            "");
        }
    }

    /** Where a row may be the stage's number alone, it is no row: no table has a single column. */
    private void beginStage(int number) {
        ledger.lines.kept(1);
        setAside();
        stage = number;
        inTable = false;
    }

    private void setAside() {
        if (draft != null && (stage == 0 || draft.rows() > 0)) {
            parts.add(draft);
            finished(draft);
        }
        draft = null;
        goOn(null, Optional.empty());
    }

    private void addRow(Line line, Optional<Row> row) {
        var current = draft == null || draft.rows() == 0 ? begin(line) : draft;
        current.countRow();
        add(current, line, row);
        goOn(current, rows);
    }

    /** A line that begins a stage, or is a heading, does not begin with a number. */
    @Override
    boolean isSample(Row row) {
        return !Double.isNaN(row.number(0, text.layout().numbers()));
    }

    private void takeHeading(Line line) {
        var heading = text.heading(line);
        if (heading.filter(found -> isOtherUnit(found.getKey(), found.getValue()))
                .isPresent()) {
            stopAt(line, "the unit in " + Words.quoted(heading.get().getKey()) + " changes");
        } else if (heading.isPresent()) {
            headings.putIfAbsent(heading.get().getKey(), heading.get().getValue());
            ledger.lines.kept(1);
        } else if (line.number() < text.layout().headerLine() || text.isComment(line)) {
            ledger.lines.ignored(1);
        } else {
            reject(new Problem(
                    ProblemCode.BAD_ROW,
                    text.at(line),
                    Words.quoted(line.text()) + " is neither a row nor a heading",
                    "a heading such as Serial: FW-000001, or the table's header",
                    ""));
        }
    }

    /** The layout was told from the first headings, so later ones must not say another unit. */
    private boolean isOtherUnit(String key, String value) {
        return LayoutSniffer.namesUnit(key)
                && !units.computeIfAbsent(key, first -> value).equals(value);
    }

    private void beginTable(Line line) {
        ledger.lines.kept(1);
        inTable = true;
        sawTable = true;
        draft = begin(line);
    }

    private TraceDraft begin(Line line) {
        draft = draft(line);
        draft.ofStage(stage);
        draft.identity().putAll(text.identity(headings, List.of()));
        return draft;
    }

    private boolean isHeader(Line line) {
        return text.row(line).filter(text::isHeader).isPresent();
    }

    private boolean beginsNext(Line line) {
        return text.heading(line)
                .filter(heading -> text.isKnownKey(heading.getKey()))
                .isPresent();
    }

    private void settle() {
        setAside();
        TraceDraft whole = null;
        for (var part : parts) {
            if (whole == null) {
                whole = part;
                continue;
            }
            if (!part.belongsTo(whole)) {
                whole.spoil(
                        ProblemCode.BAD_TRACE,
                        part.firstRow(),
                        "a second table stands under the same headings and does not carry on the first: is it the next"
                                + " stage, or another tightening?",
                        "a line such as Stage: 2 before a stage's table, or headings of its own before a tightening's",
                        "");
            }
            whole.append(part).ifPresent(ledger::assume);
        }
        settle(whole);
        parts.clear();
    }

    private void settle(@Nullable TraceDraft whole) {
        if (whole != null) {
            checkSampleCount(whole);
            gate.settle(whole, text.layout(), sha256, ledger);
        }
    }

    /** An export that says how many samples it has lets the reader see that some are missing. */
    private void checkSampleCount(TraceDraft finished) {
        for (var heading : headings.entrySet()) {
            if (LogText.isSampleCount(heading.getKey())
                    && !heading.getValue().equals(String.valueOf(finished.samples()))) {
                finished.spoil(
                        ProblemCode.TRUNCATED,
                        finished.firstRow(),
                        "the trace has " + finished.samples() + " samples",
                        Words.quoted(heading.getValue()) + " as its heading says",
                        "export it again");
            }
        }
    }

    @Override
    void breakOff(Where where, IOException cause) {
        breakOff(draft, BrokenFile.problem(where, cause));
    }

    @Override
    void end() {
        settle();
        if (!inTable && sawTable && !stopped() && !headings.isEmpty()) {
            ledger.problem(new Problem(
                    ProblemCode.TRUNCATED,
                    Where.file(text.file()),
                    "the file ends after headings without a table",
                    "",
                    "export it again"));
        }
    }
}
