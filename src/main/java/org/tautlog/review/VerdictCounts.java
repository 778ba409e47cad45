package org.tautlog.review;

import org.tautlog.judge.Verdict;

/**
 * How many tightenings got which verdict.
 *
 * @param conforming nothing speaks against them
 * @param review a person must look
 * @param unjudged the data was too poor
 * @param nonconforming they do not conform
 */
public record VerdictCounts(int conforming, int review, int unjudged, int nonconforming) {
    public VerdictCounts {
        if (conforming < 0 || review < 0 || unjudged < 0 || nonconforming < 0) {
            throw new IllegalArgumentException("counts are " + conforming + ", " + review + ", " + unjudged + ", "
                    + nonconforming + "; a count is not negative");
        }
    }

    /** {@return no tightening yet} */
    public static VerdictCounts none() {
        return new VerdictCounts(0, 0, 0, 0);
    }

    /**
     * Counts one more.
     *
     * @param verdict its verdict
     * @return the counts with it
     */
    public VerdictCounts plus(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> new VerdictCounts(conforming + 1, review, unjudged, nonconforming);
            case REVIEW -> new VerdictCounts(conforming, review + 1, unjudged, nonconforming);
            case UNJUDGED -> new VerdictCounts(conforming, review, unjudged + 1, nonconforming);
            case NONCONFORMING -> new VerdictCounts(conforming, review, unjudged, nonconforming + 1);
        };
    }

    /**
     * The count of one verdict.
     *
     * @param verdict which one
     * @return how many
     */
    public int of(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> conforming;
            case REVIEW -> review;
            case UNJUDGED -> unjudged;
            case NONCONFORMING -> nonconforming;
        };
    }

    /** {@return all of them} */
    public int total() {
        return conforming + review + unjudged + nonconforming;
    }

    /** {@return those that are not conforming} */
    public int needingAPerson() {
        return total() - conforming;
    }
}
