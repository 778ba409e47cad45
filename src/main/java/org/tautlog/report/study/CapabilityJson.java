package org.tautlog.report.study;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
import org.tautlog.spc.Answer;
import org.tautlog.spc.capability.AndersonDarling;
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
        return all("process", value, rejectedRows, groups, notes, (json, study) -> {
            json.count("n", study.n());
            json.exact("mean", study.mean());
            json.exact("shortTermDeviation", study.shortSigma());
            json.exact("overallDeviation", study.overallSd());
            common(json, study.stability(), study.normality(), study.shape());
            index(json, "cp", study.cp());
            index(json, "cpk", study.cpk());
            index(json, "pp", study.pp());
            index(json, "ppk", study.ppk());
            outside(json, study.outside());
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
        return all("machine", value, rejectedRows, groups, notes, (json, study) -> {
            json.count("n", study.n());
            json.exact("mean", study.mean());
            json.exact("overallDeviation", study.sd());
            common(json, study.stability(), study.normality(), study.shape());
            index(json, "cm", study.cm());
            index(json, "cmk", study.cmk());
            outside(json, study.outside());
        });
    }

    /** Writes the fields of one study. */
    private interface Study<T> {
        void write(JsonFields json, T study) throws IOException;
    }

    private static <T> String all(
            String kind,
            String value,
            int rejectedRows,
            Map<String, Answer<T>> groups,
            Map<String, List<String>> notes,
            Study<T> fields) {
        return JsonFields.line(json -> {
            json.text("study", kind);
            json.text("value", value);
            json.count("rejectedRows", rejectedRows);
            json.list("groups", List.copyOf(groups.entrySet()), group -> {
                json.text("group", group.getKey());
                Answers.fields(json, group.getValue(), study -> fields.write(json, study));
                json.texts("notes", notes.getOrDefault(group.getKey(), List.of()).stream());
            });
        });
    }

    private static void common(JsonFields json, Stability stability, Answer<AndersonDarling> normality, Shape shape)
            throws IOException {
        json.object("stability", () -> {
            json.text("word", Word.of(stability.word()));
            json.count("points", stability.points());
            json.count("signals", stability.signals());
            json.text("said", stability.said());
        });
        Answers.object(json, "andersonDarling", normality, test -> {
            json.exact("statistic", test.statistic());
            json.exact("adjusted", test.adjusted());
            json.exact("pValue", test.pValue());
        });
        json.text("shape", Word.of(shape));
    }

    private static void index(JsonFields json, String key, Answer<CapabilityIndex> answer) throws IOException {
        Answers.object(json, key, answer, index -> {
            json.exact("value", index.value());
            Answers.bounds(json, index.bounds());
            json.text("method", Word.of(index.method()));
        });
    }

    private static void outside(JsonFields json, FractionOutside outside) throws IOException {
        json.object("fractionOutside", () -> {
            json.count("counted", outside.counted().count());
            json.count("of", outside.counted().n());
            json.object(
                    "countedBounds",
                    () -> Answers.bounds(json, outside.counted().bounds()));
            Answers.object(json, "foretold", outside.foretold(), foretold -> {
                json.exact("share", foretold.share());
                Answers.bounds(json, foretold.bounds());
            });
        });
    }
}
