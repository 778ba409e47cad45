package org.tautlog.intake;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.text.FormulaGuard;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/** Where a finished draft becomes a trace or a reject; the one place that settles its rows. */
final class TraceGate {
    /** What readers of labels write where they could not read one. Common practice, no source. */
    private static final Set<String> UNREAD = Set.of("noread", "no read", "no_read", "n/a", "na", "none", "null", "?");

    private final ReadLedger ledger;
    private final KnownTraces known;
    private final TraceSink sink;

    TraceGate(ReadLedger ledger, KnownTraces known, TraceSink sink) {
        this.ledger = ledger;
        this.known = known;
        this.sink = sink;
    }

    /** What needs no turn: the curve of a draft and what stands for its samples. */
    private record Recording(Curve curve, String fingerprint) {}

    /** Settles a draft, whose rows have all come, when its turn comes. */
    void settle(TraceDraft draft, FileLayout layout, String sha256, ReadLedger ofFile) {
        int bytes = draft.bytes();
        var recording = orSpoilt(
                draft, () -> draft.takeCurve().map(curve -> new Recording(curve, KnownTraces.fingerprint(curve))));
        ofFile.enter(bytes, all -> settle(draft, recording, layout, sha256));
    }

    private void settle(TraceDraft draft, Optional<Recording> recording, FileLayout layout, String sha256) {
        ledger.traces.in(1);
        var trace = recording.flatMap(found -> orSpoilt(draft, () -> trace(draft, found, layout, sha256)));
        if (trace.isEmpty()) {
            ledger.problem(draft.fault().orElseThrow());
            ledger.traces.rejected(1);
            ledger.lines.rejected(draft.rows());
            return;
        }
        draft.remark().ifPresent(ledger::problem);
        ledger.traces.kept(1);
        ledger.lines.kept(draft.rows());
        try {
            sink.accept(trace.get());
        } catch (RuntimeException e) {
            throw new SinkFailed(e);
        }
    }

    /** A trace on which the program fails must not keep the others from being read. */
    private static <T> Optional<T> orSpoilt(TraceDraft draft, Supplier<Optional<T>> work) {
        try {
            return work.get();
        } catch (RuntimeException failed) {
            draft.spoil(ReadingFailed.problem(draft.firstRow(), "trace", failed));
            return Optional.empty();
        }
    }

    private Optional<Trace> trace(TraceDraft draft, Recording recording, FileLayout layout, String sha256) {
        var identity = identity(draft, layout);
        if (identity.isEmpty()) {
            return Optional.empty();
        }
        var where = draft.firstRow();
        var fingerprint = recording.fingerprint();
        boolean attemptStated = draft.identity().containsKey(IdentityField.ATTEMPT);
        var repeat = known.repeat(identity.get(), attemptStated, fingerprint, where);
        if (repeat.isPresent() && repeat.get().sameTightening()) {
            draft.spoil(repeat.get().problem());
            return Optional.empty();
        }
        repeat.map(KnownTraces.Repeat::problem).ifPresent(ledger::problem);
        var settled = attemptStated ? identity.get() : numbered(identity.get(), where);
        known.remember(settled, fingerprint, where);
        return Optional.of(
                new Trace(settled, new Source(where.file(), Math.max(1, where.line()), sha256), recording.curve()));
    }

    private TraceIdentity numbered(TraceIdentity identity, Where where) {
        int attempt = known.nextAttempt(identity);
        if (attempt > 1) {
            ledger.assume(new Problem(
                    ProblemCode.ASSUMED,
                    where.at("attempt"),
                    "attempts at the same bolt are numbered in reading order",
                    "",
                    "state where the attempt stands in layout.toml under [identity] attempt"));
        }
        return new TraceIdentity(
                identity.serial(),
                identity.station(),
                identity.spindle(),
                identity.bolt(),
                attempt,
                identity.time(),
                identity.boltLot());
    }

    /** The identity of a draft; where there is none the draft is spoilt. */
    private Optional<TraceIdentity> identity(TraceDraft draft, FileLayout layout) {
        var values = draft.identity();
        var serial = text(values, IdentityField.SERIAL);
        if (serial.isBlank() || UNREAD.contains(serial.toLowerCase(Locale.ROOT)) || isDashes(serial)) {
            draft.spoil(
                    ProblemCode.MISSING_IDENTITY,
                    draft.firstRow().at("serial"),
                    serial.isBlank() ? "the trace names no serial" : "the serial is " + Words.quoted(serial),
                    "the engine's serial",
                    serial.isBlank() ? "state where it stands in layout.toml under [identity] serial" : "");
            return Optional.empty();
        }
        for (var entry : values.entrySet()) {
            if (entry.getValue().chars().anyMatch(c -> c == '\ufffd' || Character.isISOControl(c))) {
                draft.spoil(
                        ProblemCode.NOT_TEXT,
                        draft.firstRow().at(entry.getKey().key()),
                        entry.getKey().key() + " is " + Words.quoted(entry.getValue())
                                + ", which is damaged or in another encoding",
                        "",
                        "state the encoding in layout.toml under [text] encoding");
                return Optional.empty();
            }
        }
        if (values.values().stream().anyMatch(FormulaGuard::isFormula)) {
            ledger.assume(new Problem(
                    ProblemCode.ASSUMED,
                    draft.firstRow().at("serial"),
                    "cells written as a formula, such as =\"0001\", are taken to be the text within",
                    "",
                    "export them as they are"));
        }
        int attempt = attempt(draft, values.get(IdentityField.ATTEMPT));
        return attempt < 1
                ? Optional.empty()
                : Optional.of(new TraceIdentity(
                        serial,
                        text(values, IdentityField.STATION),
                        text(values, IdentityField.SPINDLE),
                        text(values, IdentityField.BOLT),
                        attempt,
                        new RecordingTime(ledger, layout, draft.firstRow()).of(text(values, IdentityField.TIME)),
                        text(values, IdentityField.BOLT_LOT)));
    }

    private static int attempt(TraceDraft draft, @Nullable String cell) {
        if (cell == null) {
            return 1;
        }
        try {
            int attempt = Integer.parseInt(cell);
            if (attempt >= 1) {
                return attempt;
            }
        } catch (NumberFormatException e) {
            // Said below, together with numbers that are too small.
        }
        draft.spoil(
                ProblemCode.BAD_VALUE,
                draft.firstRow().at("attempt"),
                "the attempt is " + Words.quoted(cell),
                "a whole number from 1",
                "");
        return 0;
    }

    private static boolean isDashes(String text) {
        return text.chars().allMatch(c -> c == '-' || c == '*' || c == '_');
    }

    private static String text(Map<IdentityField, String> values, IdentityField field) {
        return FormulaGuard.unguard(values.getOrDefault(field, ""));
    }
}
