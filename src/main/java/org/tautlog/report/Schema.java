package org.tautlog.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.tautlog.report.words.Word;

/** The JSON that the program writes, each kind described by a JSON Schema (draft 2020-12). */
public enum Schema {
    /** What {@link org.tautlog.report.judged.JudgementJson} writes: one tightening. */
    JUDGEMENT,
    /** What {@link org.tautlog.report.shift.ShiftJson} writes. */
    SHIFT,
    /** What {@link org.tautlog.report.evidence.DossierJson} writes. */
    ENGINE,
    /** What {@link org.tautlog.report.evidence.ContainmentJson} writes. */
    CONTAINMENT,
    /** What {@link org.tautlog.report.evidence.ArchiveJson} writes. */
    ARCHIVE,
    /** What {@link org.tautlog.report.window.TuningJson} writes. */
    TUNING;

    private static final String REFERENCE = "\"$ref\": \"urn:tautlog:judgement:1\"";

    /**
     * A schema by its word.
     *
     * @param word the word
     * @return the schema; empty where there is none of that word
     */
    public static Optional<Schema> parse(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** {@return the word of this schema, as its file is named} */
    public String word() {
        return Word.of(this);
    }

    /** {@return the text of the schema; it holds every other schema that it refers to, so that it can be used alone} */
    public String text() {
        var text = kept();
        return text.contains(REFERENCE) ? bundled(text, JUDGEMENT.kept()) : text;
    }

    /** Draft 2020-12 lets a schema with an identity of its own stand among the definitions of another. */
    private static String bundled(String text, String other) {
        int end = text.lastIndexOf('}');
        return text.substring(0, end).stripTrailing() + ",\n  \"$defs\": {\n    \"judgement\": "
                + other.strip().replace("\n", "\n    ") + "\n  }\n}\n";
    }

    private String kept() {
        var file = "schema/" + word() + ".schema.json";
        try (var stream = Schema.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packed without " + file);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
