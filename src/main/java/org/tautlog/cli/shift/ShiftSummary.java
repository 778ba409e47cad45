package org.tautlog.cli.shift;

import java.io.PrintWriter;
import java.util.Locale;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.judge.Verdict;
import org.tautlog.report.judged.ShapeWords;
import org.tautlog.report.shift.CauseWords;
import org.tautlog.review.cause.Pattern;

/** A shift in a few lines, for whoever started the program. */
final class ShiftSummary {
    private ShiftSummary() {}

    static void print(ShiftRun.Result result, PrintWriter out) {
        var review = result.review();
        var counts = review.counts();
        out.println(String.format(
                Locale.ROOT,
                "%d tightenings on %d engines: %d nonconforming, %d unjudged, %d review, %d conforming",
                counts.total(),
                review.engines(),
                counts.of(Verdict.NONCONFORMING),
                counts.of(Verdict.UNJUDGED),
                counts.of(Verdict.REVIEW),
                counts.of(Verdict.CONFORMING)));
        out.println(String.format(
                Locale.ROOT,
                "first pass %.1f %% of %d first attempts",
                100 * review.firstPass().share(),
                review.firstPass().attempts()));
        out.println("shapes: " + ShapeWords.summary(review.shapes()));
        review.listed().stream()
                .limit(3)
                .forEach(listed -> out.println("worst " + listed.rank() + ": "
                        + Terminal.harmless(listed.judgement().identity().words()) + ", "
                        + listed.judgement().verdict().word()
                        + listed.judgement().findings().stream()
                                .findFirst()
                                .map(finding -> " (" + finding.code().title() + ")")
                                .orElse("")));
        review.diagnoses().stream()
                .filter(one -> one.pattern() != Pattern.ONE_TIGHTENING)
                .forEach(one -> {
                    out.println("cause " + Terminal.harmless(one.what()) + " against "
                            + one.against().title() + ": " + CauseWords.verdict(one));
                    one.separations().stream()
                            .limit(1)
                            .forEach(separation -> out.println("  next: " + separation.sentence()));
                });
        result.written().print(out);
    }
}
