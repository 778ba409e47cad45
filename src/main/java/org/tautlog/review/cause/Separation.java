package org.tautlog.review.cause;

import java.util.Objects;

/**
 * Two causes that the curves leave open, with the check on the floor that tells them apart.
 *
 * @param one the likelier cause
 * @param other the other
 * @param check what to do
 * @param pattern in which streams something differs
 */
public record Separation(Cause one, Cause other, FloorCheck check, Pattern pattern) {
    public Separation {
        Objects.requireNonNull(one, "one");
        Objects.requireNonNull(other, "other");
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(pattern, "pattern");
        if (check.seen(one).equals(check.seen(other))) {
            throw new IllegalArgumentException(check + " gives the same answer for " + one + " and " + other);
        }
    }

    static Separation of(Cause one, Cause other, Pattern pattern) {
        return new Separation(one, other, FloorCheck.between(one, other), pattern);
    }

    /** {@return what to do and what each of the two causes would show, as one sentence} */
    public String sentence() {
        var act = check.act(pattern);
        return Character.toUpperCase(act.charAt(0)) + act.substring(1) + ": where " + check.seen(one) + ", it is "
                + one.title() + "; where " + check.seen(other) + ", it is " + other.title() + '.';
    }
}
