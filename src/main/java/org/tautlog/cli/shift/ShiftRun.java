package org.tautlog.cli.shift;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.evidence.ArchiveOption;
import org.tautlog.cli.logs.Judging;
import org.tautlog.cli.logs.JudgingRequest;
import org.tautlog.cli.logs.ReadingAccount;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Program;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.cli.terminal.WrittenReport;
import org.tautlog.intake.ReadOptions;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.ShiftReviewer;

/** One pass over a shift's logs, or over what an archive kept of it: judged, reviewed, reported. */
final class ShiftRun {
    /** What a run leaves behind. */
    record Result(ShiftReview review, ExitCode exitCode, WrittenReport written) {}

    private ShiftRun() {}

    static Result run(
            JudgingRequest request, int listed, @Nullable Path previous, ReportOptions options, PrintWriter err)
            throws IOException {
        var before =
                previous == null ? null : PreviousShift.read(previous, request.specification(), request.options(), err);
        var reviewer = new ShiftReviewer(request.specification(), listed);
        try (var reports = ShiftReports.in(options)) {
            var read = Judging.run(request, err, (judgement, curve) -> {
                reviewer.accept(judgement, curve);
                reports.add(judgement);
            });
            var alone = reviewer.review(ReadingAccount.imported(read));
            var review = before == null ? alone : alone.since(before);
            reports.finish(
                    review,
                    new Provenance(
                            Program.version(),
                            OffsetDateTime.now(ZoneId.systemDefault()),
                            request.specificationFile().toString()));
            return new Result(review, ExitCode.of(review.counts(), read), reports.written());
        }
    }

    static Result run(
            ArchivedShiftInputs inputs, int listed, @Nullable Path previous, ReportOptions options, PrintWriter err)
            throws IOException {
        try (var query = inputs.open().query();
                var reports = ShiftReports.in(options)) {
            var tightenings = ArchivedTightenings.of(query, inputs.filter(), err);
            var reviewer = new ShiftReviewer(tightenings.specification(), listed);
            tightenings.past(inputs.filter(), reviewer::learn);
            var imported = tightenings.each((judgement, curve) -> {
                reviewer.accept(judgement, curve);
                reports.add(judgement);
            });
            var alone = reviewer.review(imported);
            var review = previous == null
                    ? alone
                    : alone.since(
                            PreviousShift.read(previous, tightenings.specification(), ReadOptions.withDefaults(), err));
            var stamp = ArchiveOption.stamp();
            reports.finish(review, new Provenance(stamp.program(), stamp.time(), inputs.words()));
            boolean all = review.allConform() && imported.rejected() == 0;
            return new Result(review, all ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING, reports.written());
        }
    }
}
