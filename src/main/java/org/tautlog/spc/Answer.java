package org.tautlog.spc;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a statistic gives back: the result, or a plain statement of why there is none. Nothing in this room returns NaN
 * or throws because of the data.
 *
 * @param <T> what is found
 */
public sealed interface Answer<T> {
    /**
     * A result.
     *
     * @param <T> what is found
     * @param value the result
     */
    record Found<T>(T value) implements Answer<T> {}

    /**
     * No result.
     *
     * @param <T> what was asked for
     * @param reason the kind of reason
     * @param said one sentence for the reader, with the numbers
     */
    record Missing<T>(Reason reason, String said) implements Answer<T> {}

    /**
     * Wraps a result.
     *
     * @param <T> what is found
     * @param value the result
     * @return the answer
     */
    static <T> Answer<T> of(T value) {
        return new Found<>(value);
    }

    /**
     * States why there is no result.
     *
     * @param <T> what was asked for
     * @param reason the kind of reason
     * @param said one sentence for the reader
     * @return the answer
     */
    static <T> Answer<T> missing(Reason reason, String said) {
        return new Missing<>(reason, said);
    }

    /** {@return the result, empty when missing} */
    default Optional<T> found() {
        return this instanceof Found<T> it ? Optional.of(it.value()) : Optional.empty();
    }

    /** {@return the kind of reason, empty when found} */
    default Optional<Reason> missingFor() {
        return this instanceof Missing<T> it ? Optional.of(it.reason()) : Optional.empty();
    }

    /** {@return the sentence that says why there is no result, empty when found} */
    default Optional<String> whyMissing() {
        return this instanceof Missing<T> it ? Optional.of(it.said()) : Optional.empty();
    }

    /**
     * Carries the result on; a reason passes through unchanged.
     *
     * @param <R> what is found next
     * @param next what to do with the result
     * @return the next answer
     */
    default <R> Answer<R> map(Function<? super T, ? extends R> next) {
        return flatMap(value -> of(next.apply(value)));
    }

    /**
     * Carries the result on to a step that may itself have no result.
     *
     * @param <R> what is found next
     * @param next the next step
     * @return the next answer
     */
    default <R> Answer<R> flatMap(Function<? super T, Answer<R>> next) {
        if (this instanceof Found<T> it) return next.apply(it.value());
        var missing = (Missing<T>) this;
        return missing(missing.reason(), missing.said());
    }

    /**
     * {@return the result}
     *
     * @throws IllegalStateException with the stated reason when there is none
     */
    default T orThrow() {
        return found().orElseThrow(() -> new IllegalStateException(whyMissing().orElse("no result")));
    }
}
