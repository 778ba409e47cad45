package org.tautlog.report.study;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
import org.tautlog.spc.Answer;
import org.tautlog.spc.gauge.Bias;
import org.tautlog.spc.gauge.GaugeResult;
import org.tautlog.spc.gauge.Linearity;

/** A gauge study as one JSON object. */
public final class GaugeJson {
    private GaugeJson() {}

    /**
     * Writes a study.
     *
     * @param rejectedRows how many rows of the file could not be used
     * @param tolerance width of the tolerance, empty for none
     * @param methods the crossed study by each method asked for
     * @param biases the bias at each reference; empty where no reference is given
     * @param linearity the line of biases; empty map where no reference is given
     * @return one JSON object without a line end
     */
    public static String of(
            int rejectedRows,
            OptionalDouble tolerance,
            Map<GaugeResult.Method, Answer<GaugeResult>> methods,
            Map<Double, Answer<Bias>> biases,
            Map<String, Answer<Linearity>> linearity) {
        return JsonFields.line(json -> {
            json.count("rejectedRows", rejectedRows);
            json.object("methods", () -> {
                for (var one : methods.entrySet()) {
                    Answers.object(
                            json, Word.of(one.getKey()), one.getValue(), result -> crossed(json, result, tolerance));
                }
            });
            json.list("biases", List.copyOf(biases.entrySet()), one -> {
                json.exact("reference", one.getKey());
                Answers.object(json, "bias", one.getValue(), bias -> {
                    json.exact("value", bias.value());
                    Answers.bounds(json, bias.bounds());
                    json.count("n", bias.n());
                });
            });
            for (var one : linearity.entrySet()) {
                Answers.object(json, one.getKey(), one.getValue(), line -> {
                    json.exact("slope", line.slope());
                    json.object("slopeBounds", () -> Answers.bounds(json, line.slopeBounds()));
                    json.exact("intercept", line.intercept());
                    json.object("interceptBounds", () -> Answers.bounds(json, line.interceptBounds()));
                    json.count("n", line.n());
                });
            }
        });
    }

    private static void crossed(JsonFields json, GaugeResult result, OptionalDouble tolerance) throws IOException {
        json.exact("repeatability", result.repeatability());
        json.exact("reproducibility", result.reproducibility());
        json.exact("gauge", result.gauge());
        json.exact("part", result.part());
        json.exact("total", result.total());
        json.exact("shareOfTotal", result.shareOfTotal());
        json.exact("contribution", result.contribution());
        if (tolerance.isPresent()) {
            json.exact("shareOfTolerance", result.shareOfTolerance(tolerance.getAsDouble()));
        }
        if (result.gauge() > 0) {
            json.exact("categories", result.categories());
        }
        var interaction = result.interaction();
        if (interaction != null) {
            json.exact("interactionPValue", interaction.pValue());
            json.yes("interactionPooled", interaction.pooled());
        }
        json.count("parts", result.parts());
        json.count("appraisers", result.appraisers());
        json.count("trials", result.trials());
    }
}
