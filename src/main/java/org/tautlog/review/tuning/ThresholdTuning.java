package org.tautlog.review.tuning;

import java.util.Objects;
import org.tautlog.spc.Answer;

/**
 * What the traces say about one criterion's threshold.
 *
 * @param criterion the criterion
 * @param present the specification's threshold
 * @param tuned the threshold with the least median error, or why there is none
 */
public record ThresholdTuning(OnsetCriterion criterion, Standing present, Answer<Tuned> tuned) {
    public ThresholdTuning {
        Objects.requireNonNull(criterion, "criterion");
        Objects.requireNonNull(present, "present");
        Objects.requireNonNull(tuned, "tuned");
    }

    /** {@return whether the traces speak for another threshold: the interval tells something, and leaves out the present one} */
    public boolean speaksForAnother() {
        return tuned.found()
                .filter(found -> !found.tellsNothing()
                        && !found.atEnd()
                        && !found.interval().contains(present.threshold()))
                .isPresent();
    }
}
