package org.tautlog.review.evidence;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.stream.ChartedFeature;

/**
 * A person's word on a step, and which of a spindle's steps it meets.
 *
 * @param word the word
 * @param features what moves for good by it; never empty
 * @param meetsChange whether the level that a containment tells of is among them
 * @param missedOrNull where the step of that level lies, if the word does not meet it and could; null otherwise
 */
public record WordMet(
        ExplainedStep word,
        List<ChartedFeature> features,
        boolean meetsChange,
        @Nullable StepSpan missedOrNull) {
    public WordMet {
        Objects.requireNonNull(word, "word");
        features = List.copyOf(features);
        if (features.isEmpty()) {
            throw new IllegalArgumentException("features is empty; a word that met a step explains at least 1");
        }
    }

    /** {@return where the step of the level told of lies; empty where the word meets it or no word can} */
    public Optional<StepSpan> missed() {
        return Optional.ofNullable(missedOrNull);
    }
}
