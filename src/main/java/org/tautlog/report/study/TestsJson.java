package org.tautlog.report.study;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.tautlog.report.words.JsonFields;
import org.tautlog.spc.study.TestStudy;

/** Tests of tables as one JSON object. A test that cannot be made says why. */
public final class TestsJson {
    private TestsJson() {}

    /**
     * Writes tests.
     *
     * @param study what was looked for, one word
     * @param value the columns tested
     * @param level chance of a positive result by chance alone, for each test or for all together
     * @param chance what chance alone would show, one sentence
     * @param rejectedRows how many rows of the file could not be used
     * @param groups the tests of each group by its name
     * @return one JSON object without a line end
     */
    public static String of(
            String study,
            String value,
            double level,
            String chance,
            int rejectedRows,
            Map<String, List<TestStudy>> groups) {
        return JsonFields.line(json -> {
            json.text("study", study);
            json.text("value", value);
            json.exact("level", level);
            json.text("chance", chance);
            json.count("rejectedRows", rejectedRows);
            json.list("groups", List.copyOf(groups.entrySet()), group -> {
                json.text("group", group.getKey());
                json.list("tests", group.getValue(), test -> {
                    json.text("test", test.test());
                    Answers.fields(json, test.result(), result -> fields(json, result));
                });
            });
        });
    }

    private static void fields(JsonFields json, TestStudy.Result result) throws IOException {
        json.yes("positive", result.positive());
        json.text("said", result.said());
        json.object("figures", () -> {
            for (var figure : result.figures()) {
                json.exact(figure.name(), figure.value());
            }
        });
        json.list("marks", result.marks(), mark -> {
            json.text("place", mark.place());
            json.exact("value", mark.value());
            json.text("said", mark.said());
        });
    }
}
