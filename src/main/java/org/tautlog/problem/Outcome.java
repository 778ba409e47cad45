package org.tautlog.problem;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A value read from outside with the problems met on the way; where the value is absent the problems say why.
 *
 * @param <T> the type of the value
 * @param valueOrNull the value; null where none could be read
 * @param problems every problem met, in order
 */
public record Outcome<T>(@Nullable T valueOrNull, List<Problem> problems) {
    public Outcome {
        problems = List.copyOf(problems);
        if (valueOrNull == null && problems.isEmpty()) {
            throw new IllegalArgumentException("an outcome without a value must hold the problem that explains it");
        }
    }

    /**
     * A value with the problems met on the way.
     *
     * @param <T> the type of the value
     * @param value the value
     * @param problems the problems that did not prevent it
     * @return the outcome
     */
    public static <T> Outcome<T> of(T value, List<Problem> problems) {
        return new Outcome<>(value, problems);
    }

    /**
     * No value, and why.
     *
     * @param <T> the type of the value
     * @param problems at least one problem
     * @return the outcome
     */
    public static <T> Outcome<T> failed(List<Problem> problems) {
        return new Outcome<>(null, problems);
    }

    /** {@return the value, empty where none could be read} */
    public Optional<T> value() {
        return Optional.ofNullable(valueOrNull);
    }
}
