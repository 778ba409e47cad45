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
import org.tautlog.line.CausedShift.Shows;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.review.cause.Against;
import org.tautlog.review.cause.Cause;
import org.tautlog.review.cause.Diagnoses;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.cause.Pattern;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.trace.TraceIdentity;

/**
 * The study of causes: not a test but a program, run by {@code mvn -Dquick test -Dtest=CauseStudy}. It writes
 * {@code reports/causes.md}. The rules were set while shifts of the seeds 1 to 16 were looked at; the study takes others.
 */
class CauseStudy {
    private static final int N = 10;
    private static final int UNTOUCHED = 30;
    private static final int PAIRS = 20;
    private static final int UNTOUCHED_PAIRS = 60;
    private static final long FIRST_SEED = 101;

    /** What was placed. */
    record Placed(Kind kind, double size, Shows shows) {}

    static final List<Placed> PLACED = List.of(
            new Placed(Kind.TORQUE_SCALE, 0.03, Shows.ONE_SPINDLE),
            new Placed(Kind.TORQUE_SCALE, 0.06, Shows.ONE_SPINDLE),
            new Placed(Kind.TORQUE_SCALE, -0.06, Shows.ONE_SPINDLE),
            new Placed(Kind.ANGLE_SCALE, 0.02, Shows.ONE_SPINDLE),
            new Placed(Kind.ANGLE_SCALE, 0.04, Shows.ONE_SPINDLE),
            new Placed(Kind.WIND_UP, 0.5, Shows.ONE_SPINDLE),
            new Placed(Kind.WIND_UP, 2, Shows.ONE_SPINDLE),
            new Placed(Kind.SNUG_TORQUE, 0.5, Shows.ONE_SPINDLE),
            new Placed(Kind.SNUG_TORQUE, -0.4, Shows.ONE_SPINDLE),
            new Placed(Kind.TURN, 3, Shows.ONE_SPINDLE),
            new Placed(Kind.FRICTION, 0.06, Shows.ONE_SPINDLE),
            new Placed(Kind.FRICTION, 0.12, Shows.ONE_SPINDLE),
            new Placed(Kind.STIFFNESS, -0.06, Shows.ONE_SPINDLE),
            new Placed(Kind.FRICTION, 0.06, Shows.ONE_LOT),
            new Placed(Kind.FRICTION, 0.12, Shows.ONE_LOT),
            new Placed(Kind.FRICTION, -0.12, Shows.ONE_LOT),
            new Placed(Kind.STRENGTH, -0.04, Shows.ONE_LOT),
            new Placed(Kind.STRENGTH, -0.08, Shows.ONE_LOT),
            new Placed(Kind.STIFFNESS, -0.04, Shows.ONE_LOT),
            new Placed(Kind.STIFFNESS, -0.08, Shows.ONE_LOT),
            new Placed(Kind.FRICTION, 0.12, Shows.ONE_STATION),
            new Placed(Kind.SNUG_TORQUE, -0.5, Shows.ONE_STATION),
            new Placed(Kind.TORQUE_SCALE, 0.06, Shows.SPINDLE_ALL_SHIFT),
            new Placed(Kind.WIND_UP, 1, Shows.SPINDLE_ALL_SHIFT),
            new Placed(Kind.STIFFNESS, -0.2, Shows.WHOLE_SHIFT),
            new Placed(Kind.FRICTION, 0.25, Shows.ONE_TIGHTENING),
            new Placed(Kind.SNUG_TORQUE, -0.8, Shows.ONE_TIGHTENING),
            new Placed(Kind.FRICTION_AND_STRENGTH, 0.12, Shows.ONE_LOT));

    private static final Map<Long, Map<TraceIdentity, Judgement>> BASE = new ConcurrentHashMap<>();

    @Test
    void write_the_report() throws IOException {
        var graded = new ArrayList<GradedCause>();
        for (var placed : PLACED) {
            graded.add(grade(placed, FIRST_SEED, N));
        }
        var pairs = ShiftPairs.PLACED.stream()
                .map(placed -> ShiftPairs.grade(placed, FIRST_SEED, PAIRS))
                .toList();
        Files.writeString(
                Path.of("reports", "causes.md"),
                CausePage.of(graded, untouched(FIRST_SEED, UNTOUCHED))
                        + CausePage.ofPairs(pairs, ShiftPairs.untouched(FIRST_SEED, UNTOUCHED_PAIRS)));
    }

    static GradedCause grade(Placed placed, long firstSeed, int n) {
        var found = LongStream.range(firstSeed, firstSeed + n)
                .parallel()
                .mapToObj(seed -> diagnosed(placed, seed))
                .toList();
        return GradedCause.of(placed, firstSeed, found);
    }

    /** Whether something that was found is what the cause was placed on. */
    static boolean about(Shows shows, Diagnosis one, long seed) {
        var touched = CausedShift.touched(seed);
        return switch (shows) {
            case ONE_SPINDLE, SPINDLE_ALL_SHIFT -> one.what().equals(touched);
            case ONE_LOT -> one.what().equals("lot A18");
            case ONE_STATION -> one.what().equals("station " + touched.substring(0, touched.indexOf('/')));
            case WHOLE_SHIFT -> one.against() == Against.STATED_JOINT;
            case ONE_TIGHTENING -> one.what().equals(CausedShift.touchedTightening(seed));
        };
    }

    /** What was named in shifts in which nothing was placed. */
    record Untouched(
            int shifts, int spindles, int together, int tightenings, int stoodOut, Map<String, Integer> lots) {}

    static Untouched untouched(long firstSeed, int n) {
        var all = LongStream.range(firstSeed, firstSeed + n)
                .parallel()
                .mapToObj(seed -> diagnosed(new Placed(Kind.NOTHING, 0, Shows.ONE_SPINDLE), seed))
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
                named(all, Pattern.ALL_SPINDLES),
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

    /** The one cause to name; empty where two were placed and none must be. */
    static Optional<Cause> cause(Kind kind) {
        return switch (kind) {
            case FRICTION -> Optional.of(Cause.FRICTION);
            case STRENGTH -> Optional.of(Cause.BOLT_STRENGTH);
            case STIFFNESS -> Optional.of(Cause.JOINT_STIFFNESS);
            case TORQUE_SCALE -> Optional.of(Cause.TORQUE_SCALE);
            case ANGLE_SCALE -> Optional.of(Cause.ANGLE_SCALE);
            case WIND_UP -> Optional.of(Cause.WIND_UP);
            case SNUG_TORQUE -> Optional.of(Cause.SNUG_TORQUE);
            case TURN -> Optional.of(Cause.TURN);
            case NOTHING, FRICTION_AND_STRENGTH -> Optional.empty();
        };
    }

    static List<Diagnosis> diagnosed(Placed placed, long seed) {
        return Diagnoses.of(FenwaterEngine.specification(), reviewed(placed, seed));
    }

    static StreamReview reviewed(Placed placed, long seed) {
        var shift = new LinkedHashMap<>(BASE.computeIfAbsent(
                seed, key -> judged(CausedShift.tightenings(Kind.NOTHING, 0, Shows.ONE_SPINDLE, key))));
        if (placed.kind() != Kind.NOTHING) {
            shift.putAll(judged(CausedShift.tightenings(placed.kind(), placed.size(), placed.shows(), seed)));
        }
        return StreamReview.of(
                List.copyOf(shift.values()), FenwaterEngine.specification().window());
    }

    /** The beginning of a shift in which nothing is placed, out of the whole one where that was judged already. */
    static Map<TraceIdentity, Judgement> beginning(long seed, int engines) {
        var whole = BASE.get(seed);
        if (whole == null) {
            return judged(CausedShift.first(seed, engines));
        }
        var beginning = new LinkedHashMap<>(whole);
        beginning.keySet().removeIf(one -> FenwaterEngine.number(one.serial()) > engines);
        return beginning;
    }

    /** By engine, station and spindle: a cause may change how long a tightening takes. */
    static Map<TraceIdentity, Judgement> judged(List<SimulatedTightening> tightenings) {
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
