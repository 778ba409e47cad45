package org.tautlog.report.window;

import java.io.IOException;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
import org.tautlog.review.tuning.Standing;
import org.tautlog.review.tuning.ThresholdTuning;
import org.tautlog.review.tuning.TraceUse;
import org.tautlog.review.tuning.TuningReview;

/** Tuned onset thresholds as one JSON object. Keys never change their meaning; an infinite error is null. */
public final class TuningJson {
    private TuningJson() {}

    /**
     * Writes a review.
     *
     * @param review the review
     * @return one JSON object without a line end
     */
    public static String of(TuningReview review) {
        return JsonFields.line(json -> {
            json.text("specification", review.specification().name());
            json.text("version", review.specification().version());
            json.number("offsetDeg", review.offsetDeg());
            json.number("measurementDeg", review.measurementDeg());
            json.count("seed", review.seed());
            json.count("traces", review.used());
            json.yes("tooFew", review.tooFew());
            json.list("criteria", review.tunings(), tuning -> {
                criterion(json, tuning);
                json.yes("unexplained", review.unexplained(tuning.criterion()));
            });
            var knee = review.kneeAtGradient();
            if (knee.isPresent()) {
                standing(json, "kneeAtGradient", knee.get());
            } else {
                json.none("kneeAtGradient");
            }
            rule(json, "presentReading", review.specification().reading());
            rule(json, "proposedReading", review.proposed());
            json.object("uses", () -> {
                for (var use : TraceUse.values()) {
                    json.count(Word.of(use), review.uses().getOrDefault(use, 0));
                }
            });
            json.worst("unused", review.unused(), one -> {
                json.text("serial", one.tightening().serial());
                json.text("bolt", one.tightening().bolt());
                json.count("attempt", one.tightening().attempt());
                json.text("why", Word.of(one.why()));
                json.text("message", one.why().words());
            });
            json.worstTexts("withoutTrace", review.withoutTrace());
            json.text("safety", SafetyNote.TEXT);
        });
    }

    private static void criterion(JsonFields json, ThresholdTuning tuning) throws IOException {
        json.text("criterion", Word.of(tuning.criterion()));
        json.text("key", tuning.criterion().key());
        json.text("unit", tuning.criterion().unit());
        standing(json, "present", tuning.present());
        var tuned = tuning.tuned().found();
        if (tuned.isEmpty()) {
            json.none("tuned");
        } else {
            json.object("tuned", () -> {
                standing(json, "standing", tuned.get().standing());
                json.number("lower", tuned.get().interval().lower());
                json.number("upper", tuned.get().interval().upper());
                json.number("confidence", tuned.get().interval().confidence());
                json.yes("tellsNothing", tuned.get().tellsNothing());
                json.yes("atEnd", tuned.get().atEnd());
            });
        }
        json.text("whyNotTuned", tuning.tuned().whyMissing().orElse(""));
        json.yes("speaksForAnother", tuning.speaksForAnother());
    }

    private static void standing(JsonFields json, String key, Standing standing) throws IOException {
        json.object(key, () -> {
            json.number("threshold", standing.threshold());
            json.number("biasDeg", standing.biasDeg());
            json.number("spreadDeg", standing.spreadDeg());
            json.count("notRead", standing.notRead());
            json.count("claimed", standing.claimed());
        });
    }

    private static void rule(JsonFields json, String key, ReadingRule rule) throws IOException {
        json.object(key, () -> {
            json.number("onsetRatio", rule.onsetRatio());
            json.number("elasticRatio", rule.elasticRatio());
            json.number("plasticRatio", rule.plasticRatio());
            json.number("onsetOffsetDeg", rule.onsetOffsetDeg());
        });
    }
}
