package org.tautlog.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.tautlog.intake.ReadSummary;
import org.tautlog.report.Provenance;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.ShiftReviewer;

/** One pass over a shift's logs: judged, reviewed, reported. */
final class ShiftRun {
    /** What a run leaves behind. */
    record Result(ShiftReview review, ReadSummary read, Path page, Path table) {}

    private ShiftRun() {}

    static Result run(JudgingRequest request, int listed, Path out, PrintWriter err) throws IOException {
        var reviewer = new ShiftReviewer(request.specification(), listed);
        try (var reports = ShiftReports.in(out)) {
            var read = Judging.run(request, err, (judgement, curve) -> {
                reviewer.accept(judgement, curve);
                reports.add(judgement);
            });
            var review = reviewer.review(ReadingAccount.imported(read));
            reports.finish(
                    review,
                    new Provenance(
                            Program.version(),
                            OffsetDateTime.now(ZoneId.systemDefault()),
                            request.specificationFile().toString()));
            return new Result(review, read, reports.page(), reports.table());
        }
    }
}
