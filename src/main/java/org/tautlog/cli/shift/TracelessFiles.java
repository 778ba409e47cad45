package org.tautlog.cli.shift;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.tautlog.archive.JudgementFilter;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.table.Kept;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;

/** Files that an archive met and that gave no trace, which no judgement leads to. */
final class TracelessFiles {
    /** What the name of a batch begins with. */
    private static final String BATCH_TIME = "20260302T061205Z";

    private static final DateTimeFormatter BATCH_FORM =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);

    private final Set<String> sources;
    private final JudgementFilter asked;

    TracelessFiles(List<SourceFile> sources, JudgementFilter asked) {
        this.sources = sources.stream().map(SourceFile::file).collect(Collectors.toSet());
        this.asked = asked;
    }

    /** Whether a problem is of such a file, imported in the time asked for; nobody knows the station of what was not read. */
    boolean rejected(Kept<Problem> problem) {
        var file = problem.value().where().file();
        int entry = file.indexOf('!');
        return problem.value().code() != ProblemCode.ASSUMED
                && asked.station().isEmpty()
                && !sources.contains(file)
                && !(entry > 0 && sources.contains(file.substring(0, entry)))
                && isInTime(problem.batch());
    }

    private boolean isInTime(String batch) {
        try {
            var at = LocalDateTime.parse(batch.substring(0, BATCH_TIME.length()), BATCH_FORM)
                    .atOffset(ZoneOffset.UTC);
            return (asked.from() == null || !at.isBefore(asked.from()))
                    && (asked.before() == null || at.isBefore(asked.before()));
        } catch (DateTimeException | IndexOutOfBoundsException unknown) {
            return asked.from() == null && asked.before() == null;
        }
    }
}
