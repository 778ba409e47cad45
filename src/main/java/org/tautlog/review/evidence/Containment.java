package org.tautlog.review.evidence;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.stream.Change;
import org.tautlog.trace.TraceIdentity;

/**
 * Which engines one cause may have touched, in one place.
 *
 * <p>The bracket runs from the last of {@value #GOOD_RUN} conforming tightenings in a row before the suspects to the first
 * of as many after them, on the same spindle; both ends are outside. Where a level moved there, no tightening counts as
 * known good from the earliest at which it may have moved to the latest at which it may have come back; while it has not
 * come back, the bracket is open to its end, unless a person explained that step: then it counts as moved up to the moment
 * of their word. Where clocks may differ, both ends then lie that much further out.
 * A lot that the cause goes with is a place of its own, without a bracket. Source: common practice, no source.
 *
 * @param place the spindle in words, or the lot
 * @param cause the finding in words; empty where any tightening that does not conform counts
 * @param lastGoodOrNull last known good; null where the archive has none, so that the bracket is open to its beginning
 * @param firstGoodOrNull first known good; null where the archive has none, so that the bracket is open to its end
 * @param changeOrNull the level that moved there, before one that came back one that did not; null where none did for
 *     certain
 * @param backOrNull the change that brought this level back; null where none did
 * @param contained what is in, in order of time, those without a recording last
 * @param searched how many tightenings the place has in the archive
 * @param clockMargin by how much clocks may differ; zero where they are taken as set alike
 * @param courseOrNull the course of a feature around the bracket; null where none is charted, as of a lot
 * @param explainedOrNull a person's word on a step there; null where there is none, or it meets no step of this place
 * @param lots the bolt lots met inside, most met first; none where the place is a lot
 */
public record Containment(
        String place,
        String cause,
        @Nullable TraceIdentity lastGoodOrNull,
        @Nullable TraceIdentity firstGoodOrNull,
        @Nullable Change changeOrNull,
        @Nullable Change backOrNull,
        List<Contained> contained,
        int searched,
        Duration clockMargin,
        @Nullable BracketCourse courseOrNull,
        @Nullable WordMet explainedOrNull,
        List<LotReach> lots) {
    /** How many conforming tightenings in a row count as known good. */
    public static final int GOOD_RUN = 5;

    public Containment {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(cause, "cause");
        contained = List.copyOf(contained);
        lots = List.copyOf(lots);
        if (clockMargin.isNegative()) {
            throw new IllegalArgumentException("clockMargin is " + clockMargin + "; clocks differ by 0 or more");
        }
    }

    /** {@return last known good; empty where the bracket is open to the beginning of the archive} */
    public Optional<TraceIdentity> lastGood() {
        return Optional.ofNullable(lastGoodOrNull);
    }

    /** {@return first known good; empty where the bracket is open to the end of the archive} */
    public Optional<TraceIdentity> firstGood() {
        return Optional.ofNullable(firstGoodOrNull);
    }

    /** {@return the level that moved there} */
    public Optional<Change> change() {
        return Optional.ofNullable(changeOrNull);
    }

    /** {@return the change that brought the moved level back} */
    public Optional<Change> back() {
        return Optional.ofNullable(backOrNull);
    }

    /** {@return the course of a feature around the bracket; empty where none is charted} */
    public Optional<BracketCourse> course() {
        return Optional.ofNullable(courseOrNull);
    }

    /** {@return a person's word on a step there; empty where there is none that meets one} */
    public Optional<WordMet> explained() {
        return Optional.ofNullable(explainedOrNull);
    }

    /** {@return whether the level told of moved and neither came back nor was explained, so that the bracket is open} */
    public boolean isStillMoved() {
        return changeOrNull != null
                && backOrNull == null
                && explained().stream().noneMatch(WordMet::meetsChange);
    }

    /** {@return the engines to hold, in order} */
    public List<String> engines() {
        return contained.stream().map(Contained::serial).distinct().sorted().toList();
    }
}
