package org.tautlog.report.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.review.tuning.OnsetCriterion;
import org.tautlog.review.tuning.Standing;
import org.tautlog.review.tuning.ThresholdTuning;
import org.tautlog.review.tuning.TraceUse;
import org.tautlog.review.tuning.Tuned;
import org.tautlog.review.tuning.TuningReview;

/** Tuned onset thresholds as lines for a terminal. */
public final class TuningText {
    private static final int MOST_NAMED = 20;

    private TuningText() {}

    /**
     * Writes a review.
     *
     * @param review the review
     * @return lines without their ends
     */
    public static List<String> lines(TuningReview review) {
        var lines = new ArrayList<String>();
        var specification = review.specification();
        lines.add(specification.name() + ", version " + specification.version() + ": onset thresholds held against "
                + Figures.count(review.used(), "trace", "traces") + " with a measured onset");
        lines.add("true onset: the measured clamp load falls " + Figures.of(review.offsetDeg(), 1)
                + " deg behind its own line");
        lines.add("");
        table(lines, review);
        unused(lines, review);
        cautions(lines, review);
        proposal(lines, review);
        return lines;
    }

    private static void table(List<String> lines, TuningReview review) {
        int withoutOnset = review.uses().getOrDefault(TraceUse.NO_ONSET, 0);
        lines.add(row("criterion", "", "threshold", "95 % interval", "bias, deg", "left, deg", "not read", "claimed"));
        for (var tuning : review.tunings()) {
            lines.add(row(tuning.criterion().title(), "now", tuning.present(), tuning.criterion(), ""));
            tuning.tuned()
                    .found()
                    .ifPresent(tuned -> lines.add(row(
                            "", "tuned", tuned.standing(), tuning.criterion(), interval(tuned, tuning.criterion()))));
            tuning.tuned().whyMissing().ifPresent(why -> lines.add("  not tuned: " + why));
        }
        lines.add("");
        lines.add("bias: median of onset read less onset measured. left: robust standard deviation of that"
                + (review.used() == 0
                        ? "."
                        : "; the measured loads' own scatter makes " + Figures.of(review.measurementDeg(), 1)
                                + " deg of it."));
        lines.add("not read: of the " + review.used() + " with a measured onset. claimed: onsets read of the "
                + withoutOnset + " whose load shows none.");
        review.kneeAtGradient()
                .ifPresent(knee -> lines.add("The knee takes its share from onset-ratio too; by the gradient's "
                        + Figures.of(knee.threshold(), 2) + " its bias is " + deg(knee.biasDeg()) + " deg."));
    }

    private static String row(
            String title, String which, Standing standing, OnsetCriterion criterion, String interval) {
        return row(
                title,
                which,
                Figures.of(standing.threshold(), decimals(criterion)),
                interval,
                deg(standing.biasDeg()),
                deg(standing.spreadDeg()),
                Integer.toString(standing.notRead()),
                Integer.toString(standing.claimed()));
    }

    private static String row(Object... cells) {
        return String.format(Locale.ROOT, "%-28s %-10s %9s %16s %10s %10s %9s %8s", cells)
                .stripTrailing();
    }

    private static String interval(Tuned tuned, OnsetCriterion criterion) {
        return Figures.of(tuned.interval().lower(), decimals(criterion)) + " to "
                + Figures.of(tuned.interval().upper(), decimals(criterion));
    }

    private static int decimals(OnsetCriterion criterion) {
        return criterion == OnsetCriterion.OFFSET ? 0 : 2;
    }

    private static String deg(double value) {
        if (Double.isNaN(value)) {
            return "-";
        }
        return Double.isFinite(value) ? Figures.of(value, 1) : "too late";
    }

    private static void unused(List<String> lines, TuningReview review) {
        lines.add("");
        for (var use : TraceUse.values()) {
            int n = review.uses().getOrDefault(use, 0);
            if (n > 0 && use != TraceUse.USED) {
                lines.add("not used, " + Figures.count(n, "trace", "traces") + ": " + use.words());
                review.unused().stream()
                        .filter(one -> one.why() == use)
                        .limit(MOST_NAMED)
                        .forEach(one -> lines.add("  " + one.tightening().words()));
            }
        }
        if (!review.withoutTrace().isEmpty()) {
            lines.add("measured, but in none of the logs: "
                    + review.withoutTrace().size());
            review.withoutTrace().stream().limit(MOST_NAMED).forEach(one -> lines.add("  " + one));
        }
    }

    private static void cautions(List<String> lines, TuningReview review) {
        if (review.tooFew()) {
            lines.add("Too few: " + Figures.count(review.used(), "trace", "traces")
                    + " with a measured onset, at least " + TuningReview.ENOUGH
                    + " are needed. What is tuned on fewer is a first look and no ground for a change.");
            return;
        }
        for (var tuning : review.tunings()) {
            tuning.tuned().found().ifPresent(tuned -> lines.add(says(review, tuning, tuned)));
        }
    }

    private static String says(TuningReview review, ThresholdTuning tuning, Tuned tuned) {
        var title = Sentence.capital(tuning.criterion().title()) + ": ";
        if (review.unexplained(tuning.criterion())) {
            return title + deg(tuned.standing().spreadDeg())
                    + " deg of spread are left where measuring and reading explain "
                    + deg(review.explainedDeg())
                    + " deg; check that each outcome is that of its trace. No threshold is proposed.";
        }
        if (tuned.tellsNothing()) {
            return title + "the interval covers half of all thresholds tried or more; the traces tell nothing of it.";
        }
        if (tuned.atEnd()) {
            return title
                    + "the least bias lies at the end of what can be set; this criterion does not meet the offset asked"
                    + " for.";
        }
        return title
                + (tuning.speaksForAnother()
                        ? "the traces speak for another threshold than the present one."
                        : "the interval holds the present threshold; the traces speak for no change.");
    }

    private static void proposal(List<String> lines, TuningReview review) {
        var present = review.specification().reading();
        var proposed = review.proposed();
        lines.add("");
        if (proposed.equals(present)) {
            lines.add("Nothing to change under [reading].");
            return;
        }
        lines.add("What would stand under [reading]; a qualified person judges and releases it, or does not:");
        lines.add("");
        lines.add("[reading]");
        if (proposed.onsetRatio() != present.onsetRatio()) {
            lines.add("onset-ratio = " + Figures.of(proposed.onsetRatio(), 2));
        }
        if (proposed.elasticRatio() != present.elasticRatio()) {
            lines.add("elastic-ratio = " + Figures.of(proposed.elasticRatio(), 2));
        }
        if (proposed.plasticRatio() != present.plasticRatio()) {
            lines.add("plastic-ratio = " + Figures.of(proposed.plasticRatio(), 2));
        }
        if (proposed.onsetOffsetDeg() != present.onsetOffsetDeg()) {
            lines.add("onset-offset = { value = " + Figures.of(proposed.onsetOffsetDeg(), 1) + ", unit = \"deg\" }");
        }
    }
}
