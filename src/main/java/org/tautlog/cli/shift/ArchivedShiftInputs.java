package org.tautlog.cli.shift;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.Archive;
import org.tautlog.archive.JudgementFilter;
import org.tautlog.cli.logs.LogInputs;
import org.tautlog.cli.terminal.Refusal;
import picocli.CommandLine.Option;

/** Which part of an archive stands in for logs. */
final class ArchivedShiftInputs {
    @Option(names = "--archive", paramLabel = "DIR", description = "Take what an archive kept instead of LOGS.")
    private @Nullable Path folder;

    @Option(names = "--station", paramLabel = "S", description = "Of the archive, only this station.")
    private String station = "";

    @Option(names = "--from", paramLabel = "TIME", description = "Of the archive, from this time on (ISO 8601).")
    private @Nullable OffsetDateTime from;

    @Option(names = "--to", paramLabel = "TIME", description = "Of the archive, before this time (ISO 8601).")
    private @Nullable OffsetDateTime to;

    @Option(
            names = "--shift",
            paramLabel = "SHIFT",
            description = "Of the archive, this shift: its name in the calendar and the day on which it begins."
                    + " Without it the shift that runs now, or the last one.")
    private String shift = "";

    @Option(
            names = "--calendar",
            paramLabel = "FILE",
            description = "The shift calendar (TOML: zone, and a [[shift]] with name, from and to for each).")
    private @Nullable Path calendar;

    boolean given(LogInputs logs) {
        boolean timed = from != null || to != null;
        if (folder == null && (timed || !station.isEmpty() || !shift.isEmpty() || calendar != null)) {
            throw Refusal.wrongUse("--station, --from, --to, --shift and --calendar pick from an archive;"
                    + " name it with --archive DIR");
        }
        if ((!shift.isEmpty() && calendar == null) || (timed && calendar != null)) {
            throw Refusal.wrongUse(
                    "name --calendar FILE with --shift \"NAME DATE\", or alone for the shift that runs now,"
                            + " or --from and --to without them");
        }
        if (from != null && to != null && !from.isBefore(to)) {
            throw Refusal.wrongUse("--from " + from + " is not before --to " + to + "; between them nothing can lie");
        }
        if (folder != null && logs.given()) {
            throw Refusal.wrongUse("both LOGS and --archive are named; name one of them");
        }
        return folder != null;
    }

    Path folder() {
        return folder == null ? Path.of("") : folder;
    }

    /** Makes the archive where there is none. */
    Archive create() throws IOException {
        return Archive.create(folder());
    }

    Archive open() throws IOException {
        return Archive.open(folder());
    }

    JudgementFilter filter() {
        var all = JudgementFilter.everything().stream(station, "", "");
        if (calendar == null) {
            return all.between(from, to);
        }
        var span = shift.isEmpty() ? CalendarShift.now(calendar) : CalendarShift.of(calendar, shift);
        return all.between(span.from(), span.before());
    }

    String words() {
        return "archive " + folder
                + (calendar == null ? "" : ", shift " + (shift.isEmpty() ? "by the clock" : shift) + " of " + calendar);
    }
}
