package org.tautlog.archive.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;

/** Checked against Jackson's databind, the reference library for JSON in Java. */
class JsonObjectLaws {
    private static final ObjectMapper REFERENCE = new ObjectMapper();

    @Property(tries = 200)
    void what_the_reference_writes_is_read(
            @ForAll String text, @ForAll long number, @ForAll @Size(max = 4) List<String> texts)
            throws JsonProcessingException {
        var inner = Map.of("text", text, "ignored", Map.of("list", List.of(1.5, true, texts)));
        var json = REFERENCE.writeValueAsString(
                Map.of("text", text, "number", number, "texts", texts, "objects", List.of(inner, inner)));

        var read = JsonObject.parse(json);

        assertEquals(text, read.text("text"));
        assertEquals(number, read.whole("number"));
        assertEquals(texts, read.texts("texts"));
        assertEquals(List.of(text, text), read.objects("objects", object -> object.text("text")));
    }

    @Example
    void a_text_cut_anywhere_is_refused() {
        var json = "{\"sha256\":\"ab\",\"list\":[{\"rows\":1},null,[true]]}";
        for (int length = 0; length < json.length(); length++) {
            var cut = json.substring(0, length);
            assertThrows(IllegalArgumentException.class, () -> JsonObject.parse(cut), cut);
        }
    }

    @Example
    void a_list_that_is_missing_or_holds_something_else_is_refused() {
        var read = JsonObject.parse("{\"files\":[\"judgements-1.parquet\",null],\"rows\":4000}");

        assertThrows(IllegalArgumentException.class, () -> read.texts("files"));
        assertThrows(IllegalArgumentException.class, () -> read.texts("replaces"));
        assertThrows(IllegalArgumentException.class, () -> read.objects("rows", row -> row));
    }

    @Example
    void a_name_that_stands_there_twice_is_refused_at_any_depth() {
        for (var json : List.of(
                "{\"action\":\"quarantine\",\"action\":\"release\"}",
                "{\"a\":1,\"\\u0061\":1}",
                "{\"files\":[{\"name\":\"a\",\"name\":\"b\"}]}")) {
            assertThrows(IllegalArgumentException.class, () -> JsonObject.parse(json), json);
        }
    }

    @Example
    void what_follows_the_object_is_refused_unless_it_is_white() {
        for (var more : List.of("{}", "}", ",\"a\":1}", "x", "\0")) {
            assertThrows(IllegalArgumentException.class, () -> JsonObject.parse("{\"a\":\"b\"}" + more), more);
        }
        assertEquals("b", JsonObject.parse("{\"a\":\"b\"} \r\n").text("a"));
    }

    @Example
    void what_is_missing_is_empty() {
        var read = JsonObject.parse("{\"rows\":4000.5,\"name\":null}");

        assertEquals("", read.text("name"));
        assertEquals(0, read.whole("rows"));
        assertEquals(0, read.whole("bytes"));
    }
}
