package org.tautlog.report.window;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.tautlog.joint.study.Driver;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.study.StudyResult;
import org.tautlog.joint.study.Summary;
import org.tautlog.joint.window.Band;
import org.tautlog.report.chart.BandChart;
import org.tautlog.report.chart.BeforeAfterChart;
import org.tautlog.report.chart.SensitivityChart;
import org.tautlog.report.chart.WarmUpChart;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.Times;
import org.tautlog.review.LimitFit;
import org.tautlog.review.WindowFeature;
import org.tautlog.review.WindowReview;

/** Everything that the window page's template shows, as words: the template itself neither counts nor formats. */
final class WindowModel {
    private static final List<Double> SHOWN_PERCENTS = List.of(0.135, 5.0, 50.0, 95.0, 99.865);

    /** What rounds to nothing in both columns is not shown as a driver. */
    private static final double LEAST_SHARE = 0.005;

    private static final double LEAST_EFFECT_N = 5;
    private static final Pattern NUMBER_WITH_UNIT = Pattern.compile("(\\d) (kN|N·m|MPa|%|deg|mm|µm|K)(?!\\w)");

    private WindowModel() {}

    static Map<String, Object> of(WindowReview review, Provenance provenance) {
        var model = new HashMap<String, Object>();
        var specification = review.specification();
        var result = review.result();
        model.put("title", specification.name());
        model.put("version", specification.version());
        model.put("specificationFile", provenance.specificationFile());
        model.put("draws", result.draws());
        model.put("seed", Long.toString(result.seed()));
        model.put("snugTorque", Figures.of(specification.method().snugTorqueNm(), 1));
        model.put("turn", Figures.of(specification.method().turnDeg(), 0));
        model.put("windUp", Figures.of(review.windUpDeg(), 1));
        model.put("coverage", Figures.percent(review.study().coverage()));
        model.put("safety", SafetyNote.TEXT);
        model.put("given", unbroken(WindowAnswers.given(review)));
        model.put("aim", unbroken(WindowAnswers.aim(review)));
        model.put("clampLoad", unbroken(WindowAnswers.clampLoad(review)));
        model.put("onTop", unbroken(WindowAnswers.onTop(review)));
        model.put("scatter", unbroken(WindowAnswers.scatter(review)));
        model.put("window", unbroken(WindowAnswers.window(review)));
        model.put("loadChart", BandChart.clampLoad(review, "load"));
        model.put("torqueChart", BandChart.torque(review, "torque"));
        model.put("warmUpChart", WarmUpChart.svg(review.envelope(), "warm"));
        model.put("curves", review.envelope().pairs().size());
        model.put(
                "dots",
                Math.min(WarmUpChart.MOST_DOTS, review.envelope().pairs().size()));
        model.put("beforeAfterChart", BeforeAfterChart.svg(review.envelope(), "before-after"));
        model.put(
                "tightenedDrivers", SensitivityChart.svg(drivers(result, Quantity.FINAL_PRELOAD), "tightened-drivers"));
        model.put("coldDrivers", SensitivityChart.svg(drivers(result, Quantity.COLD_PRELOAD), "cold-drivers"));
        model.put("limits", limits(review));
        model.put("fits", fits(review));
        model.put(
                "observed",
                review.observed().map(observed -> observed.tightenings()).orElse(0));
        model.put(
                "leftOut",
                review.observed()
                        .filter(observed -> observed.unjudged() > 0)
                        .map(observed -> Figures.count(observed.unjudged(), "recording", "recordings")
                                + " too poor to judge left out.")
                        .orElse(""));
        model.put("percents", SHOWN_PERCENTS.stream().map(WindowModel::percent).toList());
        model.put("quantities", quantities(result));
        model.put("inputs", inputs(review));
        model.put("program", provenance.programVersion());
        model.put("written", Times.minutes(provenance.writtenAt()));
        return model;
    }

    /** A number and its unit stay on one line. */
    private static List<String> unbroken(List<String> sentences) {
        return sentences.stream()
                .map(sentence -> NUMBER_WITH_UNIT.matcher(sentence).replaceAll("$1\u00a0$2"))
                .toList();
    }

    private static List<Driver> drivers(StudyResult result, Quantity quantity) {
        return result.drivers(quantity).stream()
                .filter(driver -> driver.varianceShare() >= LEAST_SHARE
                        || Math.abs(driver.effectPerDeviation()) >= LEAST_EFFECT_N)
                .toList();
    }

    private static List<Map<String, Object>> limits(WindowReview review) {
        var rows = new ArrayList<Map<String, Object>>();
        for (var feature : WindowFeature.values()) {
            var present = feature.limits(review.specification().window());
            var proposed = feature.limits(review.proposed().window());
            rows.add(Map.of(
                    "title", Sentence.capital(feature.title()),
                    "unit", feature.unit(),
                    "present", words(present, feature),
                    "proposed", present.equals(proposed) ? "not studied" : words(proposed, feature)));
        }
        return rows;
    }

    private static String words(Band band, WindowFeature feature) {
        var text = Figures.of(band, decimals(feature));
        return text.isEmpty() ? "open" : text;
    }

    private static int decimals(WindowFeature feature) {
        return switch (feature.unit()) {
            case "deg" -> 0;
            case "N·m/deg" -> 3;
            default -> 1;
        };
    }

    private static List<Map<String, Object>> fits(WindowReview review) {
        var rows = new ArrayList<Map<String, Object>>();
        review.observed().ifPresent(observed -> {
            observed.present().forEach(fit -> rows.add(fit(fit, "released")));
            observed.proposed().stream()
                    .filter(fit -> !observed.present().contains(fit))
                    .forEach(fit -> rows.add(fit(fit, "proposed")));
        });
        return rows;
    }

    private static Map<String, Object> fit(LimitFit fit, String window) {
        var feature = fit.feature();
        return Map.of(
                "window", window,
                "title", Sentence.capital(feature.title()) + (fit.upper() ? ", upper" : ", lower"),
                "unit", feature.unit(),
                "limit", Figures.of(fit.limit(), decimals(feature)),
                "n", fit.n(),
                "median", Figures.of(fit.median(), feature.decimals()),
                "deviation", Figures.of(fit.robustDeviation(), feature.decimals()),
                "distance", Double.isFinite(fit.distanceDeviations()) ? Figures.of(fit.distanceDeviations(), 1) : "–",
                "below", Figures.percent(fit.shareBelow()),
                "outside", fit.outside());
    }

    private static List<Map<String, Object>> quantities(StudyResult result) {
        var rows = new ArrayList<Map<String, Object>>();
        for (var quantity : Quantity.values()) {
            var summary = result.summary(quantity);
            rows.add(Map.of(
                    "title", Sentence.capital(quantity.title()),
                    "unit", StudyFigures.unit(quantity),
                    "mean", StudyFigures.of(quantity, summary.mean()),
                    "deviation", deviation(summary),
                    "values",
                            summary.percentiles().stream()
                                    .filter(one -> SHOWN_PERCENTS.contains(one.percent()))
                                    .map(one -> StudyFigures.of(quantity, one.value()))
                                    .toList()));
        }
        return rows;
    }

    /** Scatter as a share of the mean, which compares quantities of different units. */
    private static String deviation(Summary summary) {
        double share = summary.coefficientOfVariation();
        return Double.isFinite(share) ? Figures.of(100 * share, 1) + " %" : "–";
    }

    private static List<Map<String, Object>> inputs(WindowReview review) {
        var rows = new ArrayList<Map<String, Object>>();
        review.study().spreads().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> rows.add(Map.of(
                        "title", Sentence.capital(entry.getKey().title()),
                        "unit", entry.getKey().unit(),
                        "spread", spread(entry.getValue()))));
        return rows;
    }

    private static String spread(Spread spread) {
        return spread.shape() == Spread.Shape.NORMAL
                ? "standard deviation " + plain(spread.standardDeviation())
                : "evenly ±" + plain(spread.standardDeviation() * Math.sqrt(3));
    }

    private static String plain(double value) {
        return Double.toString(Math.rint(value * 1e6) / 1e6);
    }

    private static String percent(double percent) {
        return plain(percent).replaceAll("\\.0$", "") + " %";
    }
}
