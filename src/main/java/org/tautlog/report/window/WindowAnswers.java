package org.tautlog.report.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.tautlog.joint.study.Driver;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.study.StudyResult;
import org.tautlog.joint.study.Summary;
import org.tautlog.joint.tightening.PlasticStretch;
import org.tautlog.joint.window.GivenNumbers;
import org.tautlog.report.words.Figures;
import org.tautlog.review.WindowReview;

/** The answers of a window study in sentences, the same on page and terminal. They promise no more than the draws show. */
final class WindowAnswers {
    private static final double LEAST_SHARE_WORTH_NAMING = 0.05;
    private static final int MOST_DRIVERS = 3;
    private static final double PERCENT = 100;
    private static final double UM_PER_MM = 1000;
    private static final double N_PER_KN = 1000;
    private static final String YIELD = Figures.of(100 * PlasticStretch.ELASTIC_LIMIT_STRAIN, 2)
            + " % further plastic strain in the weakest section";

    private WindowAnswers() {}

    /**
     * Whether bolts yield when they should.
     *
     * @param review the study
     * @return sentences
     */
    static List<String> aim(WindowReview review) {
        var result = review.result();
        return List.of(
                Figures.percent(result.yieldedAtAssemblyShare()) + " of the drawn bolts yield while they are turned, "
                        + Figures.percent(result.yieldedAtWarmUpShare()) + " on the first warm-up (" + YIELD + ").",
                "The aim, no bolt in yield when tightened and every bolt in yield when first warm, "
                        + (result.everyBoltYieldsHotAndNoneBefore()
                                ? "holds in all " + result.draws() + " draws."
                                : "does not hold over the whole tolerance range."));
    }

    /**
     * Whether the given numbers fit each other, each at its mean: which does not comes first.
     *
     * @param review the study
     * @return sentences
     */
    static List<String> given(WindowReview review) {
        var given = review.given();
        var misfits = given.misfits();
        var names = misfits.stream().map(GivenNumbers.Given::words).collect(Collectors.joining(", "));
        return List.of(
                misfits.isEmpty() ? "Yes, each taken at its mean." : "No. What does not fit: " + names + ".",
                given.turnSentence(),
                given.temperaturesSentence(),
                given.stretchSentence());
    }

    /**
     * The clamp load to reckon with.
     *
     * @param review the study
     * @return sentences
     */
    static List<String> clampLoad(WindowReview review) {
        return List.of(
                "As tightened " + range(review.result(), Quantity.FINAL_PRELOAD) + ".",
                "Cold after the first warm-up " + range(review.result(), Quantity.COLD_PRELOAD) + ".");
    }

    /**
     * What comes on top of what was drawn.
     *
     * @param review the study
     * @return sentences
     */
    static List<String> onTop(WindowReview review) {
        var side = review.sideEffects();
        return List.of(
                String.format(
                        Locale.ROOT,
                        "A head face %.1f deg out of square adds %.0f MPa of bending at the under-head fillet, %.1f %% of"
                                + " yield, and more in proportion.",
                        side.tiltDeg(),
                        side.bendingMPa(),
                        PERCENT * side.bendingShareOfYield()),
                String.format(
                        Locale.ROOT,
                        "Embedding: faces that flatten by the stated %.0f µm take %.1f kN; medium rough ones, by guide"
                                + " values %.0f µm, would take %.1f kN.",
                        UM_PER_MM * side.statedFlatteningMm(),
                        side.statedLossN() / N_PER_KN,
                        UM_PER_MM * side.guideFlatteningMm(),
                        side.guideLossN() / N_PER_KN));
    }

    /**
     * What rules the scatter, and what drives it.
     *
     * @param review the study
     * @return sentences
     */
    static List<String> scatter(WindowReview review) {
        return List.of(
                review.result().scatterLeft().sentence(),
                "As tightened it comes from " + drivers(review.result(), Quantity.FINAL_PRELOAD) + ".",
                "After the warm-up it comes from " + drivers(review.result(), Quantity.COLD_PRELOAD) + ".");
    }

    /**
     * How the released window fits.
     *
     * @param review the study
     * @return sentences
     */
    static List<String> window(WindowReview review) {
        var proposal = review.result().window();
        var sentences = new ArrayList<String>();
        sentences.add("The proposed limits each let through " + Figures.percent(proposal.coverage())
                + " of the drawn tightenings, all of them together " + Figures.percent(proposal.withinAllShare())
                + ".");
        review.observed()
                .ifPresentOrElse(
                        observed -> sentences.add("Of " + observed.tightenings()
                                + " recorded tightenings "
                                + observed.outsidePresent() + " would have failed the released window by these limits"
                                + " alone, " + observed.outsideProposed() + " the proposed one."),
                        () -> sentences.add("It was not held against recorded tightenings."));
        return List.copyOf(sentences);
    }

    private static String range(StudyResult result, Quantity quantity) {
        var summary = result.summary(quantity);
        return StudyFigures.of(quantity, at(summary, 50)) + " kN in the middle; 99.7 % of bolts lie from "
                + StudyFigures.of(quantity, at(summary, 0.135)) + " to "
                + StudyFigures.of(quantity, at(summary, 99.865)) + " kN";
    }

    private static double at(Summary summary, double percent) {
        return summary.percentiles().stream()
                .filter(one -> one.percent() == percent)
                .mapToDouble(Summary.Percentile::value)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static String drivers(StudyResult result, Quantity quantity) {
        var strongest = result.drivers(quantity).stream()
                .filter(driver -> driver.varianceShare() >= LEAST_SHARE_WORTH_NAMING)
                .limit(MOST_DRIVERS)
                .toList();
        return strongest.isEmpty()
                ? "no single factor"
                : strongest.stream().map(WindowAnswers::driver).collect(Collectors.joining(", "));
    }

    private static String driver(Driver driver) {
        return driver.factor().title() + " (" + Figures.of(100 * driver.varianceShare(), 0) + " % of the variance)";
    }
}
