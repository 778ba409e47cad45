package org.tautlog.report.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.window.Band;
import org.tautlog.report.words.Figures;
import org.tautlog.review.LimitFit;
import org.tautlog.review.WindowFeature;
import org.tautlog.review.WindowReview;

/** A window study as lines for a terminal. */
public final class WindowText {
    private static final List<Quantity> SHOWN = List.of(
            Quantity.SNUG_PRELOAD,
            Quantity.FINAL_TORQUE,
            Quantity.TORQUE_RATE,
            Quantity.ONSET_ANGLE,
            Quantity.FINAL_PRELOAD,
            Quantity.YIELD_SHARE,
            Quantity.HOT_PRELOAD,
            Quantity.COLD_PRELOAD,
            Quantity.USED_ELONGATION);
    private static final List<Double> PERCENTS = List.of(0.135, 5.0, 50.0, 95.0, 99.865);

    private WindowText() {}

    /**
     * Writes a study.
     *
     * @param review the study
     * @return lines without their ends
     */
    public static List<String> lines(WindowReview review) {
        var lines = new ArrayList<String>();
        var specification = review.specification();
        lines.add(String.format(
                Locale.ROOT,
                "%s, version %s: %d tightenings drawn, seed %d",
                specification.name(),
                specification.version(),
                review.result().draws(),
                review.result().seed()));
        lines.add("");
        lines.addAll(quantities(review));
        section(lines, "Do the given numbers fit together?", WindowAnswers.given(review));
        section(lines, "Yield", WindowAnswers.aim(review));
        section(lines, "On top of what was drawn", WindowAnswers.onTop(review));
        section(lines, "Scatter of the clamp load", WindowAnswers.scatter(review));
        section(lines, "Window", WindowAnswers.window(review));
        lines.add("");
        lines.addAll(limits(review));
        review.observed().ifPresent(observed -> {
            lines.add("");
            lines.addAll(observed(observed));
        });
        return List.copyOf(lines);
    }

    private static void section(List<String> lines, String title, List<String> sentences) {
        lines.add("");
        lines.add(title);
        sentences.forEach(sentence -> lines.add("  " + sentence));
    }

    private static List<String> quantities(WindowReview review) {
        var lines = new ArrayList<String>();
        lines.add(String.format(
                Locale.ROOT, "%-32s %-8s %9s %9s %9s %9s %9s", "", "", "0.135 %", "5 %", "50 %", "95 %", "99.865 %"));
        for (var quantity : SHOWN) {
            var row = new StringBuilder(
                    String.format(Locale.ROOT, "%-32s %-8s", quantity.title(), StudyFigures.unit(quantity)));
            review.result().summary(quantity).percentiles().stream()
                    .filter(one -> PERCENTS.contains(one.percent()))
                    .forEach(one ->
                            row.append(String.format(Locale.ROOT, " %9s", StudyFigures.of(quantity, one.value()))));
            lines.add(row.toString());
        }
        return lines;
    }

    private static List<String> limits(WindowReview review) {
        var lines = new ArrayList<String>();
        lines.add(String.format(Locale.ROOT, "%-20s %-8s %-20s %s", "limits", "", "released", "proposed"));
        for (var feature : WindowFeature.values()) {
            var present = feature.limits(review.specification().window());
            var proposed = feature.limits(review.proposed().window());
            lines.add(String.format(
                    Locale.ROOT,
                    "%-20s %-8s %-20s %s",
                    feature.title(),
                    feature.unit(),
                    words(present, feature),
                    present.equals(proposed) ? "not studied" : words(proposed, feature)));
        }
        return lines;
    }

    private static List<String> observed(WindowReview.Observed observed) {
        var lines = new ArrayList<String>();
        lines.add(String.format(
                Locale.ROOT,
                "%-26s %-8s %-9s %8s %9s %11s %12s %12s",
                "in the recorded spread",
                "",
                "",
                "limit",
                "median",
                "deviations",
                "at or below",
                "outside"));
        observed.present().forEach(fit -> lines.add(line(fit, "released")));
        observed.proposed().stream()
                .filter(fit -> !observed.present().contains(fit))
                .forEach(fit -> lines.add(line(fit, "proposed")));
        lines.add("deviations: robust standard deviations from the median out to the limit");
        return lines;
    }

    private static String line(LimitFit fit, String window) {
        var feature = fit.feature();
        return String.format(
                Locale.ROOT,
                "%-26s %-8s %-9s %8s %9s %11s %12s %12s",
                feature.title() + (fit.upper() ? ", upper" : ", lower"),
                feature.unit(),
                window,
                Figures.of(fit.limit(), Math.max(0, feature.decimals() - 1)),
                Figures.of(fit.median(), feature.decimals()),
                Double.isFinite(fit.distanceDeviations()) ? Figures.of(fit.distanceDeviations(), 1) : "-",
                Figures.percent(fit.shareBelow()),
                fit.outside() + " of " + fit.n());
    }

    private static String words(Band band, WindowFeature feature) {
        var text = Figures.of(band, Math.max(0, feature.decimals() - 1));
        return text.isEmpty() ? "open" : text;
    }
}
