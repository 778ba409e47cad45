package org.tautlog.spc.study;

import java.util.List;
import org.tautlog.spc.Answer;

/**
 * One test of a group of rows, whatever it tests.
 *
 * @param test what is tested, for readers
 * @param result what came out, or why the test cannot be made
 */
public record TestStudy(String test, Answer<Result> result) {
    /**
     * What a test gave.
     *
     * @param positive whether it found what it looks for
     * @param said the finding in one sentence part
     * @param figures its numbers by name, in reading order
     * @param marks the rows or pairs that it points at, in order
     */
    public record Result(boolean positive, String said, List<SeriesStudy.Figure> figures, List<Mark> marks) {
        /** Copies the lists. */
        public Result {
            figures = List.copyOf(figures);
            marks = List.copyOf(marks);
        }
    }

    /**
     * What a test points at.
     *
     * @param place where it is, for example {@code line 12}, or which pair
     * @param value the value there, or the pair's difference
     * @param said why it is pointed at
     */
    public record Mark(String place, double value, String said) {}

    /** {@return whether the test was made and found what it looks for} */
    public boolean positive() {
        return result.found().filter(Result::positive).isPresent();
    }
}
