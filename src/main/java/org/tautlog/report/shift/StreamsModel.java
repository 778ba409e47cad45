package org.tautlog.report.shift;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.tautlog.report.chart.ClampLoadChart;
import org.tautlog.report.chart.DifferenceChart;
import org.tautlog.report.judged.ShapeWords;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.ShiftClock;
import org.tautlog.review.EngineClampLoad;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.cause.Against;
import org.tautlog.review.cause.Pattern;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.LotEffect;
import org.tautlog.review.stream.SpindleCase;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamFigures;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.review.stream.Unusual;
import org.tautlog.spc.Reason;
import org.tautlog.spc.capability.Capability;
import org.tautlog.spc.capability.CapabilityIndex;
import org.tautlog.spc.capability.Shape;
import org.tautlog.spc.capability.Stability;

/** The side-by-side part of the page as words. */
final class StreamsModel {
    private static final int MOST_CASES = 6;
    private static final int MOST_ROWS = 40;
    private static final int MOST_UNUSUAL = 10;
    private static final int MOST_ENGINES = 10;
    private static final int DARKEST = 48;
    private static final int PER_DEVIATION = 16;
    private static final double WORTH_A_WORD = 0.5;

    private StreamsModel() {}

    static void addTo(Map<String, Object> model, ShiftReview review) {
        var peers = review.peers();
        model.put(
                "falseAlarms",
                StreamWords.falseAlarms(peers.falseAlarms(), review.shapes()) + " "
                        + StreamWords.neighbours(peers.stations()));
        ShapeWords.addTo(model, review);
        model.put("searchedApart", peers.falseAlarms().searched());
        model.put("cases", cases(review));
        model.put(
                "features",
                Arrays.stream(ChartedFeature.values())
                        .map(feature -> Sentence.capital(feature.title()))
                        .toList());
        model.put(
                "offsets",
                CauseWords.offsets(review).stream()
                        .limit(MOST_CASES)
                        .map(CauseWords::model)
                        .toList());
        var heat = heat(peers);
        model.put("heat", heat.stream().limit(MOST_ROWS).toList());
        model.put("heatLeft", Math.max(0, heat.size() - MOST_ROWS));
        var capability = capability(peers);
        model.put("capability", capability.stream().limit(MOST_ROWS).toList());
        model.put("capabilityLeft", Math.max(0, capability.size() - MOST_ROWS));
        model.put("noCapability", noCapability(peers));
        model.put(
                "unusual",
                peers.unusual().stream()
                        .limit(MOST_UNUSUAL)
                        .map(one -> unusual(review, one))
                        .toList());
        model.put("unusualLeft", Math.max(0, peers.unusual().size() - MOST_UNUSUAL));
        model.put("unusualOneIn", Unusual.ONE_IN);
        addComparison(model, review);
        model.put("lotsCompared", peers.lots().size());
        model.put(
                "lots",
                peers.lots().stream()
                        .filter(LotEffect::holds)
                        .map(StreamWords::lot)
                        .toList());
        model.put(
                "lotCauses",
                review.diagnoses().stream()
                        .filter(one -> one.pattern() == Pattern.ONE_LOT)
                        .map(CauseWords::model)
                        .toList());
        model.put(
                "weakest",
                review.clampLoads().stream()
                        .limit(MOST_ENGINES)
                        .map(StreamsModel::engine)
                        .toList());
        model.put("clampLoadEngines", review.clampLoads().size());
        model.put(
                "clampLoadChart",
                review.clampLoads().isEmpty() ? "" : ClampLoadChart.svg(review.clampLoads(), "clamp"));
    }

    private static void addComparison(Map<String, Object> model, ShiftReview review) {
        var since = review.sincePrevious();
        model.put("compared", since != null);
        if (since == null) {
            return;
        }
        model.put("comparisonTests", since.tests());
        model.put("notCompared", since.notCompared());
        model.put(
                "sincePrevious",
                since.holding().stream()
                        .limit(MOST_ROWS)
                        .map(StreamWords::change)
                        .toList());
        model.put(
                "shares",
                since.shares().stream()
                        .limit(MOST_ROWS)
                        .map(share -> Map.of(
                                "stream", share.now().stream().words(),
                                "before",
                                        share.before().conforming() + " of "
                                                + share.before().attempts(),
                                "now",
                                        share.now().conforming() + " of "
                                                + share.now().attempts()))
                        .toList());
    }

    private static List<Map<String, Object>> cases(ShiftReview review) {
        var models = new ArrayList<Map<String, Object>>();
        for (var one : review.peers().cases().stream().limit(MOST_CASES).toList()) {
            models.add(Map.of(
                    "stream", one.stream().words(),
                    "sentence", StreamWords.moved(one, ShiftClock.of(review)),
                    "diagnosis", diagnoses(review, one.stream().words()),
                    "charts", charts(one, models.size())));
        }
        return models;
    }

    private static List<Map<String, Object>> charts(SpindleCase one, int place) {
        return one.shifts().stream()
                .map(shift -> Map.<String, Object>of(
                        "title", Sentence.capital(shift.feature().title()),
                        "n", shift.differences().size(),
                        "onChart", shift.onChart(),
                        "svg",
                                DifferenceChart.svg(
                                        shift,
                                        "d" + place + '-' + shift.feature().name())))
                .toList();
    }

    private static List<Map<String, Object>> heat(StreamReview peers) {
        var rows = new LinkedHashMap<Stream, List<Map<String, Object>>>();
        for (var figures : peers.figures()) {
            rows.computeIfAbsent(figures.stream(), unused -> new ArrayList<>()).add(cell(figures, peers));
        }
        return rows.entrySet().stream()
                .map(row -> Map.<String, Object>of("stream", row.getKey().words(), "cells", row.getValue()))
                .toList();
    }

    private static Map<String, Object> cell(StreamFigures figures, StreamReview peers) {
        var offset = figures.offset();
        boolean moved = peers.moved(figures.stream(), figures.feature());
        if (offset == null) {
            return Map.of("side", "none", "text", "–", "tone", 0, "moved", moved);
        }
        return Map.of(
                "side",
                Math.abs(offset) < WORTH_A_WORD ? "near" : offset > 0 ? "above" : "below",
                "text",
                Figures.of(Math.abs(offset), 1),
                "tone",
                Math.min(DARKEST, (int) Math.round(PER_DEVIATION * Math.abs(offset))),
                "moved",
                moved);
    }

    /** Least capable first. */
    private static List<Map<String, Object>> capability(StreamReview peers) {
        return peers.figures().stream()
                .filter(figures -> figures.capability().found().isPresent())
                .sorted(Comparator.comparingDouble(StreamsModel::ppk))
                .map(figures -> capability(figures, figures.capability().orThrow()))
                .toList();
    }

    private static double ppk(StreamFigures figures) {
        return figures.capability()
                .orThrow()
                .ppk()
                .found()
                .map(CapabilityIndex::value)
                .orElse(Double.MAX_VALUE);
    }

    private static Map<String, Object> capability(StreamFigures figures, Capability study) {
        return Map.ofEntries(
                Map.entry("stream", figures.stream().words()),
                Map.entry("feature", figures.feature().title()),
                Map.entry("n", study.n()),
                Map.entry("cpk", study.cpk().found().map(StreamsModel::index).orElse("–")),
                Map.entry("ppk", study.ppk().found().map(StreamsModel::index).orElse("–")),
                Map.entry("why", study.ppk().whyMissing().orElse("")),
                Map.entry("shape", shape(study.shape())),
                Map.entry("control", control(study.stability().word())),
                Map.entry("calm", study.stability().word() == Stability.Word.IN_CONTROL),
                Map.entry("strays", figures.strays().size()));
    }

    private static String index(CapabilityIndex index) {
        return Figures.of(index.value(), 2) + " (" + Figures.of(index.bounds().lower(), 2) + " to "
                + Figures.of(index.bounds().upper(), 2) + ')';
    }

    private static String shape(Shape shape) {
        return shape.words();
    }

    private static String control(Stability.Word word) {
        return switch (word) {
            case IN_CONTROL -> "in control";
            case OUT_OF_CONTROL -> "not in control";
            case NOT_SHOWN -> "not shown";
        };
    }

    /** Features that the window limits and that have no index on some spindles, one line each. */
    private static List<String> noCapability(StreamReview peers) {
        var byFeature = new TreeMap<ChartedFeature, List<StreamFigures>>();
        peers.figures().stream()
                .filter(figures -> figures.capability()
                        .missingFor()
                        .filter(reason -> reason != Reason.NOT_ASKED)
                        .isPresent())
                .forEach(figures -> byFeature
                        .computeIfAbsent(figures.feature(), unused -> new ArrayList<>())
                        .add(figures));
        return byFeature.entrySet().stream()
                .map(entry -> Sentence.capital(entry.getKey().title()) + ": no index on "
                        + Figures.count(entry.getValue().size(), "spindle", "spindles") + "; "
                        + entry.getValue().get(0).stream().words() + " has "
                        + entry.getValue().get(0).capability().whyMissing().orElse(""))
                .toList();
    }

    private static List<Map<String, Object>> diagnoses(ShiftReview review, String what) {
        return CauseWords.about(review, Against.BEFORE, what).stream()
                .map(CauseWords::model)
                .toList();
    }

    private static Map<String, Object> unusual(ShiftReview review, Unusual unusual) {
        var identity = unusual.tightening();
        return Map.of(
                "serial", identity.serial(),
                "bolt", identity.bolt(),
                "stream", Stream.of(identity).words(),
                "time", ShiftClock.of(review).words(identity.time()),
                "distance", Figures.of(unusual.distance(), 1),
                "limit", Figures.of(unusual.limit(), 1),
                "most", unusual.most().title(),
                "cause",
                        CauseWords.about(
                                        review,
                                        Against.OTHER_TIGHTENINGS,
                                        identity.serial() + " bolt " + identity.bolt())
                                .map(CauseWords::verdict)
                                .orElse(""));
    }

    private static Map<String, Object> engine(EngineClampLoad load) {
        return Map.of(
                "serial", Objects.requireNonNull(load.serial()),
                "bolts", load.bolts(),
                "without", load.withoutEstimate(),
                "lowest", Figures.of(load.lowestKN(), 1),
                "bolt", load.lowestBolt(),
                "mean", Figures.of(load.meanKN(), 1),
                "spread", Figures.of(load.spreadKN(), 1));
    }
}
