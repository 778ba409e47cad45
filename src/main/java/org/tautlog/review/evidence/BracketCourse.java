package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.Levels;
import org.tautlog.trace.TraceIdentity;

/**
 * One feature along a spindle's tightenings, around a bracket. Places count all tightenings of the spindle in order of
 * time, from 0. Of a long course the least and the greatest value of each stretch are kept, and the first suspect.
 *
 * @param feature what is charted
 * @param first place of the first tightening looked at
 * @param last place of the last
 * @param n how many of these tightenings have the feature
 * @param points the values kept, in order
 * @param begin place of the last known good; below 0 where the bracket is open to the beginning
 * @param end place of the first known good; past the last tightening where the bracket is open to the end
 * @param changeOrNull where the level moved; null where none did for certain
 * @param backOrNull where it came back; null where it did not
 * @param explainedOrNull place of the first tightening from a person's word on; null where none explains a step of this
 *     feature
 */
public record BracketCourse(
        ChartedFeature feature,
        int first,
        int last,
        int n,
        List<Point> points,
        int begin,
        int end,
        @Nullable Step changeOrNull,
        @Nullable Step backOrNull,
        @Nullable Integer explainedOrNull) {
    /** How many points a course keeps at most, suspects aside. */
    public static final int MOST_POINTS = 600;

    /** At least so many tightenings are shown on either side, and not more than the most. */
    private static final int LEAST_AROUND = 20;

    private static final int MOST_AROUND = 200;

    /**
     * One tightening.
     *
     * @param place its place
     * @param value the feature, in its unit
     * @param suspect whether the search started from it
     */
    public record Point(int place, double value, boolean suspect) {}

    /**
     * Where a level moved.
     *
     * @param earliest place of the first tightening that may lie after it
     * @param likeliest place of the first tightening after its likeliest place
     * @param latest place of the first tightening that lies after it for certain, as bounds go
     */
    public record Step(int earliest, int likeliest, int latest) {}

    public BracketCourse {
        Objects.requireNonNull(feature, "feature");
        points = List.copyOf(points);
    }

    /** {@return where the level moved; empty where none did for certain} */
    public Optional<Step> change() {
        return Optional.ofNullable(changeOrNull);
    }

    /** {@return where the level came back; empty where it did not} */
    public Optional<Step> back() {
        return Optional.ofNullable(backOrNull);
    }

    /** {@return place of the first tightening from a person's word on; empty where none explains a step there} */
    public OptionalInt explained() {
        return explainedOrNull == null ? OptionalInt.empty() : OptionalInt.of(explainedOrNull);
    }

    static Optional<BracketCourse> of(
            List<Levels> levels,
            List<BriefJudgement> there,
            @Nullable FindingCode code,
            Predicate<BriefJudgement> suspect,
            int begin,
            int end,
            Optional<MovedLevel> moved,
            List<MovedLevel> all) {
        int around = Math.max(LEAST_AROUND, Math.min(MOST_AROUND, end - begin));
        int first = Math.max(0, begin - around);
        int last = Math.min(there.size() - 1, end + around);
        var values = new HashMap<TraceIdentity, Levels>();
        levels.forEach(one -> values.put(one.identity(), one));
        var feature = moved.map(level -> level.change().feature()).orElse(shownBy(code));
        var points = new ArrayList<Point>();
        for (int i = first; i <= last; i++) {
            var one = there.get(i);
            var level = values.get(one.identity());
            var value = level == null ? null : level.values().get(feature);
            if (value != null) {
                points.add(new Point(i, value, suspect.test(one)));
            }
        }
        if (points.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new BracketCourse(
                feature,
                first,
                last,
                points.size(),
                thinned(points),
                begin,
                end,
                moved.map(level -> new Step(
                                level.begin(), place(there, level.change().first()), level.sure()))
                        .orElse(null),
                moved.flatMap(level -> level.back()
                                .map(back -> new Step(level.backFrom(), place(there, back.first()), level.end())))
                        .orElse(null),
                all.stream()
                        .filter(level -> level.explained() && level.change().feature() == feature)
                        .map(MovedLevel::end)
                        .findFirst()
                        .orElse(null)));
    }

    private static int place(List<BriefJudgement> there, TraceIdentity identity) {
        int place = 0;
        while (!there.get(place).identity().equals(identity)) {
            place++;
        }
        return place;
    }

    private static List<Point> thinned(List<Point> points) {
        if (points.size() <= MOST_POINTS) {
            return points;
        }
        int stretches = MOST_POINTS / 2;
        var kept = new ArrayList<Point>();
        for (int s = 0; s < stretches; s++) {
            var stretch = points.subList(
                    (int) ((long) points.size() * s / stretches), (int) ((long) points.size() * (s + 1) / stretches));
            var least = stretch.get(0);
            var greatest = least;
            Point suspect = null;
            for (var one : stretch) {
                least = one.value() < least.value() ? one : least;
                greatest = one.value() > greatest.value() ? one : greatest;
                suspect = suspect == null && one.suspect() ? one : suspect;
            }
            for (var one : stretch) {
                if (one.equals(least) || one.equals(greatest) || one.equals(suspect)) {
                    kept.add(one);
                }
            }
        }
        return kept;
    }

    /** The feature in which a finding shows; common practice, no source. */
    private static ChartedFeature shownBy(@Nullable FindingCode code) {
        if (code == null) {
            return ChartedFeature.FINAL_TORQUE;
        }
        return switch (code) {
            case TURN_SHORT, TURN_LONG, ANGLE_SLIP, ANGLE_JUMP -> ChartedFeature.TURN;
            case TORQUE_RATE_LOW, TORQUE_RATE_HIGH, HIGH_FRICTION, LOW_FRICTION, WRONG_PARTS, SOFT_SEATING ->
                ChartedFeature.TORQUE_RATE;
            default -> ChartedFeature.FINAL_TORQUE;
        };
    }
}
