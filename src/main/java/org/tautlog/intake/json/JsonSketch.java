package org.tautlog.intake.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;

/** The beginning of a JSON text as a tree, as much as is needed to see how it lies; a cut text has one too. */
final class JsonSketch {
    private static final int MOST_TOKENS = 400_000;
    private static final int LONGEST_TEXT = 1 << 16;

    private final JsonParser parser;
    private int left = MOST_TOKENS;

    private JsonSketch(JsonParser parser) {
        this.parser = parser;
    }

    /** The first object or array of a text; empty where the text begins otherwise. */
    static Optional<JsonNode> of(Reader text) throws IOException {
        try (var parser = JsonTraces.parser(text, LONGEST_TEXT)) {
            var sketch = new JsonSketch(parser);
            var token = sketch.next();
            return token.isStructStart() ? Optional.of(sketch.node(token)) : Optional.empty();
        }
    }

    /** The next token; where no more are taken or the text is no JSON from here on, none. */
    private JsonToken next() throws IOException {
        try {
            var token = --left > 0 ? parser.nextToken() : null;
            return token == null ? JsonToken.NOT_AVAILABLE : token;
        } catch (JsonProcessingException e) {
            left = 0;
            return JsonToken.NOT_AVAILABLE;
        }
    }

    private JsonNode node(JsonToken token) throws IOException {
        var nodes = JsonNodeFactory.instance;
        if (token == JsonToken.START_OBJECT) {
            var object = nodes.objectNode();
            while (next() == JsonToken.FIELD_NAME) {
                var name = parser.currentName();
                var value = next();
                if (value != JsonToken.NOT_AVAILABLE) {
                    object.set(name, node(value));
                }
            }
            return object;
        }
        if (token == JsonToken.START_ARRAY) {
            var array = nodes.arrayNode();
            for (var value = next(); value != JsonToken.END_ARRAY && value != JsonToken.NOT_AVAILABLE; value = next()) {
                array.add(node(value));
            }
            return array;
        }
        return switch (token) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDecimalValue());
            case VALUE_STRING -> nodes.textNode(parser.getText());
            case VALUE_TRUE, VALUE_FALSE -> nodes.booleanNode(token == JsonToken.VALUE_TRUE);
            default -> nodes.nullNode();
        };
    }
}
