package org.tautlog.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.Verdict;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.stream.OwnShift;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamFigures;
import org.tautlog.spc.Answer;
import org.tautlog.spc.capability.CapabilityIndex;
import org.tautlog.trace.TraceIdentity;

/**
 * A shift's figures as one JSON object, for programs. Keys never change their meaning; a number that there is none of is
 * null. Numbers of a feature are in the unit that its name ends in.
 *
 * <pre>
 * specification, version, tightenings, engines, verdicts {conforming, ...}, firstPass {conforming, attempts}
 * falseAlarms   charts, points, seen and expected signals by rules, averages and of one spindle, series searched
 * streams[]     station, spindle, feature, n, setAside, median, robustDeviation, offset (robust deviations from the
 *               station's other spindles), signals, cpk and ppk {value, low, high}, control, outliers [serials]
 * ownShifts[]   station, spindle, feature, holds, adjustedP, size, sizeLow, sizeHigh, first, earliest, latest, onChart
 * cases[]       station, spindle, cause, features []
 * unusual[]     serial, bolt, station, spindle, distance, limit, mostBy
 * lots[]        lot, feature, difference, low, high, spindles, alike, adjustedP, holds
 * engineClampLoad[] serial, bolts, withoutEstimate, lowestKN, lowestBolt, meanKN, spreadKN; weakest first
 * sincePrevious {tests, notCompared, features [station, spindle, feature, before, after, shift, low, high,
 *               levelAdjustedP, spreadAdjustedP]} or null
 * </pre>
 */
public final class ShiftJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final MathContext DIGITS = new MathContext(7);

    private ShiftJson() {}

    /**
     * Writes the figures.
     *
     * @param review what was found
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(ShiftReview review, Writer out) throws IOException {
        var json = FACTORY.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.useDefaultPrettyPrinter();
        json.writeStartObject();
        counts(json, review);
        falseAlarms(json, review);
        json.writeArrayFieldStart("streams");
        for (int i = 0; i < review.peers().figures().size(); i++) {
            stream(json, review, i);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("ownShifts");
        for (var shift : review.peers().shifts()) {
            if (shift.point() != null) {
                ownShift(json, shift);
            }
        }
        json.writeEndArray();
        cases(json, review);
        unusual(json, review);
        lots(json, review);
        clampLoads(json, review);
        sincePrevious(json, review);
        json.writeStringField("safety", SafetyNote.TEXT);
        json.writeEndObject();
        json.close();
    }

    private static void counts(JsonGenerator json, ShiftReview review) throws IOException {
        json.writeStringField("specification", review.specification().name());
        json.writeStringField("version", review.specification().version());
        json.writeNumberField("tightenings", review.counts().total());
        json.writeNumberField("engines", review.engines());
        json.writeObjectFieldStart("verdicts");
        for (var verdict : Verdict.values()) {
            json.writeNumberField(verdict.word(), review.counts().of(verdict));
        }
        json.writeEndObject();
        json.writeObjectFieldStart("firstPass");
        json.writeNumberField("conforming", review.firstPass().conforming());
        json.writeNumberField("attempts", review.firstPass().attempts());
        json.writeEndObject();
    }

    private static void falseAlarms(JsonGenerator json, ShiftReview review) throws IOException {
        var alarms = review.peers().falseAlarms();
        json.writeObjectFieldStart("falseAlarms");
        json.writeNumberField("charts", alarms.charts());
        json.writeNumberField("points", alarms.points());
        json.writeNumberField("seenByRules", alarms.seenByRules());
        number(json, "expectedByRules", alarms.expectedByRules());
        json.writeNumberField("seenByAverages", alarms.seenByAverages());
        number(json, "expectedByAverages", alarms.expectedByAverages());
        json.writeNumberField("seenOfOneSpindle", alarms.seenOfOne());
        number(json, "expectedOfOneSpindle", alarms.expectedOfOne());
        json.writeNumberField("seriesSearched", alarms.searched());
        json.writeEndObject();
    }

    private static void stream(JsonGenerator json, ShiftReview review, int place) throws IOException {
        StreamFigures figures = review.peers().figures().get(place);
        var chart = review.peers().charts().get(place);
        json.writeStartObject();
        stream(json, figures.stream());
        json.writeStringField("feature", figures.feature().key());
        json.writeNumberField("n", figures.n());
        json.writeNumberField("setAside", chart.aside().size());
        number(json, "median", figures.median());
        number(json, "robustDeviation", figures.robustDeviation());
        number(json, "offset", figures.offset());
        json.writeNumberField("signals", chart.signals().size());
        var study = figures.capability();
        index(json, "cpk", study.flatMap(found -> found.cpk()));
        index(json, "ppk", study.flatMap(found -> found.ppk()));
        json.writeStringField(
                "control",
                study.found().map(found -> Word.of(found.stability().word())).orElse(""));
        json.writeArrayFieldStart("outliers");
        for (var stray : figures.strays()) {
            json.writeString(stray.serial());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void ownShift(JsonGenerator json, OwnShift shift) throws IOException {
        json.writeStartObject();
        stream(json, shift.stream());
        json.writeStringField("feature", shift.feature().key());
        json.writeBooleanField("holds", shift.holds());
        number(json, "adjustedP", shift.adjusted());
        number(json, "size", shift.step().size().value());
        number(json, "sizeLow", shift.step().size().bounds().lower());
        number(json, "sizeHigh", shift.step().size().bounds().upper());
        place(json, "first", shift.first());
        place(json, "earliest", shift.earliest());
        place(json, "latest", shift.latest());
        json.writeBooleanField("onChart", shift.onChart());
        json.writeEndObject();
    }

    private static void cases(JsonGenerator json, ShiftReview review) throws IOException {
        json.writeArrayFieldStart("cases");
        for (var one : review.peers().cases()) {
            json.writeStartObject();
            stream(json, one.stream());
            json.writeStringField("cause", Word.of(one.cause()));
            json.writeArrayFieldStart("features");
            for (var shift : one.shifts()) {
                json.writeString(shift.feature().key());
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void unusual(JsonGenerator json, ShiftReview review) throws IOException {
        json.writeArrayFieldStart("unusual");
        for (var one : review.peers().unusual()) {
            json.writeStartObject();
            json.writeStringField("serial", one.tightening().serial());
            json.writeStringField("bolt", one.tightening().bolt());
            stream(json, Stream.of(one.tightening()));
            number(json, "distance", one.distance());
            number(json, "limit", one.limit());
            json.writeStringField("mostBy", one.most().key());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void lots(JsonGenerator json, ShiftReview review) throws IOException {
        json.writeArrayFieldStart("lots");
        for (var lot : review.peers().lots()) {
            json.writeStartObject();
            json.writeStringField("lot", lot.lot());
            json.writeStringField("feature", lot.feature().key());
            number(json, "difference", lot.difference());
            number(json, "low", lot.bounds().lower());
            number(json, "high", lot.bounds().upper());
            json.writeNumberField("spindles", lot.spindles());
            json.writeNumberField("alike", lot.alike());
            number(json, "adjustedP", lot.adjusted());
            json.writeBooleanField("holds", lot.holds());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void clampLoads(JsonGenerator json, ShiftReview review) throws IOException {
        json.writeArrayFieldStart(EngineClampLoadJson.KEY);
        for (var load : review.clampLoads()) {
            EngineClampLoadJson.write(json, load);
        }
        json.writeEndArray();
    }

    private static void sincePrevious(JsonGenerator json, ShiftReview review) throws IOException {
        var comparison = review.sincePrevious();
        if (comparison == null) {
            json.writeNullField("sincePrevious");
            return;
        }
        json.writeObjectFieldStart("sincePrevious");
        json.writeNumberField("tests", comparison.tests());
        json.writeNumberField("notCompared", comparison.notCompared());
        json.writeArrayFieldStart("features");
        for (var change : comparison.features()) {
            json.writeStartObject();
            stream(json, change.stream());
            json.writeStringField("feature", change.feature().key());
            number(json, "before", change.level().before());
            number(json, "after", change.level().after());
            number(json, "shift", change.level().shift());
            number(json, "low", change.level().bounds().lower());
            number(json, "high", change.level().bounds().upper());
            number(json, "levelAdjustedP", change.levelAdjusted());
            number(json, "spreadAdjustedP", change.spreadAdjusted());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void index(JsonGenerator json, String key, Answer<CapabilityIndex> index) throws IOException {
        var found = index.found().orElse(null);
        if (found == null) {
            json.writeNullField(key);
            return;
        }
        json.writeObjectFieldStart(key);
        number(json, "value", found.value());
        number(json, "low", found.bounds().lower());
        number(json, "high", found.bounds().upper());
        json.writeEndObject();
    }

    private static void stream(JsonGenerator json, Stream stream) throws IOException {
        json.writeStringField("station", stream.station());
        json.writeStringField("spindle", stream.spindle());
    }

    private static void place(JsonGenerator json, String key, TraceIdentity identity) throws IOException {
        json.writeStringField(key, identity.serial());
    }

    private static void number(JsonGenerator json, String key, @Nullable Double value) throws IOException {
        json.writeFieldName(key);
        if (value == null || !Double.isFinite(value)) {
            json.writeNull();
        } else {
            json.writeNumber(new BigDecimal(value, DIGITS).stripTrailingZeros());
        }
    }
}
