package org.tautlog.report.shift;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.stream.Change;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.OwnShift;
import org.tautlog.review.stream.PastShift;
import org.tautlog.review.stream.ShiftComparison;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.review.stream.StreamFigures;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.capability.Capability;
import org.tautlog.spc.capability.CapabilityIndex;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.trace.TraceIdentity;

/** What streams say side by side, as fields of the shift's JSON object; {@link ShiftJson} names them all. */
final class StreamsJson {
    private record Place(Stream stream, ChartedFeature feature) {}

    private StreamsJson() {}

    static void write(JsonFields json, ShiftReview review) throws IOException {
        var peers = review.peers();
        falseAlarms(json, peers, review.shapes());
        streams(json, peers);
        changes(json, peers);
        ownShifts(json, peers);
        json.list("cases", peers.cases(), one -> {
            json.stream(one.stream());
            json.texts(
                    "features",
                    one.shifts().stream().map(shift -> shift.feature().key()));
        });
        json.list("causes", review.diagnoses(), one -> CauseJson.write(json, one));
        json.worst("unusual", peers.unusual(), one -> {
            json.text("serial", one.tightening().serial());
            json.text("bolt", one.tightening().bolt());
            json.stream(Stream.of(one.tightening()));
            json.number("distance", one.distance());
            json.number("limit", one.limit());
            json.text("mostBy", one.most().key());
        });
        json.worst("lots", peers.lots(), lot -> {
            json.text("lot", lot.lot());
            json.text("feature", lot.feature().key());
            json.count("tightenings", lot.tightenings());
            json.number("difference", lot.difference());
            json.number("low", lot.bounds().lower());
            json.number("high", lot.bounds().upper());
            json.count("spindles", lot.spindles());
            json.count("alike", lot.alike());
            json.number("adjustedP", lot.adjusted());
            json.yes("holds", lot.holds());
        });
    }

    static void sincePrevious(JsonFields json, @Nullable ShiftComparison since) throws IOException {
        if (since == null) {
            json.none("sincePrevious");
            return;
        }
        json.object("sincePrevious", () -> {
            json.count("tests", since.tests());
            json.count("notCompared", since.notCompared());
            json.list("features", since.features(), change -> {
                json.stream(change.stream());
                json.text("feature", change.feature().key());
                json.number("before", change.level().before());
                json.number("after", change.level().after());
                json.number("shift", change.level().shift());
                json.number("low", change.level().bounds().lower());
                json.number("high", change.level().bounds().upper());
                json.number("levelAdjustedP", change.levelAdjusted());
                json.number("spreadAdjustedP", change.spreadAdjusted());
                json.yes("levelHolds", change.levelHolds());
                json.yes("spreadHolds", change.spreadHolds());
            });
            json.list("shares", since.shares(), share -> {
                json.stream(share.now().stream());
                share(json, "before", share.before());
                share(json, "now", share.now());
            });
        });
    }

    private static void share(JsonFields json, String key, PastShift.Share share) throws IOException {
        json.share(key, share.conforming(), share.attempts());
    }

    private static void falseAlarms(JsonFields json, StreamReview peers, ShapeReview shapes) throws IOException {
        var alarms = peers.falseAlarms();
        json.object("falseAlarms", () -> {
            json.count("charts", alarms.charts());
            json.count("points", alarms.points());
            json.count("seenByRules", alarms.seenByRules());
            json.number("expectedByRules", alarms.expectedByRules());
            json.count("seenByAverages", alarms.seenByAverages());
            json.number("expectedByAverages", alarms.expectedByAverages());
            json.count("seenOfOneSpindle", alarms.seenOfOne());
            json.number("expectedOfOneSpindle", alarms.expectedOfOne());
            json.count("seenByShape", shapes.outliers().size());
            json.number("expectedByShape", shapes.expected());
            json.count("seriesSearched", alarms.searched());
            json.count("levelSeriesSearched", peers.seriesSearched());
        });
    }

    private static void streams(JsonFields json, StreamReview peers) throws IOException {
        var places = IntStream.range(0, peers.figures().size()).boxed().toList();
        json.list("streams", places, i -> {
            var figures = peers.figures().get(i);
            var chart = peers.charts().get(i);
            json.stream(figures.stream());
            json.text("feature", figures.feature().key());
            json.count("n", figures.n());
            json.count("setAside", chart.aside().size());
            json.number("median", figures.median());
            json.number("robustDeviation", figures.robustDeviation());
            json.number("offset", figures.offset());
            json.yes("moved", peers.moved(figures.stream(), figures.feature()));
            limits(json, chart);
            json.count("signals", chart.signals().size());
            json.count("averageSignals", chart.lastingShifts().size());
            capability(json, figures);
            json.worstTexts(
                    "outliers",
                    figures.strays().stream().map(TraceIdentity::serial).toList());
        });
    }

    private static void limits(JsonFields json, StreamChart chart) throws IOException {
        var first = chart.chart().found().map(found -> found.points().get(0));
        json.number("centre", first.map(ChartPoint::centre).orElse(null));
        json.number("lower", first.map(ChartPoint::lower).orElse(null));
        json.number("upper", first.map(ChartPoint::upper).orElse(null));
        json.text(
                "basis",
                chart.chart().whyMissing().map(why -> "no limits: " + why).orElse(chart.basis()));
    }

    private static void capability(JsonFields json, StreamFigures figures) throws IOException {
        var study = figures.capability();
        index(json, "cp", study.flatMap(Capability::cp));
        index(json, "cpk", study.flatMap(Capability::cpk));
        index(json, "pp", study.flatMap(Capability::pp));
        index(json, "ppk", study.flatMap(Capability::ppk));
        json.text("shape", study.found().map(found -> Word.of(found.shape())).orElse(""));
        var outside = study.map(Capability::outside).found().orElse(null);
        if (outside == null) {
            json.none("outside");
        } else {
            json.object("outside", () -> {
                json.number("counted", outside.counted().value());
                var foretold = outside.foretold().found().orElse(null);
                if (foretold == null) {
                    json.none("foretold");
                    json.none("low");
                    json.none("high");
                } else {
                    json.number("foretold", foretold.share());
                    json.number("low", foretold.bounds().lower());
                    json.number("high", foretold.bounds().upper());
                }
            });
        }
        json.text(
                "control",
                study.found().map(found -> Word.of(found.stability().word())).orElse(""));
        json.text("whyNoCapability", whyNone(study));
    }

    /** A feature that the window does not limit lacks no index. */
    private static String whyNone(Answer<Capability> study) {
        return study.missingFor().filter(reason -> reason == Reason.NOT_ASKED).isPresent()
                ? ""
                : study.whyMissing()
                        .or(() -> study.flatMap(Capability::ppk).whyMissing())
                        .orElse("");
    }

    private static void index(JsonFields json, String key, Answer<CapabilityIndex> index) throws IOException {
        var found = index.found().orElse(null);
        if (found == null) {
            json.none(key);
            return;
        }
        json.object(key, () -> {
            json.number("value", found.value());
            json.number("low", found.bounds().lower());
            json.number("high", found.bounds().upper());
        });
    }

    private static void changes(JsonFields json, StreamReview peers) throws IOException {
        Map<Place, StreamChart> charts = new HashMap<>();
        peers.charts().forEach(chart -> charts.put(new Place(chart.stream(), chart.feature()), chart));
        json.list("changes", peers.changes(), change -> {
            var point = change.point();
            json.stream(change.stream());
            json.text("feature", change.feature().key());
            json.number("before", point.before());
            json.number("after", point.after());
            json.number("size", point.size().value());
            json.number("sizeLow", point.size().bounds().lower());
            json.number("sizeHigh", point.size().bounds().upper());
            first(json, change.first());
            bounds(json, change, charts.get(new Place(change.stream(), change.feature())));
            json.number("p", point.pValue());
            json.number("level", point.significance());
            json.count("alike", change.alike());
            json.count("ofStreams", change.ofStreams());
        });
    }

    private static void bounds(JsonFields json, Change change, @Nullable StreamChart chart) throws IOException {
        if (chart == null) {
            json.none("earliest");
            json.none("latest");
            return;
        }
        var tightenings = chart.tightenings();
        json.text("earliest", tightenings.get(change.point().earliest()).serial());
        int latest = Math.min(change.point().latest(), tightenings.size() - 1);
        json.text("latest", tightenings.get(latest).serial());
    }

    private static void ownShifts(JsonFields json, StreamReview peers) throws IOException {
        var searched =
                peers.shifts().stream().filter(shift -> shift.point() != null).toList();
        json.list("ownShifts", searched, shift -> ownShift(json, shift));
    }

    private static void ownShift(JsonFields json, OwnShift shift) throws IOException {
        json.stream(shift.stream());
        json.text("feature", shift.feature().key());
        json.yes("holds", shift.holds());
        json.number("adjustedP", shift.adjusted());
        json.number("size", shift.step().size().value());
        json.number("sizeLow", shift.step().size().bounds().lower());
        json.number("sizeHigh", shift.step().size().bounds().upper());
        first(json, shift.first());
        json.text("earliest", shift.earliest().serial());
        json.text("latest", shift.latest().serial());
        json.yes("onChart", shift.onChart());
    }

    private static void first(JsonFields json, TraceIdentity identity) throws IOException {
        json.text("first", identity.serial());
        json.time("firstTime", identity.time());
    }
}
