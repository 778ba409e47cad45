package org.tautlog.intake;

import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.file.BreakingStream;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.LineSource;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.RowsAlike;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads the lines of one log into drafts and has each settled; one class for each shape. */
abstract class TraceTable {
    final LogText text;
    final ReadLedger ledger;
    final int mostSamples;
    private boolean changed;
    private @Nullable TraceDraft goingOn;
    private Optional<RowsAlike> alike = Optional.empty();
    private int usualSamples;

    TraceTable(LogText text, ReadLedger ledger, int mostSamples) {
        this.text = text;
        this.ledger = ledger;
        this.mostSamples = mostSamples;
    }

    /** Reads to the end; where the text breaks off, what is not whole is rejected with the place. */
    final void read(LineSource lines, BreakingStream bytes) throws IOException {
        takeSamples(lines);
        for (var next = lines.next(); next.isPresent(); next = lines.next()) {
            if (changed) {
                ledger.lines.rejected(1);
            } else {
                take(next.get());
                takeSamples(lines);
            }
        }
        if (bytes.broken().isPresent()) {
            int last = (int) Math.min(Integer.MAX_VALUE, lines.linesTaken());
            breakOff(Where.line(text.file(), last), bytes.broken().get());
        }
        end();
        ledger.lines.in(lines.linesTaken());
    }

    /** The draft that rows like these go on with, as every {@link #take} of one would find; null where there is none. */
    final void goOn(@Nullable TraceDraft with, Optional<RowsAlike> rows) {
        goingOn = with;
        alike = rows;
    }

    /** Takes rows where they stand, up to a line that is anything else than one more sample of the same draft. */
    private void takeSamples(LineSource lines) throws IOException {
        var draft = goingOn;
        if (draft == null || alike.isEmpty() || changed || lines.linesTaken() < text.lastHeaderLine()) {
            return;
        }
        var rows = alike.get();
        for (var row = lines.look(rows); row.isPresent() && takeSample(draft, row.get()); row = lines.look(rows)) {
            lines.takeRow();
        }
    }

    private boolean takeSample(TraceDraft draft, Row row) {
        if (text.isHeader(row) || !isSample(row) || !draft.addSound(row)) {
            return false;
        }
        draft.countRow();
        return true;
    }

    /** Whether a row cannot be a line of another sense. */
    boolean isSample(Row row) {
        return true;
    }

    /**
     * Whether a line, which is no row of numbers, is a header of other columns or units. What stands below would be read by
     * the first header, so nothing of it is read.
     */
    final boolean changesColumns(Line line, Optional<Row> row) {
        if (row.isEmpty() ? text.isOtherHeader(line) : text.isOtherHeader(line, row.get())) {
            stopAt(line, "the columns or their units change");
            return true;
        }
        return false;
    }

    /** Nothing from a line on is read, as what was stated before it no longer holds; that is one trace or more. */
    final void stopAt(Line line, String what) {
        changed = true;
        ledger.traces.in(1);
        ledger.traces.rejected(1);
        reject(new Problem(
                ProblemCode.UNKNOWN_LAYOUT,
                text.at(line),
                what + " at line " + line.number() + "; nothing is read from there on",
                "one header and one set of units in a file",
                "export the parts into files of their own"));
    }

    /** Whether nothing more is read. */
    final boolean stopped() {
        return changed;
    }

    /** Adds a line, cut into its cells where it can be, to a draft, or says why it is none. */
    final void add(TraceDraft draft, Line line, Optional<Row> row) {
        boolean sound = draft.fault().isEmpty();
        if (row.isEmpty()) {
            spoil(draft, line);
            return;
        }
        draft.add(row.get(), line.number());
        if (sound && draft.fault().isPresent() && !line.ended()) {
            draft.respoil(truncated(line));
        }
    }

    /**
     * A file that ends early is told with the trace it cuts. Where that trace was lost before for a reason of its own,
     * nobody would learn that more may be missing; so it is told by itself.
     */
    final void breakOff(@Nullable TraceDraft cut, Problem problem) {
        var lost = cut == null ? null : cut.fault().orElse(null);
        if (cut == null || (lost != null && lost.code() != ProblemCode.TRUNCATED)) {
            ledger.problem(problem);
        } else {
            cut.spoil(problem);
        }
    }

    private Problem truncated(Line line) {
        return new Problem(
                ProblemCode.TRUNCATED, text.at(line), "the file ends in the middle of a row", "", "export it again");
    }

    /** Takes a line; whoever takes it settles it or counts it in a draft. */
    abstract void take(Line line);

    /** The text broke off after the place. */
    abstract void breakOff(Where where, IOException cause);

    /** No line comes any more. */
    abstract void end();

    final TraceDraft draft(Line line) {
        return new TraceDraft(text.layout(), text.at(line), mostSamples, usualSamples);
    }

    /** Lets the next draft begin with the room that this one took. */
    final void finished(TraceDraft draft) {
        usualSamples = draft.samples();
    }

    /** Says why a line is no row. */
    final void spoil(TraceDraft draft, Line line) {
        var where = text.at(line);
        int wanted = text.layout().header().size();
        var found = text.cut(line).map(Row::size).orElse(0);
        if (line.tooLong()) {
            draft.spoil(
                    ProblemCode.TOO_LARGE,
                    where,
                    "the line is longer than the bound",
                    "",
                    "raise the bound where that is right");
        } else if (!line.ended()) {
            draft.spoil(truncated(line));
        } else if (found == 0) {
            draft.spoil(
                    ProblemCode.BAD_ROW,
                    where,
                    Words.quoted(line.text()) + " cannot be cut into cells",
                    "quotes in pairs and no zero bytes",
                    "");
        } else {
            draft.spoil(
                    ProblemCode.BAD_ROW, where, "the row has " + found + " cells", wanted + " as the header has", "");
        }
    }

    final void reject(Problem problem) {
        ledger.problem(problem);
        ledger.lines.rejected(1);
    }
}
