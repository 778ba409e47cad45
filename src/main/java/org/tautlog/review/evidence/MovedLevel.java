package org.tautlog.review.evidence;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.review.stream.Change;
import org.tautlog.review.stream.LevelChanges;
import org.tautlog.review.stream.Levels;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.review.stream.StreamCharts;
import org.tautlog.spc.Sample;
import org.tautlog.trace.TraceIdentity;

/**
 * A stretch of one spindle's tightenings in which a level may not be what it was: a verdict there proves nothing good.
 *
 * <p>The level before the first change counts as the good one. It is back where the median up to the next change is within
 * {@value #LEFT_OVER} of the largest move away from it. Source: common practice, no source.
 *
 * @param change the change that moved the level
 * @param backOrNull the change that brought it back; null where none did
 * @param begin place of the first tightening that may be moved
 * @param sure place of the first that is moved for certain, as bounds go
 * @param backFrom place of the first that may be back; where none is, past the last
 * @param end place of the first that is back for certain; where none is, past the last; of a step that a person explained
 *     the first at or after the moment of their word
 * @param opens whether it leaves the good level, so that a person may explain it
 * @param explained whether a person explained that it moved for good
 */
record MovedLevel(
        Change change,
        @Nullable Change backOrNull,
        int begin,
        int sure,
        int backFrom,
        int end,
        boolean opens,
        boolean explained) {
    private static final double LEFT_OVER = 0.25;

    /** {@return the change that brought the level back; empty where none did} */
    Optional<Change> back() {
        return Optional.ofNullable(backOrNull);
    }

    boolean holds(int place) {
        return place >= begin && place < end;
    }

    /** Whether the level may be moved somewhere between two places, both included. */
    boolean reaches(int from, int to) {
        return end > from && begin <= to;
    }

    /** Whether the level may move, or come back, between two places, both included. */
    boolean movesWithin(int from, int to) {
        return (sure >= from && begin <= to) || (end >= from && backFrom <= to);
    }

    /** Where a word that explains it must lie; empty where none can. */
    Optional<StepSpan> span(String place, List<TraceIdentity> identities) {
        var before = begin == 0 ? null : identities.get(begin - 1).time();
        var after = identities.get(sure).time();
        return opens && after != null
                ? Optional.of(new StepSpan(place, change.feature(), before, after))
                : Optional.empty();
    }

    /** All of one spindle, surest change first. */
    static List<MovedLevel> in(
            List<Levels> levels, List<BriefJudgement> there, @Nullable ExplainedStep explained, Duration clockMargin) {
        var charts = StreamCharts.withoutLimits(levels);
        var changes = LevelChanges.in(charts);
        var identities = there.stream().map(BriefJudgement::identity).toList();
        var moved = new ArrayList<MovedLevel>();
        for (var chart : charts) {
            var own = changes.stream()
                    .filter(change -> change.feature() == chart.feature())
                    .sorted(Comparator.comparingInt(change -> change.point().index()))
                    .toList();
            moved.addAll(ofOne(chart, own, identities, new Word(explained, clockMargin)));
        }
        moved.sort(Comparator.comparingDouble(one -> one.change.point().pValue()));
        return moved;
    }

    /** A person's word on a step, if there is one. */
    private record Word(@Nullable ExplainedStep step, Duration clockMargin) {
        /**
         * The step as their word has it. It meets the step where its moment lies between the last tightening before the
         * step for certain and the first after it for certain; any other step holds as before.
         */
        Optional<MovedLevel> on(MovedLevel moved, List<TraceIdentity> identities) {
            if (step == null) {
                return Optional.empty();
            }
            var moment = step.from();
            boolean early = moved.begin > 0
                    && moment.isBefore(time(identities.get(moved.begin - 1)).minus(clockMargin));
            boolean late = moment.isAfter(time(identities.get(moved.sure)).plus(clockMargin));
            if (early || late) {
                return Optional.empty();
            }
            int end = moved.begin;
            while (end < identities.size() && time(identities.get(end)).isBefore(moment)) {
                end++;
            }
            return Optional.of(new MovedLevel(moved.change, null, moved.begin, moved.sure, end, end, true, true));
        }

        private static OffsetDateTime time(TraceIdentity identity) {
            var time = identity.time();
            return time == null ? OffsetDateTime.MAX : time;
        }
    }

    private static List<MovedLevel> ofOne(
            StreamChart chart, List<Change> changes, List<TraceIdentity> identities, Word word) {
        var moved = new ArrayList<MovedLevel>();
        var away = new ArrayList<Change>();
        double good = 0;
        double farthest = 0;
        for (int i = 0; i < changes.size(); i++) {
            if (away.isEmpty()) {
                good = level(chart, changes, i);
                farthest = 0;
            }
            var change = changes.get(i);
            var explained = away.isEmpty()
                    ? word.on(of(change, null, true, chart, identities), identities)
                    : Optional.<MovedLevel>empty();
            if (explained.isPresent()) {
                moved.add(explained.get());
                continue;
            }
            double left = Math.abs(level(chart, changes, i + 1) - good);
            if (!away.isEmpty() && left <= LEFT_OVER * farthest) {
                moved.addAll(left(away, change, chart, identities));
                away.clear();
            } else {
                away.add(change);
                farthest = Math.max(farthest, left);
            }
        }
        moved.addAll(left(away, null, chart, identities));
        return moved;
    }

    /** Levels that lie away from the good one, the first of which left it. */
    private static List<MovedLevel> left(
            List<Change> away, @Nullable Change back, StreamChart chart, List<TraceIdentity> identities) {
        return away.stream()
                .map(one -> of(one, back, one.equals(away.get(0)), chart, identities))
                .toList();
    }

    /** The median between two changes that follow each other, counted from the stretch before the first of all. */
    private static double level(StreamChart chart, List<Change> changes, int stretch) {
        int from = stretch == 0 ? 0 : changes.get(stretch - 1).point().index();
        int to = stretch == changes.size()
                ? chart.values().size()
                : changes.get(stretch).point().index();
        return Sample.derived(chart.values().subList(from, to).stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray())
                .median();
    }

    private static MovedLevel of(
            Change change, @Nullable Change back, boolean opens, StreamChart chart, List<TraceIdentity> identities) {
        int earliest = change.point().earliest();
        int begin = earliest == 0 ? 0 : identities.indexOf(chart.tightenings().get(earliest - 1)) + 1;
        int sure = identities.indexOf(chart.tightenings().get(change.point().latest()));
        return back == null
                ? new MovedLevel(change, null, begin, sure, identities.size(), identities.size(), opens, false)
                : new MovedLevel(
                        change,
                        back,
                        begin,
                        sure,
                        identities.indexOf(chart.tightenings().get(back.point().earliest())),
                        identities.lastIndexOf(
                                chart.tightenings().get(back.point().latest())),
                        opens,
                        false);
    }
}
