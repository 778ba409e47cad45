package org.tautlog.report.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
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
        var root = Nodes.object();
        root.put("study", study);
        root.put("value", value);
        root.put("level", Nodes.number(level));
        root.put("chance", chance);
        root.put("rejectedRows", rejectedRows);
        var list = root.putArray("groups");
        groups.forEach((name, tests) -> {
            var made = list.addObject().put("group", name).putArray("tests");
            for (var test : tests) {
                var node = made.addObject().put("test", test.test());
                test.result()
                        .found()
                        .ifPresentOrElse(
                                found -> fill(node, found),
                                () -> node.put(
                                        "whyMissing", test.result().whyMissing().orElse("")));
            }
        });
        return Nodes.text(root);
    }

    private static void fill(ObjectNode node, TestStudy.Result result) {
        node.put("positive", result.positive());
        node.put("said", result.said());
        var figures = node.putObject("figures");
        result.figures().forEach(figure -> figures.put(figure.name(), Nodes.number(figure.value())));
        var marks = node.putArray("marks");
        for (var mark : result.marks()) {
            marks.addObject()
                    .put("place", mark.place())
                    .put("value", Nodes.number(mark.value()))
                    .put("said", mark.said());
        }
    }
}
