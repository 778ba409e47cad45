package org.tautlog.accuracy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.line.CausedShift;
import org.tautlog.line.CausedShift.Kind;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.review.cause.Cause;
import org.tautlog.review.cause.Diagnoses;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.cause.Pattern;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.trace.TraceIdentity;

/**
 * The study of causes: not a test but a program, run by {@code mvn -Dquick test -Dtest=CauseStudy}. It writes
 * {@code reports/causes.md}. The rules were set while shifts of the seeds 1 to 12 were looked at; the study takes others.
 */
class CauseStudy {
    private static final int N = 10;
    private static final long FIRST_SEED = 101;

    /** What was placed. */
    record Placed(Kind kind, double size, boolean withLot) {}

    /** One placed cause over many shifts. */
    record Graded(Placed placed, int n, int right, int untold, int unseen, Map<String, Integer> wrong) {
        int wrongs() {
            return wrong.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    static final List<Placed> PLACED = List.of(
            new Placed(Kind.TORQUE_SCALE, 0.03, false),
            new Placed(Kind.TORQUE_SCALE, 0.06, false),
            new Placed(Kind.TORQUE_SCALE, -0.06, false),
            new Placed(Kind.ANGLE_SCALE, 0.02, false),
            new Placed(Kind.ANGLE_SCALE, 0.04, false),
            new Placed(Kind.WIND_UP, 0.5, false),
            new Placed(Kind.WIND_UP, 2, false),
            new Placed(Kind.SNUG_TORQUE, 0.5, false),
            new Placed(Kind.SNUG_TORQUE, -0.4, false),
            new Placed(Kind.TURN, 3, false),
            new Placed(Kind.FRICTION, 0.06, false),
            new Placed(Kind.FRICTION, 0.12, false),
            new Placed(Kind.STIFFNESS, -0.06, false),
            new Placed(Kind.FRICTION, 0.06, true),
            new Placed(Kind.FRICTION, 0.12, true),
            new Placed(Kind.FRICTION, -0.12, true),
            new Placed(Kind.STRENGTH, -0.04, true),
            new Placed(Kind.STRENGTH, -0.08, true),
            new Placed(Kind.STIFFNESS, -0.04, true),
            new Placed(Kind.STIFFNESS, -0.08, true));

    private static final Map<Long, Map<TraceIdentity, Judgement>> BASE = new ConcurrentHashMap<>();

    @Test
    void write_the_report() throws IOException {
        var graded = new ArrayList<Graded>();
        for (var placed : PLACED) {
            graded.add(grade(placed, FIRST_SEED, N));
        }
        Files.writeString(Path.of("reports", "causes.md"), CausePage.of(graded, untouched(FIRST_SEED, N)));
    }

    static Graded grade(Placed placed, long firstSeed, int n) {
        int[] counts = new int[3];
        var wrong = new TreeMap<String, Integer>();
        LongStream.range(firstSeed, firstSeed + n)
                .parallel()
                .mapToObj(seed -> diagnosed(placed, seed).stream()
                        .filter(one -> one.what().equals(placed.withLot() ? "lot A18" : CausedShift.touched(seed)))
                        .findFirst())
                .toList()
                .forEach(one -> count(placed, one, counts, wrong));
        return new Graded(placed, n, counts[0], counts[1], counts[2], wrong);
    }

    /** What was named in shifts in which nothing was placed. */
    record Untouched(int shifts, int spindles, int tightenings, int stoodOut, Map<String, Integer> lots) {}

    static Untouched untouched(long firstSeed, int n) {
        var all = LongStream.range(firstSeed, firstSeed + n)
                .parallel()
                .mapToObj(seed -> diagnosed(new Placed(Kind.NOTHING, 0, false), seed))
                .toList()
                .stream()
                .flatMap(List::stream)
                .toList();
        var lots = new TreeMap<String, Integer>();
        all.stream()
                .filter(one -> one.pattern() == Pattern.ONE_LOT)
                .forEach(one -> lots.merge(
                        one.named().map(named -> named.cause().title()).orElse("cannot tell"), 1, Integer::sum));
        return new Untouched(
                n,
                named(all, Pattern.ONE_SPINDLE),
                named(all, Pattern.ONE_TIGHTENING),
                (int) all.stream()
                        .filter(one -> one.pattern() == Pattern.ONE_TIGHTENING)
                        .count(),
                lots);
    }

    private static int named(List<Diagnosis> all, Pattern pattern) {
        return (int) all.stream()
                .filter(one -> one.pattern() == pattern && one.named().isPresent())
                .count();
    }

    private static void count(Placed placed, Optional<Diagnosis> one, int[] counts, Map<String, Integer> wrong) {
        if (one.isEmpty()) {
            counts[2]++;
        } else if (one.get().named().isEmpty()) {
            counts[1]++;
        } else {
            var named = one.get().named().get();
            boolean right = named.cause() == cause(placed.kind()) && named.size() * placed.size() > 0;
            if (right) {
                counts[0]++;
            } else {
                wrong.merge(named.cause().title(), 1, Integer::sum);
            }
        }
    }

    static Cause cause(Kind kind) {
        return switch (kind) {
            case FRICTION -> Cause.FRICTION;
            case STRENGTH -> Cause.BOLT_STRENGTH;
            case STIFFNESS -> Cause.JOINT_STIFFNESS;
            case TORQUE_SCALE -> Cause.TORQUE_SCALE;
            case ANGLE_SCALE -> Cause.ANGLE_SCALE;
            case WIND_UP -> Cause.WIND_UP;
            case SNUG_TORQUE -> Cause.SNUG_TORQUE;
            case TURN -> Cause.TURN;
            case NOTHING -> throw new IllegalArgumentException("nothing has no cause");
        };
    }

    static List<Diagnosis> diagnosed(Placed placed, long seed) {
        var shift = new LinkedHashMap<>(
                BASE.computeIfAbsent(seed, key -> judged(CausedShift.tightenings(Kind.NOTHING, 0, false, key))));
        if (placed.kind() != Kind.NOTHING) {
            shift.putAll(judged(CausedShift.tightenings(placed.kind(), placed.size(), placed.withLot(), seed)));
        }
        var judgements = List.copyOf(shift.values());
        var specification = FenwaterEngine.specification();
        return Diagnoses.of(judgements, specification, StreamReview.of(judgements, specification.window()));
    }

    /** By engine, station and spindle: a cause may change how long a tightening takes. */
    private static Map<TraceIdentity, Judgement> judged(List<SimulatedTightening> tightenings) {
        var judged = new LinkedHashMap<TraceIdentity, Judgement>();
        for (var one : tightenings) {
            var own = one.trace().identity();
            var key = new TraceIdentity(
                    own.serial(), own.station(), own.spindle(), own.bolt(), own.attempt(), null, own.boltLot());
            judged.put(key, Judge.judge(one.trace(), FenwaterEngine.specification()));
        }
        return judged;
    }
}
