package org.tautlog.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.OffsetDateTime;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.stream.Stream;

/** Fields of a JSON object, written one after the other; what there is none of becomes null. */
final class JsonFields {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final MathContext DIGITS = new MathContext(7);
    static final int MOST = 500;

    /** Fields within an object. */
    interface Body {
        void write() throws IOException;
    }

    /** Fields of one item of a list. */
    interface Item<T> {
        void write(T item) throws IOException;
    }

    private final JsonGenerator json;

    JsonFields(JsonGenerator json) {
        this.json = json;
    }

    /** Writes the fields of one object. */
    interface Fields {
        void write(JsonFields json) throws IOException;
    }

    /** One object on one line, without a line end. */
    static String line(Fields fields) {
        var text = new StringWriter();
        try (var generator = FACTORY.createGenerator(text)) {
            generator.writeStartObject();
            fields.write(new JsonFields(generator));
            generator.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    void object(String key, Body body) throws IOException {
        json.writeObjectFieldStart(key);
        body.write();
        json.writeEndObject();
    }

    <T> void list(String key, List<T> items, Item<T> fields) throws IOException {
        json.writeArrayFieldStart(key);
        for (T item : items) {
            json.writeStartObject();
            fields.write(item);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A list that grows with the tightenings: its first entries, the worst, and as {@code keyLeft} how many were left out. */
    <T> void worst(String key, List<T> items, Item<T> fields) throws IOException {
        list(key, items.subList(0, Math.min(MOST, items.size())), fields);
        count(key + "Left", Math.max(0, items.size() - MOST));
    }

    /** The same of a list of texts. */
    void worstTexts(String key, List<String> texts) throws IOException {
        texts(key, texts.stream().limit(MOST));
        count(key + "Left", Math.max(0, texts.size() - MOST));
    }

    void texts(String key, java.util.stream.Stream<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (Iterator<String> all = texts.iterator(); all.hasNext(); ) {
            json.writeString(all.next());
        }
        json.writeEndArray();
    }

    void text(String key, @Nullable String text) throws IOException {
        json.writeStringField(key, text);
    }

    void none(String key) throws IOException {
        json.writeNullField(key);
    }

    void count(String key, long count) throws IOException {
        json.writeNumberField(key, count);
    }

    /** A number as the caller has rounded it. */
    void rounded(String key, BigDecimal value) throws IOException {
        json.writeNumberField(key, value);
    }

    /** Text that is JSON already. */
    void raw(String key, String value) throws IOException {
        json.writeFieldName(key);
        json.writeRawValue(value);
    }

    void yes(String key, boolean whether) throws IOException {
        json.writeBooleanField(key, whether);
    }

    void time(String key, @Nullable OffsetDateTime time) throws IOException {
        if (time == null) {
            json.writeNullField(key);
        } else {
            json.writeStringField(key, time.toString());
        }
    }

    /** A number to seven digits; null where there is none. */
    void number(String key, @Nullable Double value) throws IOException {
        json.writeFieldName(key);
        if (value == null || !Double.isFinite(value)) {
            json.writeNull();
        } else {
            json.writeNumber(new BigDecimal(value, DIGITS).stripTrailingZeros());
        }
    }

    /** So many first attempts that conform, of so many. */
    void share(String key, int conforming, int attempts) throws IOException {
        object(key, () -> {
            count("conforming", conforming);
            count("attempts", attempts);
            number("share", attempts == 0 ? null : (Double) ((double) conforming / attempts));
        });
    }

    void stream(Stream stream) throws IOException {
        text("station", stream.station());
        text("spindle", stream.spindle());
    }
}
