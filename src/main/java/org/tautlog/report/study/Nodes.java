package org.tautlog.report.study;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;

/** What the JSON of all studies has in common: whole doubles, words for names, a reason where there is no result. */
final class Nodes {
    private static final JsonMapper MAPPER = new JsonMapper();

    private Nodes() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static BigDecimal number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros();
    }

    static String word(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException("a tree of numbers and texts is JSON", e);
        }
    }

    static <T> void answer(ObjectNode into, String key, Answer<T> answer, BiConsumer<ObjectNode, T> fill) {
        answer.found()
                .ifPresentOrElse(
                        found -> fill.accept(into.putObject(key), found),
                        () -> into.putObject(key)
                                .put("whyMissing", answer.whyMissing().orElse("")));
    }

    static void bounds(ObjectNode into, Interval bounds) {
        into.put("lower", number(bounds.lower()));
        into.put("upper", number(bounds.upper()));
        into.put("confidence", number(bounds.confidence()));
    }
}
