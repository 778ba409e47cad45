package org.tautlog.archive.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A JSON object of an archive, read token by token: what binds JSON to classes takes longer to start than a question to the
 * archive takes. A name stands in it once: of two, one reader would take the first and another the last.
 */
public final class JsonObject {
    private static final JsonFactory JSON = new JsonFactory();

    private final Map<String, @Nullable Object> values;

    private JsonObject(Map<String, @Nullable Object> values) {
        this.values = values;
    }

    /**
     * Reads a text that is one object.
     *
     * @param json the text
     * @return the object
     * @throws IllegalArgumentException where the text is not one whole object and nothing else, or names anything twice
     */
    public static JsonObject parse(String json) {
        try (var parser = JSON.createParser(json)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new IllegalArgumentException("it is no JSON object");
            }
            var object = object(parser);
            if (parser.nextToken() != null) {
                throw new IllegalArgumentException("something follows the JSON object");
            }
            return object;
        } catch (IOException e) {
            throw new IllegalArgumentException("it is not JSON", e);
        }
    }

    /**
     * A text.
     *
     * @param name its name
     * @return the text; empty where it is missing or no text
     */
    public String text(String name) {
        return values.get(name) instanceof String text ? text : "";
    }

    /**
     * A whole number.
     *
     * @param name its name
     * @return the number; 0 where it is missing or no whole number
     */
    public long whole(String name) {
        return values.get(name) instanceof Long number ? number : 0;
    }

    /**
     * A list of texts.
     *
     * @param name its name
     * @return the texts in order
     * @throws IllegalArgumentException where it is missing or holds something else
     */
    public List<String> texts(String name) {
        return list(name, String.class, text -> text);
    }

    /**
     * A list of objects.
     *
     * @param <T> what each is made into
     * @param name its name
     * @param made makes it
     * @return what was made, in order
     * @throws IllegalArgumentException where it is missing or holds something else
     */
    public <T> List<T> objects(String name, Function<JsonObject, T> made) {
        return list(name, JsonObject.class, made);
    }

    private <I, T> List<T> list(String name, Class<I> type, Function<I, T> made) {
        if (!(values.get(name) instanceof List<?> items)) {
            throw new IllegalArgumentException("'" + name + "' is no list");
        }
        var list = new ArrayList<T>();
        for (var item : items) {
            if (!type.isInstance(item)) {
                throw new IllegalArgumentException("'" + name + "' holds something else than it should");
            }
            list.add(made.apply(type.cast(item)));
        }
        return List.copyOf(list);
    }

    private static JsonObject object(JsonParser parser) throws IOException {
        var values = new HashMap<String, @Nullable Object>();
        for (var name = parser.nextFieldName(); name != null; name = parser.nextFieldName()) {
            parser.nextToken();
            if (values.containsKey(name)) {
                throw new IllegalArgumentException("it names '" + name + "' twice");
            }
            values.put(name, value(parser));
        }
        return new JsonObject(values);
    }

    private static @Nullable Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> {
                var items = new ArrayList<@Nullable Object>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(parser));
                }
                yield items;
            }
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT -> parser.getLongValue();
            case VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> null;
        };
    }
}
