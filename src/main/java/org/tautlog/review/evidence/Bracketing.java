package org.tautlog.review.evidence;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.Levels;
import org.tautlog.review.stream.Stream;
import org.tautlog.trace.TraceIdentity;

/** Finds the bracket of a cause among all judgements that stand. */
public final class Bracketing {
    private final StandingSearch all;
    private final Duration clockMargin;
    private final @Nullable ExplainedStep explained;
    private final BoltLots lots;
    private final Set<StepSpan> steps = new LinkedHashSet<>();

    /**
     * A search among judgements.
     *
     * @param standing the judgements that stand
     * @param clockMargin by how much clocks may differ; zero where they are taken as set alike
     */
    public Bracketing(StandingSearch standing, Duration clockMargin) {
        this(standing, clockMargin, null);
    }

    /**
     * A search among judgements that takes a person's word on a step.
     *
     * @param standing the judgements that stand
     * @param clockMargin by how much clocks may differ; zero where they are taken as set alike
     * @param explained a person's word on a step for good; null where there is none, so that every step holds
     */
    public Bracketing(StandingSearch standing, Duration clockMargin, @Nullable ExplainedStep explained) {
        all = standing;
        this.clockMargin = clockMargin;
        this.explained = explained;
        lots = new BoltLots(standing, clockMargin);
    }

    /**
     * The bracket around suspects on one spindle.
     *
     * @param stream the spindle
     * @param code the finding that the suspects share; null where whatever does not conform counts
     * @param suspect which tightenings of the spindle the bracket must hold
     * @return the bracket; empty where no tightening of the spindle is suspect
     * @throws IOException where the judgements cannot be read
     */
    public Optional<Containment> around(Stream stream, @Nullable FindingCode code, Predicate<BriefJudgement> suspect)
            throws IOException {
        var there = all.ofStream(stream);
        int first = -1;
        int last = -1;
        for (int i = 0; i < there.size(); i++) {
            if (suspect.test(there.get(i))) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        if (first < 0) {
            return Optional.empty();
        }
        boolean timed = there.stream().allMatch(one -> one.identity().time() != null);
        var levels = timed ? all.levels(stream) : List.<Levels>of();
        var moved = timed ? moved(levels, there, code, first, last) : List.<MovedLevel>of();
        int inner = timed ? lastGood(there, moved, first) : -1;
        int innerEnd = timed ? firstGood(there, moved, last) : there.size();
        int begin = timed ? earlier(there, inner) : inner;
        int end = timed ? later(there, innerEnd) : innerEnd;
        var contained = new ArrayList<Contained>();
        for (int i = begin + 1; i < end; i++) {
            var beyond = i <= inner || i >= innerEnd ? Contained.Reason.CLOCK_MARGIN : Contained.Reason.INSIDE;
            var one = there.get(i);
            contained.add(
                    new Contained(one.identity().serial(), one.shows(code) ? Contained.Reason.SHOWS_IT : beyond, one));
        }
        if (timed) {
            contained.addAll(unrecorded(stream, there, begin, end));
        }
        var told = moved.stream()
                .filter(level -> level.reaches(inner + 1, innerEnd - 1))
                .min(Comparator.comparing(one -> one.back().isPresent() || one.explained()));
        var identities = there.stream().map(BriefJudgement::identity).toList();
        moved.forEach(level -> level.span(stream.words(), identities).ifPresent(steps::add));
        return Optional.of(new Containment(
                stream.words(),
                code == null ? "" : code.title(),
                begin < 0 ? null : there.get(begin).identity(),
                end >= there.size() ? null : there.get(end).identity(),
                told.map(MovedLevel::change).orElse(null),
                told.flatMap(MovedLevel::back).orElse(null),
                contained,
                there.size(),
                clockMargin,
                timed
                        ? BracketCourse.of(levels, there, code, suspect, begin, end, told, moved)
                                .orElse(null)
                        : null,
                met(moved, told, stream, identities),
                lots.met(contained)));
    }

    /** {@return where the levels step that held the brackets so far, as far as a person's word may explain them} */
    public List<StepSpan> steps() {
        return List.copyOf(steps);
    }

    private @Nullable WordMet met(
            List<MovedLevel> moved, Optional<MovedLevel> told, Stream stream, List<TraceIdentity> identities) {
        var features = moved.stream()
                .filter(MovedLevel::explained)
                .map(level -> level.change().feature())
                .distinct()
                .sorted()
                .toList();
        if (explained == null || features.isEmpty()) {
            return null;
        }
        return new WordMet(
                explained,
                features,
                told.filter(MovedLevel::explained).isPresent(),
                told.filter(level -> !level.explained())
                        .flatMap(level -> level.span(stream.words(), identities))
                        .orElse(null));
    }

    private static int lastGood(List<BriefJudgement> there, List<MovedLevel> moved, int suspect) {
        int run = 0;
        for (int i = suspect - 1; i >= 0; i--) {
            run = isGood(there, moved, i) ? run + 1 : 0;
            if (run == Containment.GOOD_RUN) {
                return i + Containment.GOOD_RUN - 1;
            }
        }
        return -1;
    }

    private static int firstGood(List<BriefJudgement> there, List<MovedLevel> moved, int suspect) {
        int run = 0;
        for (int i = suspect + 1; i < there.size(); i++) {
            run = isGood(there, moved, i) ? run + 1 : 0;
            if (run == Containment.GOOD_RUN) {
                return i - Containment.GOOD_RUN + 1;
            }
        }
        return there.size();
    }

    /** Tightening by tightening a moved level may conform. */
    private static boolean isGood(List<BriefJudgement> there, List<MovedLevel> moved, int place) {
        return there.get(place).verdict() == Verdict.CONFORMING
                && moved.stream().noneMatch(level -> level.holds(place));
    }

    /**
     * The moved levels that count, surest first. Without a finding all that moved up to the suspects; with one only those
     * that move or come back there, as an older move need not have to do with it.
     */
    private List<MovedLevel> moved(
            List<Levels> levels, List<BriefJudgement> there, @Nullable FindingCode code, int first, int last) {
        int from = lastGood(there, List.of(), first) - Containment.GOOD_RUN + 1;
        return MovedLevel.in(levels, there, explained, clockMargin).stream()
                .filter(level -> code == null ? level.begin() <= last : level.movesWithin(from, last))
                .toList();
    }

    /** The last tightening that lies before the bracket by more than clocks may differ. */
    private int earlier(List<BriefJudgement> there, int begin) {
        var edge = when(there.get(begin + 1)).minus(clockMargin);
        int last = begin;
        while (last >= 0 && !clockMargin.isZero() && !when(there.get(last)).isBefore(edge)) {
            last--;
        }
        return last;
    }

    /** The first tightening that lies after the bracket by more than clocks may differ. */
    private int later(List<BriefJudgement> there, int end) {
        var edge = when(there.get(end - 1)).plus(clockMargin);
        int first = end;
        while (first < there.size()
                && !clockMargin.isZero()
                && !when(there.get(first)).isAfter(edge)) {
            first++;
        }
        return first;
    }

    /** Engines that were at the station within the bracket and have no recording of this spindle at all. */
    private List<Contained> unrecorded(Stream stream, List<BriefJudgement> there, int begin, int end)
            throws IOException {
        var from = begin < 0 ? null : when(there.get(begin)).minus(clockMargin);
        var to = end >= there.size() ? null : when(there.get(end)).plus(clockMargin);
        var engines = all.engines(stream.station(), from, to);
        there.forEach(one -> engines.remove(one.identity().serial()));
        return engines.stream()
                .map(serial -> new Contained(serial, Contained.Reason.NO_RECORDING, null))
                .toList();
    }

    private static Instant when(BriefJudgement judgement) {
        var time = judgement.identity().time();
        return time == null ? Instant.MAX : time.toInstant();
    }
}
