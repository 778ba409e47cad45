package org.tautlog.report.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.tautlog.spc.Answer;
import org.tautlog.spc.capability.Capability;
import org.tautlog.spc.capability.CapabilityIndex;
import org.tautlog.spc.capability.FractionOutside;
import org.tautlog.spc.capability.MachineCapability;
import org.tautlog.spc.capability.Shape;
import org.tautlog.spc.capability.Stability;

/** Capability studies as one JSON object. An index that cannot be given says why. */
public final class CapabilityJson {
    private CapabilityJson() {}

    /**
     * Writes process studies.
     *
     * @param value the column studied
     * @param rejectedRows how many rows of the file could not be used
     * @param groups the study of each group by its name
     * @param notes what a reader must know of a group beside its study, by the group's name
     * @return one JSON object without a line end
     */
    public static String processes(
            String value, int rejectedRows, Map<String, Answer<Capability>> groups, Map<String, List<String>> notes) {
        return all("process", value, rejectedRows, groups, notes, (node, study) -> {
            node.put("n", study.n());
            node.put("mean", Nodes.number(study.mean()));
            node.put("shortTermDeviation", Nodes.number(study.shortSigma()));
            node.put("overallDeviation", Nodes.number(study.overallSd()));
            common(node, study.stability(), study.normality(), study.shape());
            index(node, "cp", study.cp());
            index(node, "cpk", study.cpk());
            index(node, "pp", study.pp());
            index(node, "ppk", study.ppk());
            outside(node, study.outside());
        });
    }

    /**
     * Writes machine studies.
     *
     * @param value the column studied
     * @param rejectedRows how many rows of the file could not be used
     * @param groups the study of each group by its name
     * @param notes what a reader must know of a group beside its study, by the group's name
     * @return one JSON object without a line end
     */
    public static String machines(
            String value,
            int rejectedRows,
            Map<String, Answer<MachineCapability>> groups,
            Map<String, List<String>> notes) {
        return all("machine", value, rejectedRows, groups, notes, (node, study) -> {
            node.put("n", study.n());
            node.put("mean", Nodes.number(study.mean()));
            node.put("overallDeviation", Nodes.number(study.sd()));
            common(node, study.stability(), study.normality(), study.shape());
            index(node, "cm", study.cm());
            index(node, "cmk", study.cmk());
            outside(node, study.outside());
        });
    }

    private static <T> String all(
            String kind,
            String value,
            int rejectedRows,
            Map<String, Answer<T>> groups,
            Map<String, List<String>> notes,
            java.util.function.BiConsumer<ObjectNode, T> fill) {
        var root = Nodes.object();
        root.put("study", kind);
        root.put("value", value);
        root.put("rejectedRows", rejectedRows);
        var list = root.putArray("groups");
        groups.forEach((name, answer) -> {
            var node = list.addObject().put("group", name);
            answer.found()
                    .ifPresentOrElse(
                            found -> fill.accept(node, found),
                            () -> node.put("whyMissing", answer.whyMissing().orElse("")));
            var said = node.putArray("notes");
            notes.getOrDefault(name, List.of()).forEach(said::add);
        });
        return Nodes.text(root);
    }

    private static void common(
            ObjectNode node,
            Stability stability,
            Answer<org.tautlog.spc.capability.AndersonDarling> normality,
            Shape shape) {
        node.putObject("stability")
                .put("word", Nodes.word(stability.word()))
                .put("points", stability.points())
                .put("signals", stability.signals())
                .put("said", stability.said());
        Nodes.answer(
                node,
                "andersonDarling",
                normality,
                (into, test) -> into.put("statistic", Nodes.number(test.statistic()))
                        .put("adjusted", Nodes.number(test.adjusted()))
                        .put("pValue", Nodes.number(test.pValue())));
        node.put("shape", Nodes.word(shape));
    }

    private static void index(ObjectNode node, String key, Answer<CapabilityIndex> answer) {
        Nodes.answer(node, key, answer, (into, index) -> {
            into.put("value", Nodes.number(index.value()));
            Nodes.bounds(into, index.bounds());
            into.put("method", Nodes.word(index.method()));
        });
    }

    private static void outside(ObjectNode node, FractionOutside outside) {
        var into = node.putObject("fractionOutside");
        into.put("counted", outside.counted().count());
        into.put("of", outside.counted().n());
        Nodes.bounds(into.putObject("countedBounds"), outside.counted().bounds());
        Nodes.answer(into, "foretold", outside.foretold(), (share, foretold) -> {
            share.put("share", Nodes.number(foretold.share()));
            Nodes.bounds(share, foretold.bounds());
        });
    }
}
