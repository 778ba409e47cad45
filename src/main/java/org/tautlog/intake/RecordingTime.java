package org.tautlog.intake;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.TimeReader;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** The recording time of one trace. A time that cannot be read is reported and left out: the curve still counts. */
final class RecordingTime {
    private final ReadLedger ledger;
    private final FileLayout layout;
    private final Where where;

    RecordingTime(ReadLedger ledger, FileLayout layout, Where where) {
        this.ledger = ledger;
        this.layout = layout;
        this.where = where;
    }

    @Nullable OffsetDateTime of(String text) {
        if (text.isEmpty()) {
            return null;
        }
        var reader = new TimeReader(layout.stated().time());
        var reading = reader.read(text);
        if (reader.isPassedOver(text)) {
            ledger.problem(new Problem(
                    ProblemCode.BAD_TIME,
                    where.at("time"),
                    "no clock of " + layout.stated().time().zone() + " shows the recording time " + Words.quoted(text)
                            + ": they are put forward over it; the trace is kept without it",
                    "a time of that zone",
                    "find out which zone the station's clock keeps, and state it under [time] zone"));
            return null;
        }
        if (reading.isEmpty()) {
            ledger.problem(new Problem(
                    ProblemCode.BAD_TIME,
                    where.at("time"),
                    "the recording time " + Words.quoted(text) + " cannot be read; the trace is kept without it",
                    "2026-03-02T06:12:05+01:00 or the like",
                    "state its form in layout.toml under [time] format"));
            return null;
        }
        if (reading.get().zoneAssumed()) {
            ledger.assume(new Problem(
                    ProblemCode.ASSUMED,
                    where.at("time"),
                    "recording times state no zone; they are taken to be UTC",
                    "",
                    "state it in layout.toml under [time] zone"));
        }
        if (reading.get().twice()) {
            ledger.assume(new Problem(
                    ProblemCode.ASSUMED,
                    where.at("time"),
                    "the clocks of " + layout.stated().time().zone() + " show " + Words.quoted(text)
                            + " twice, as they are put back; it is taken to be the first",
                    "",
                    "let the station's clock keep UTC, or export the offset with the time"));
        }
        return reading.get().time();
    }
}
