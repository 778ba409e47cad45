package org.tautlog.spc.change;

/**
 * How a change point is looked for.
 *
 * @param shortestSegment fewest values on either side of a change, at least 2; nearer to an end a change cannot be told
 *     from a stray
 * @param confidence confidence of the bounds on time and size, above 0 and below 1
 * @param significance p value at or below which a change is reported, above 0 and below 1
 */
public record ChangeOptions(int shortestSegment, double confidence, double significance) {
    /** Checks the arguments. */
    public ChangeOptions {
        if (shortestSegment < 2)
            throw new IllegalArgumentException("shortestSegment is " + shortestSegment + "; it must be at least 2");
        if (!(confidence > 0 && confidence < 1))
            throw new IllegalArgumentException("confidence is " + confidence + "; it must lie between 0 and 1");
        if (!(significance > 0 && significance < 1))
            throw new IllegalArgumentException("significance is " + significance + "; it must lie between 0 and 1");
    }

    /** {@return five values at least on either side, 95 % bounds, reported at p up to 0.01} */
    public static ChangeOptions withDefaults() {
        return new ChangeOptions(5, 0.95, 0.01);
    }
}
