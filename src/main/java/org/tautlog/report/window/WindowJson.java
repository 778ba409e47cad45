package org.tautlog.report.window;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.warmup.StretchClaim;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.GivenNumbers;
import org.tautlog.joint.window.SideEffects;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.Word;
import org.tautlog.review.LimitFit;
import org.tautlog.review.WindowFeature;
import org.tautlog.review.WindowReview;

/** A window study as one JSON object. Keys never change their meaning; a limit that is open is null. */
public final class WindowJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final MathContext DIGITS = new MathContext(6);

    private WindowJson() {}

    /**
     * Writes a study.
     *
     * @param review the study
     * @return one JSON object without a line end
     */
    public static String of(WindowReview review) {
        var text = new StringWriter();
        try (var json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            study(json, review);
            json.writeArrayFieldStart("quantities");
            for (var quantity : Quantity.values()) {
                quantity(json, review, quantity);
            }
            json.writeEndArray();
            given(json, review.given());
            onTop(json, review.sideEffects());
            limits(json, review);
            observed(json, review);
            json.writeStringField("safety", SafetyNote.TEXT);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void study(JsonGenerator json, WindowReview review) throws IOException {
        var result = review.result();
        json.writeStringField("specification", review.specification().name());
        json.writeStringField("version", review.specification().version());
        json.writeNumberField("draws", result.draws());
        json.writeNumberField("seed", result.seed());
        number(json, "coverage", review.study().coverage());
        number(json, "withinAllShare", result.window().withinAllShare());
        number(json, "yieldedAtAssemblyShare", result.yieldedAtAssemblyShare());
        number(json, "yieldedAtWarmUpShare", result.yieldedAtWarmUpShare());
        json.writeBooleanField("everyBoltYieldsHotAndNoneBefore", result.everyBoltYieldsHotAndNoneBefore());
        json.writeStringField("scatterRule", Word.of(result.scatterLeft().rule()));
        json.writeStringField("scatter", result.scatterLeft().sentence());
    }

    private static void quantity(JsonGenerator json, WindowReview review, Quantity quantity) throws IOException {
        var summary = review.result().summary(quantity);
        json.writeStartObject();
        json.writeStringField("quantity", Word.of(quantity));
        json.writeStringField("unit", quantity.unit());
        number(json, "mean", summary.mean());
        number(json, "standardDeviation", summary.standardDeviation());
        json.writeArrayFieldStart("percentiles");
        for (var percentile : summary.percentiles()) {
            json.writeStartObject();
            number(json, "percent", percentile.percent());
            number(json, "value", percentile.value());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("drivers");
        for (var driver : review.result().drivers(quantity)) {
            json.writeStartObject();
            json.writeStringField("factor", Word.of(driver.factor()));
            number(json, "varianceShare", driver.varianceShare());
            number(json, "effectPerDeviation", driver.effectPerDeviation());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void given(JsonGenerator json, GivenNumbers given) throws IOException {
        json.writeObjectFieldStart("givenNumbers");
        number(json, "turnDeg", given.turnDeg());
        number(json, "yieldTurnDeg", given.yieldTurnDeg());
        number(json, "riseShareToYield", given.riseShare().orElse(Double.NaN));
        number(json, "outgrowthMm", given.outgrowthMm());
        number(
                json,
                "statedFurtherStretchMm",
                given.claim().map(StretchClaim::claimedMm).orElse(Double.NaN));
        number(json, "neededRiseK", given.claim().map(StretchClaim::neededRiseK).orElse(Double.NaN));
        json.writeArrayFieldStart("doNotFit");
        for (var misfit : given.misfits()) {
            json.writeString(Word.of(misfit));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void onTop(JsonGenerator json, SideEffects side) throws IOException {
        json.writeObjectFieldStart("onTop");
        number(json, "headTiltDeg", side.tiltDeg());
        number(json, "bendingMPa", side.bendingMPa());
        number(json, "bendingShareOfYield", side.bendingShareOfYield());
        number(json, "embeddingMm", side.statedFlatteningMm());
        number(json, "embeddingLossN", side.statedLossN());
        number(json, "guideEmbeddingMm", side.guideFlatteningMm());
        number(json, "guideEmbeddingLossN", side.guideLossN());
        json.writeEndObject();
    }

    private static void limits(JsonGenerator json, WindowReview review) throws IOException {
        json.writeArrayFieldStart("limits");
        for (var feature : WindowFeature.values()) {
            json.writeStartObject();
            json.writeStringField("feature", Word.of(feature));
            json.writeStringField("unit", feature.unit());
            band(json, "present", feature.limits(review.specification().window()));
            band(json, "proposed", feature.limits(review.proposed().window()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void observed(JsonGenerator json, WindowReview review) throws IOException {
        if (review.observed().isEmpty()) {
            json.writeNullField("observed");
            return;
        }
        var observed = review.observed().get();
        json.writeObjectFieldStart("observed");
        json.writeNumberField("tightenings", observed.tightenings());
        json.writeNumberField("unjudged", observed.unjudged());
        json.writeNumberField("outsidePresent", observed.outsidePresent());
        json.writeNumberField("outsideProposed", observed.outsideProposed());
        fits(json, "present", observed.present());
        fits(json, "proposed", observed.proposed());
        json.writeEndObject();
    }

    private static void fits(JsonGenerator json, String key, List<LimitFit> fits) throws IOException {
        json.writeArrayFieldStart(key);
        for (var fit : fits) {
            json.writeStartObject();
            json.writeStringField("feature", Word.of(fit.feature()));
            json.writeStringField("side", fit.upper() ? "high" : "low");
            number(json, "limit", fit.limit());
            json.writeNumberField("n", fit.n());
            number(json, "median", fit.median());
            number(json, "robustDeviation", fit.robustDeviation());
            number(json, "distanceDeviations", fit.distanceDeviations());
            number(json, "shareBelow", fit.shareBelow());
            json.writeNumberField("outside", fit.outside());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void band(JsonGenerator json, String key, Band band) throws IOException {
        number(json, key + "Low", band.low());
        number(json, key + "High", band.high());
    }

    private static void number(JsonGenerator json, String key, double value) throws IOException {
        json.writeFieldName(key);
        if (Double.isFinite(value)) {
            json.writeNumber(new BigDecimal(value, DIGITS).stripTrailingZeros());
        } else {
            json.writeNull();
        }
    }
}
