package org.tautlog.review.evidence;

import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.stream.ChartedFeature;

/**
 * Where a level steps away from the good one. A person's word explains the step where its moment lies in this span.
 *
 * @param place the spindle in words
 * @param feature what moves
 * @param fromOrNull the last tightening before the step for certain; null where none is before it
 * @param to the first tightening after it for certain
 */
public record StepSpan(
        String place, ChartedFeature feature, @Nullable OffsetDateTime fromOrNull, OffsetDateTime to) {
    public StepSpan {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(to, "to");
    }

    /** {@return the last tightening before the step for certain; empty where any earlier moment lies in the span} */
    public Optional<OffsetDateTime> from() {
        return Optional.ofNullable(fromOrNull);
    }
}
