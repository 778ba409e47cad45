package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.joint.window.FindingCode.*;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/** Each fault is found first and by its own name, over twenty seeds, angle-sampled and time-sampled. */
class FaultsTest {
    private static Arguments fault(FindingCode code, Verdict verdict, Consumer<MadeCurve> change) {
        return Arguments.of(code, verdict, change);
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                fault(WEAK_BOLT, Verdict.NONCONFORMING, made -> made.kneeDeg = 290),
                fault(TURN_SHORT, Verdict.NONCONFORMING, made -> made.turnDeg = 320),
                fault(TURN_LONG, Verdict.NONCONFORMING, made -> made.turnDeg = 400),
                fault(HIGH_FRICTION, Verdict.NONCONFORMING, made -> made.rateNmPerDeg = 0.25),
                fault(NOT_SEATED, Verdict.NONCONFORMING, made -> {
                    made.snugNm = 12;
                    made.turnDeg = 30;
                }),
                fault(NOT_SEATED, Verdict.NONCONFORMING, made -> {
                    made.torqueOfRundown = deg -> Math.max(0, 25 * (1 - Math.pow((deg - 500) / 14, 2)));
                    made.turnDeg = 400;
                }),
                fault(
                        STRIPPING,
                        Verdict.NONCONFORMING,
                        made -> made.torqueOfTurn = turn -> turn < 80 ? 1 : Math.max(0.3, 1 - (turn - 80) / 200)),
                fault(CROSS_THREADED, Verdict.NONCONFORMING, made -> {
                    made.rundownDeg = 450;
                    made.torqueOfRundown = deg -> Math.max(0, 0.03 * (deg - 100) + 2 * Math.sin(deg / 9)) * 0.9;
                }),
                fault(ALREADY_TIGHT, Verdict.NONCONFORMING, made -> {
                    made.rundownDeg = 0;
                    made.seatingDeg = 2;
                    made.prevailingNm = 0;
                    made.rateNmPerDeg = 1.2;
                    made.kneeDeg = 40;
                    made.kneeWidthDeg = 2;
                    made.remainingRatio = 0.02;
                }),
                fault(WRONG_PARTS, Verdict.NONCONFORMING, made -> {
                    made.rundownDeg = 1320;
                    made.rateNmPerDeg = 0.19;
                }),
                fault(WRONG_PARTS, Verdict.NONCONFORMING, made -> made.seatingDeg = 450),
                fault(
                        ANGLE_SLIP,
                        Verdict.NONCONFORMING,
                        made -> made.slipOfTurn = turn -> Math.max(0, Math.min(30, turn - 150))),
                fault(
                        STICK_SLIP,
                        Verdict.REVIEW,
                        made -> made.torqueOfTurn =
                                turn -> 1 + 0.16 * Math.min(1, turn / 100) * (turn / 7 - Math.floor(turn / 7) - 0.5)),
                fault(
                        TORQUE_DROP,
                        Verdict.REVIEW,
                        made -> made.torqueOfTurn = turn -> turn > 200 && turn < 202.5 ? 0.7 : 1));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void is_found_first_and_by_its_own_name(FindingCode code, Verdict verdict, Consumer<MadeCurve> change) {
        for (int seed = 1; seed <= 20; seed++) {
            var made = Cases.good();
            made.seed = seed;
            made.kiloHertz = seed % 2;
            made.stages = seed % 3 != 0;
            change.accept(made);
            var judgement = Cases.judge(made);
            assertFalse(judgement.findings().isEmpty(), "seed " + seed);
            var others = judgement.findings().stream().map(Finding::message).toList();
            assertEquals(code, judgement.findings().get(0).code(), "seed " + seed + ": " + others);
            assertEquals(verdict, judgement.verdict(), "seed " + seed + ": " + others);
        }
    }

    @Test
    void stick_slip_costs_no_elastic_line() {
        for (int seed = 1; seed <= 20; seed++) {
            var made = Cases.good();
            made.seed = seed;
            made.torqueOfTurn = turn -> 1 + 0.14 * Math.min(1, turn / 60) * (turn / 18 - Math.floor(turn / 18) - 0.5);
            var judgement = Cases.judge(made);
            assertEquals(List.of(STICK_SLIP), codes(judgement), "seed " + seed);
            var rate = judgement.signature().elastic().torqueRateNmPerDeg();
            assertEquals(made.rateNmPerDeg, rate.number(), 0.05 * made.rateNmPerDeg, "seed " + seed);
        }
    }

    @Test
    void low_friction_is_named_beside_the_low_final_torque() {
        var made = Cases.good();
        made.rateNmPerDeg = 0.11;
        assertEquals(List.of(FINAL_TORQUE_LOW, LOW_FRICTION, TORQUE_RATE_LOW), codes(Cases.judge(made)));
    }

    @Test
    void a_cause_is_named_only_where_two_cues_agree() {
        var made = Cases.good();
        made.rateNmPerDeg = 0.185;
        made.turnDeg = 358;
        var judgement = Cases.judge(made);
        assertTrue(Cases.has(judgement, TORQUE_RATE_HIGH));
        assertEquals(Cases.has(judgement, FINAL_TORQUE_HIGH), Cases.has(judgement, HIGH_FRICTION));
        var stiff = Cases.good();
        stiff.rundownDeg = 1320;
        var rundownOnly = Cases.judge(stiff);
        assertEquals(List.of(RUNDOWN_OUTSIDE), codes(rundownOnly));
        assertEquals(Verdict.REVIEW, rundownOnly.verdict());
    }

    @Test
    void a_recording_that_ends_in_the_turn_is_unjudged_wherever_it_ends() {
        var curve = Cases.good().make();
        for (double share : new double[] {0.3, 0.6, 0.8, 0.9, 0.95}) {
            var judgement = Cases.judge(MadeCurve.cut(curve, (int) (share * curve.size())));
            assertEquals(Verdict.UNJUDGED, judgement.verdict(), "cut at " + share);
            assertTrue(Cases.has(judgement, TRUNCATED) && !Cases.has(judgement, TURN_SHORT), "cut at " + share);
        }
    }

    @Test
    void a_torque_that_stands_at_one_value_is_a_sensor_at_its_limit_and_no_yield() {
        var curve = Cases.good().make();
        var clipped = IntStream.range(0, curve.size())
                .mapToDouble(i -> Math.min(60, curve.torqueNm(i)))
                .toArray();
        var judgement = Cases.judge(Curve.of(curve.anglesDeg(), clipped));
        assertEquals(Verdict.UNJUDGED, judgement.verdict());
        assertEquals(SENSOR_SATURATED, judgement.findings().get(0).code());
    }

    @Test
    void a_recording_that_holds_itself_twice_is_read_once() {
        var curve = Cases.good().make();
        int n = curve.size();
        var twice = IntStream.range(0, 2 * n);
        var angle = twice.mapToDouble(i -> curve.angleDeg(i % n)).toArray();
        var torque = IntStream.range(0, 2 * n)
                .mapToDouble(i -> curve.torqueNm(i % n))
                .toArray();
        assertEquals(List.of(DUPLICATED_RECORDING), codes(Cases.judge(Curve.of(angle, torque))));
        var rows = IntStream.range(0, 2 * n)
                .mapToDouble(i -> curve.angleDeg(i / 2))
                .toArray();
        var rowTorque = IntStream.range(0, 2 * n)
                .mapToDouble(i -> curve.torqueNm(i / 2))
                .toArray();
        assertTrue(codes(Cases.judge(Curve.of(rows, rowTorque))).contains(DUPLICATED_RECORDING));
    }

    @Test
    void a_second_attempt_asks_for_a_person() {
        var judgement = Cases.judge(Cases.good().make(), 2);
        assertEquals(List.of(REPEATED_ATTEMPT), codes(judgement));
        assertEquals(
                "this is attempt 2 on the same bolt position",
                judgement.findings().get(0).message());
    }

    @Test
    void a_few_samples_are_unjudged() {
        var judgement = Cases.judge(Curve.of(new double[] {0, 1}, new double[] {3, 25}));
        assertEquals(Verdict.UNJUDGED, judgement.verdict());
        assertEquals(List.of(TOO_FEW_SAMPLES), codes(judgement));
    }

    @Test
    void an_angle_jump_in_the_recording_asks_for_a_person() {
        var curve = Cases.good().make();
        int back = curve.size() - 300;
        var angle = IntStream.range(0, curve.size())
                .mapToDouble(i -> curve.angleDeg(i) - (i == back ? 20 : 0))
                .toArray();
        assertTrue(codes(Cases.judge(Curve.of(angle, curve.torquesNm()))).contains(ANGLE_JUMP));
    }

    @Test
    void a_stretch_that_comes_twice_is_seen_wherever_it_lies() {
        var curve = Cases.good().make();
        int snug = 0;
        while (curve.torqueNm(snug) < 20) {
            snug++;
        }
        for (int from : List.of(100, snug - 200, snug - 40)) {
            for (int to : List.of(snug - 20, snug + 60)) {
                int size = curve.size() + to - from;
                int repeated = from;
                int until = to;
                var order = IntStream.range(0, size).map(i -> i < until ? i : i - (until - repeated));
                assertTrue(codes(Cases.judge(taken(curve, order))).contains(ANGLE_JUMP), from + " to " + to);
            }
        }
    }

    @Test
    void an_angle_that_falls_back_for_good_under_load_is_seen() {
        var curve = Cases.good().make();
        int at = curve.size() / 2;
        var angle = curve.anglesDeg();
        for (int i = at; i < angle.length; i++) {
            angle[i] -= 900;
        }
        assertTrue(codes(Cases.judge(Curve.of(angle, curve.torquesNm()))).contains(ANGLE_JUMP));
    }

    private static Curve taken(Curve curve, IntStream order) {
        var samples = order.toArray();
        return Curve.of(
                Arrays.stream(samples).mapToDouble(curve::angleDeg).toArray(),
                Arrays.stream(samples).mapToDouble(curve::torqueNm).toArray());
    }

    @Test
    void the_specification_says_what_a_finding_means() {
        var strict = Cases.SPECIFICATION.withConsequences(Map.of(REPEATED_ATTEMPT, Consequence.NONCONFORMING));
        var identity = new TraceIdentity("FW-000001", "S40", "1", "3", 2, null, "A17");
        var trace =
                new Trace(identity, new Source("made.csv", 1, ""), Cases.good().make());
        assertEquals(Verdict.NONCONFORMING, Judge.judge(trace, strict).verdict());
        assertEquals("1", Judge.judge(trace, strict).specificationVersion());
    }

    private static List<FindingCode> codes(Judgement judgement) {
        return judgement.findings().stream().map(Finding::code).toList();
    }
}
