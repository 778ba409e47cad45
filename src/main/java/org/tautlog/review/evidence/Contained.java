package org.tautlog.review.evidence;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.BriefJudgement;

/**
 * One tightening, or one that should be there, to be contained.
 *
 * @param serial the engine
 * @param reason why it is in
 * @param judgementOrNull the judgement that stands, in brief; null where there is no recording
 */
public record Contained(
        String serial, Reason reason, @Nullable BriefJudgement judgementOrNull) {
    /** Why a tightening is contained. */
    public enum Reason {
        /** It shows the cause itself. */
        SHOWS_IT("shows it"),
        /** The engine was at the station meanwhile and has no recording of this spindle: suspect, not good. */
        NO_RECORDING("no recording"),
        /** It lies between last known good and first known good. */
        INSIDE("inside the bracket"),
        /** It lies outside, by less than clocks may differ. */
        CLOCK_MARGIN("within the margin of clocks"),
        /** It has a bolt of the lot. */
        OF_THE_LOT("of the lot");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** {@return the reason in words} */
        public String words() {
            return words;
        }
    }

    public Contained {
        Objects.requireNonNull(serial, "serial");
        Objects.requireNonNull(reason, "reason");
    }

    /** {@return the judgement that stands; empty where there is no recording} */
    public Optional<BriefJudgement> judgement() {
        return Optional.ofNullable(judgementOrNull);
    }
}
