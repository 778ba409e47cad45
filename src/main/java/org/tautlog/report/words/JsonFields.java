package org.tautlog.report.words;

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
public final class JsonFields {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final MathContext DIGITS = new MathContext(7);

    /** How many entries of a list that grows with the tightenings are written. */
    public static final int MOST = 500;

    /** Fields within an object. */
    public interface Body {
        /**
         * Writes them.
         *
         * @throws IOException where they cannot be written
         */
        void write() throws IOException;
    }

    /**
     * Fields of one item of a list.
     *
     * @param <T> what the list holds
     */
    public interface Item<T> {
        /**
         * Writes them.
         *
         * @param item the item
         * @throws IOException where they cannot be written
         */
        void write(T item) throws IOException;
    }

    private final JsonGenerator json;

    /**
     * Writes into an object that is open.
     *
     * @param json where to; left open
     */
    public JsonFields(JsonGenerator json) {
        this.json = json;
    }

    /** Fields of an object of their own. */
    public interface Fields {
        /**
         * Writes them.
         *
         * @param json where to
         * @throws IOException where they cannot be written
         */
        void write(JsonFields json) throws IOException;
    }

    /**
     * One object on one line.
     *
     * @param fields writes its fields
     * @return the object without a line end
     */
    public static String line(Fields fields) {
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

    /**
     * An object within this one.
     *
     * @param key its key
     * @param body writes its fields
     * @throws IOException where it cannot be written
     */
    public void object(String key, Body body) throws IOException {
        json.writeObjectFieldStart(key);
        body.write();
        json.writeEndObject();
    }

    /**
     * A list of objects.
     *
     * @param key its key
     * @param items what it holds
     * @param fields writes the fields of one item
     * @param <T> what it holds
     * @throws IOException where it cannot be written
     */
    public <T> void list(String key, List<T> items, Item<T> fields) throws IOException {
        json.writeArrayFieldStart(key);
        for (T item : items) {
            json.writeStartObject();
            fields.write(item);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /**
     * A list that grows with the tightenings: its first entries, the worst, and as {@code keyLeft} how many were left out.
     *
     * @param key its key
     * @param items what it holds, the worst first
     * @param fields writes the fields of one item
     * @param <T> what it holds
     * @throws IOException where it cannot be written
     */
    public <T> void worst(String key, List<T> items, Item<T> fields) throws IOException {
        list(key, items.subList(0, Math.min(MOST, items.size())), fields);
        count(key + "Left", Math.max(0, items.size() - MOST));
    }

    /**
     * A list of texts that grows with the tightenings, ended as {@link #worst} ends one.
     *
     * @param key its key
     * @param texts what it holds, the worst first
     * @throws IOException where it cannot be written
     */
    public void worstTexts(String key, List<String> texts) throws IOException {
        texts(key, texts.stream().limit(MOST));
        count(key + "Left", Math.max(0, texts.size() - MOST));
    }

    /**
     * A list of texts.
     *
     * @param key its key
     * @param texts what it holds
     * @throws IOException where it cannot be written
     */
    public void texts(String key, java.util.stream.Stream<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (Iterator<String> all = texts.iterator(); all.hasNext(); ) {
            json.writeString(all.next());
        }
        json.writeEndArray();
    }

    /**
     * A text.
     *
     * @param key its key
     * @param text the text; null where there is none
     * @throws IOException where it cannot be written
     */
    public void text(String key, @Nullable String text) throws IOException {
        json.writeStringField(key, text);
    }

    /**
     * What there is none of.
     *
     * @param key its key
     * @throws IOException where it cannot be written
     */
    public void none(String key) throws IOException {
        json.writeNullField(key);
    }

    /**
     * How many.
     *
     * @param key its key
     * @param count how many
     * @throws IOException where it cannot be written
     */
    public void count(String key, long count) throws IOException {
        json.writeNumberField(key, count);
    }

    /**
     * A number with the digits that it has.
     *
     * @param key its key
     * @param value the number as the caller has rounded it
     * @throws IOException where it cannot be written
     */
    public void rounded(String key, BigDecimal value) throws IOException {
        json.writeNumberField(key, value);
    }

    /**
     * A number with all its digits, without zeros behind.
     *
     * @param key its key
     * @param value the number; finite
     * @throws IOException where it cannot be written
     */
    public void exact(String key, double value) throws IOException {
        rounded(key, BigDecimal.valueOf(value).stripTrailingZeros());
    }

    /**
     * What is JSON already.
     *
     * @param key its key
     * @param value one JSON value, not checked
     * @throws IOException where it cannot be written
     */
    public void raw(String key, String value) throws IOException {
        json.writeFieldName(key);
        json.writeRawValue(value);
    }

    /**
     * Whether something is so.
     *
     * @param key its key
     * @param whether whether it is
     * @throws IOException where it cannot be written
     */
    public void yes(String key, boolean whether) throws IOException {
        json.writeBooleanField(key, whether);
    }

    /**
     * A time, ISO 8601 with the offset that the plant recorded.
     *
     * @param key its key
     * @param time the time; null where it is not known
     * @throws IOException where it cannot be written
     */
    public void time(String key, @Nullable OffsetDateTime time) throws IOException {
        if (time == null) {
            json.writeNullField(key);
        } else {
            json.writeStringField(key, time.toString());
        }
    }

    /**
     * A number to seven digits; null where there is none.
     *
     * @param key its key
     * @param value the number; null or not finite where there is none
     * @throws IOException where it cannot be written
     */
    public void number(String key, @Nullable Double value) throws IOException {
        json.writeFieldName(key);
        if (value == null || !Double.isFinite(value)) {
            json.writeNull();
        } else {
            json.writeNumber(new BigDecimal(value, DIGITS).stripTrailingZeros());
        }
    }

    /**
     * So many first attempts that conform, of so many.
     *
     * @param key its key
     * @param conforming how many conform
     * @param attempts of how many; of none the share is null
     * @throws IOException where it cannot be written
     */
    public void share(String key, int conforming, int attempts) throws IOException {
        object(key, () -> {
            count("conforming", conforming);
            count("attempts", attempts);
            number("share", attempts == 0 ? null : (Double) ((double) conforming / attempts));
        });
    }

    /**
     * Station and spindle, under these two keys.
     *
     * @param stream the spindle
     * @throws IOException where it cannot be written
     */
    public void stream(Stream stream) throws IOException {
        text("station", stream.station());
        text("spindle", stream.spindle());
    }
}
