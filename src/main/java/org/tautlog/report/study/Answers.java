package org.tautlog.report.study;

import java.io.IOException;
import org.tautlog.report.words.JsonFields;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;

/** What the JSON of all studies has in common: a reason where there is no result, and the bounds of a result. */
final class Answers {
    private Answers() {}

    /** The fields of a result within an object of their own. */
    static <T> void object(JsonFields json, String key, Answer<T> answer, JsonFields.Item<T> result)
            throws IOException {
        json.object(key, () -> fields(json, answer, result));
    }

    /** The fields of a result, or {@code whyMissing} in their place. */
    static <T> void fields(JsonFields json, Answer<T> answer, JsonFields.Item<T> result) throws IOException {
        var found = answer.found();
        if (found.isPresent()) {
            result.write(found.get());
        } else {
            json.text("whyMissing", answer.whyMissing().orElse(""));
        }
    }

    static void bounds(JsonFields json, Interval bounds) throws IOException {
        json.exact("lower", bounds.lower());
        json.exact("upper", bounds.upper());
        json.exact("confidence", bounds.confidence());
    }
}
