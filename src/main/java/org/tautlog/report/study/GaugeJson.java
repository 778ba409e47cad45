package org.tautlog.report.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.OptionalDouble;
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
        var root = Nodes.object();
        root.put("rejectedRows", rejectedRows);
        var studies = root.putObject("methods");
        methods.forEach((method, answer) ->
                Nodes.answer(studies, Nodes.word(method), answer, (node, result) -> crossed(node, result, tolerance)));
        var list = root.putArray("biases");
        biases.forEach((reference, answer) -> {
            var node = list.addObject().put("reference", Nodes.number(reference));
            Nodes.answer(node, "bias", answer, (into, bias) -> {
                into.put("value", Nodes.number(bias.value()));
                Nodes.bounds(into, bias.bounds());
                into.put("n", bias.n());
            });
        });
        linearity.forEach((key, answer) -> Nodes.answer(root, key, answer, (node, line) -> {
            node.put("slope", Nodes.number(line.slope()));
            Nodes.bounds(node.putObject("slopeBounds"), line.slopeBounds());
            node.put("intercept", Nodes.number(line.intercept()));
            Nodes.bounds(node.putObject("interceptBounds"), line.interceptBounds());
            node.put("n", line.n());
        }));
        return Nodes.text(root);
    }

    private static void crossed(ObjectNode node, GaugeResult result, OptionalDouble tolerance) {
        node.put("repeatability", Nodes.number(result.repeatability()));
        node.put("reproducibility", Nodes.number(result.reproducibility()));
        node.put("gauge", Nodes.number(result.gauge()));
        node.put("part", Nodes.number(result.part()));
        node.put("total", Nodes.number(result.total()));
        node.put("shareOfTotal", Nodes.number(result.shareOfTotal()));
        node.put("contribution", Nodes.number(result.contribution()));
        tolerance.ifPresent(width -> node.put("shareOfTolerance", Nodes.number(result.shareOfTolerance(width))));
        if (result.gauge() > 0) node.put("categories", Nodes.number(result.categories()));
        var interaction = result.interaction();
        if (interaction != null) {
            node.put("interactionPValue", Nodes.number(interaction.pValue()));
            node.put("interactionPooled", interaction.pooled());
        }
        node.put("parts", result.parts());
        node.put("appraisers", result.appraisers());
        node.put("trials", result.trials());
    }
}
