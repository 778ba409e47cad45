package org.tautlog.intake;

import java.io.IOException;
import java.util.List;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.LineSource;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads the lines of one log into drafts and has each settled; one class for each shape. */
abstract class TraceTable {
    final LogText text;
    final ReadLedger ledger;
    final int mostSamples;

    TraceTable(LogText text, ReadLedger ledger, int mostSamples) {
        this.text = text;
        this.ledger = ledger;
        this.mostSamples = mostSamples;
    }

    /** Reads to the end; where the text breaks off, what is not whole is rejected with the place. */
    final void read(LineSource lines) {
        Line last = null;
        try {
            for (var next = lines.next(); next.isPresent(); next = lines.next()) {
                last = next.get();
                take(last);
            }
        } catch (IOException e) {
            breakOff(Where.line(text.file(), last == null ? 0 : last.number()), e);
        } finally {
            end();
            ledger.lines.in(lines.linesTaken());
        }
    }

    /** Takes a line; whoever takes it settles it or counts it in a draft. */
    abstract void take(Line line);

    /** The text broke off after the place. */
    abstract void breakOff(Where where, IOException cause);

    /** No line comes any more. */
    abstract void end();

    final TraceDraft draft(Line line) {
        return new TraceDraft(text.layout(), text.at(line), mostSamples);
    }

    /** Says why a line is no row. */
    final void spoil(TraceDraft draft, Line line) {
        var where = text.at(line);
        int wanted = text.layout().header().size();
        var found = text.cut(line).map(List::size).orElse(0);
        if (line.tooLong()) {
            draft.spoil(
                    ProblemCode.TOO_LARGE,
                    where,
                    "the line is longer than the bound",
                    "",
                    "raise the bound where that is right");
        } else if (!line.ended()) {
            draft.spoil(
                    ProblemCode.TRUNCATED,
                    where,
                    "the file ends in the middle of a row",
                    wanted + " cells",
                    "export it again");
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
