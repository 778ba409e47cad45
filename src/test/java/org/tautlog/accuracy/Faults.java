package org.tautlog.accuracy;

import static org.tautlog.joint.window.FindingCode.*;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Curve;

/** The faults of the study, each with its sizes and its rule, and the ordinary tightenings they are placed in. */
final class Faults {
    /** The window of the made joint; fault rules are the defaults but for the rundown, which every joint must state. */
    static final JointSpecification SPECIFICATION = new JointSpecification(
                    "made joint",
                    "1",
                    new TighteningMethod(20, 360),
                    new Window(
                            new Band(19, 23),
                            new Band(357, 364),
                            new Band(66, 84),
                            new Band(0.145, 0.175),
                            new Band(Double.NEGATIVE_INFINITY, 4),
                            new OnsetLimits(
                                    new Band(300, Double.POSITIVE_INFINITY),
                                    new Band(400, Double.POSITIVE_INFINITY),
                                    0.15)),
                    ReadingRule.withDefaults(),
                    Map.of())
            .withFaults(FaultRule.withDefaults().withRundownDeg(new Band(600, 1200)));

    private Faults() {}

    /** A good tightening with the ordinary variation of parts and tools. */
    static MadeCurve ordinary(long seed) {
        var random = new SplittableRandom(seed);
        var made = new MadeCurve();
        made.seed = seed;
        made.kiloHertz = seed % 2;
        made.stages = seed % 3 != 0;
        made.noiseShare = 0.003;
        made.noiseNm = 0.03;
        made.rateNmPerDeg = 0.16 + 0.002 * Math.max(-3, Math.min(3, random.nextGaussian()));
        made.prevailingNm = 1.2 + 0.6 * random.nextDouble();
        made.runOutShare = 0.05 * random.nextDouble();
        made.seatingDeg = 30 + 20 * random.nextDouble();
        made.rundownDeg = 700 + 40 * random.nextDouble();
        made.springBackDeg = 2.5 + 2 * random.nextDouble();
        made.spikeShare = 0.04 + 0.14 * random.nextDouble();
        return made;
    }

    static List<FaultCase> all() {
        return List.of(
                FaultCase.made(
                                "not seated",
                                "N·m reached, 20 asked",
                                List.of(19.0, 18.0, 15.0, 12.0),
                                18,
                                "the torque never stays at the snug torque for `snug-hold`",
                                (made, size) -> {
                                    made.snugNm = size;
                                    made.turnDeg = 0.1;
                                    made.pause = false;
                                },
                                NOT_SEATED)
                        .withPast(19),
                FaultCase.made(
                        "not seated: a burr in the rundown",
                        "N·m height of the burr",
                        List.of(21.0, 24.0, 27.0, 30.0),
                        24,
                        "after the snug torque was held it is lost again, below 0.6 of it, over more than 10 deg",
                        (made, size) -> {
                            double high = size - made.prevailingNm;
                            made.torqueOfRundown = deg -> Math.max(0, high * (1 - Math.pow((deg - 500) / 14, 2)));
                            made.turnDeg = 560;
                        },
                        NOT_SEATED),
                FaultCase.made(
                        "cross-threaded",
                        "N·m/deg rise in the rundown",
                        List.of(0.01, 0.02, 0.03, 0.04),
                        0.03,
                        "before the parts can touch the torque passes `rundown-torque-share` of the snug torque and strays by"
                                + " more than 5 % of it, or the rundown is short of `rundown`",
                        (made, size) -> {
                            made.rundownDeg = 450;
                            made.torqueOfRundown =
                                    deg -> Math.max(0, size * (deg - 100) + 60 * size * Math.sin(deg / 9)) * 0.9;
                        },
                        CROSS_THREADED),
                FaultCase.made(
                                "stripping",
                                "% of torque lost at the stop",
                                List.of(10.0, 20.0, 40.0, 60.0),
                                40,
                                "the torque falls by more than `fall-share` from its peak, or stands below `stripped-torque-share` of the"
                                        + " usual onset torque, and the final torque is low",
                                (made, size) -> made.torqueOfTurn =
                                        turn -> turn < 80 ? 1 : 1 - size / 100 * (turn - 80) / 280 * 1.5,
                                STRIPPING)
                        .withPast(35),
                FaultCase.made(
                                "already tight",
                                "deg of turn to the snug torque",
                                List.of(25.0, 20.0, 15.0, 10.0),
                                20,
                                "the snug torque is there within `already-tight`, without free turning",
                                (made, size) -> {
                                    made.rundownDeg = 0;
                                    made.seatingDeg = 2;
                                    made.prevailingNm = 0;
                                    made.rateNmPerDeg = 20 / size;
                                    made.kneeDeg = 2 * size;
                                    made.kneeWidthDeg = 2;
                                    made.remainingRatio = 0.02;
                                },
                                ALREADY_TIGHT)
                        .withPast(28),
                FaultCase.made(
                        "wrong bolt or missing part",
                        "% of torque rate, with 580 deg more rundown",
                        List.of(5.0, 10.0, 15.0, 19.0),
                        15,
                        "the rundown is off by more than 90 deg and the torque rate by more than twice `cause-share` or outside"
                                + " its limits; or rate and onset move against each other at the usual onset torque",
                        (made, size) -> {
                            made.rundownDeg = 1320;
                            made.rateNmPerDeg *= 1 + size / 100;
                        },
                        WRONG_PARTS),
                FaultCase.made(
                                "soft seating",
                                "deg of seating",
                                List.of(150.0, 200.0, 250.0, 350.0),
                                250,
                                "from 5 % of the snug torque to 0.8 of the torque rate takes more than `seating`: about 0.55 of a toe"
                                        + " that rises as a parabola",
                                (made, size) -> made.seatingDeg = size,
                                SOFT_SEATING)
                        .withPast(235),
                FaultCase.made(
                                "stick-slip",
                                "% of the torque, peak to peak",
                                List.of(6.0, 10.0, 12.0, 16.0),
                                12,
                                "past the snug point the torque saws by more than `stick-slip-share` of the mean torque",
                                (made, size) -> made.torqueOfTurn = turn -> 1
                                        + size / 100 * Math.min(1, turn / 60) * (turn / 7 - Math.floor(turn / 7) - 0.5),
                                STICK_SLIP)
                        .withPast(11)
                        .calledAtLeast(0.9),
                FaultCase.made(
                                "torque drop",
                                "% of the torque",
                                List.of(6.0, 10.0, 15.0, 30.0),
                                15,
                                "the torque falls within 3 deg by more than `torque-drop-share` of it and 8 times the noise, and comes"
                                        + " back",
                                (made, size) ->
                                        made.torqueOfTurn = turn -> turn > 200 && turn < 202.5 ? 1 - size / 100 : 1,
                                TORQUE_DROP)
                        .withPast(12),
                FaultCase.made(
                                "angle slip",
                                "deg",
                                List.of(4.0, 8.0, 12.0, 30.0),
                                12,
                                "the angle goes on by more than `angle-slip` without the torque that belongs to it, then the torque rises"
                                        + " as before",
                                (made, size) -> made.slipOfTurn = turn -> Math.max(0, Math.min(size, turn - 150)),
                                ANGLE_SLIP)
                        .withPast(8),
                FaultCase.made(
                        "angle slip of 20 deg, spread over some turn",
                        "deg of turn that it is spread over",
                        List.of(80.0, 60.0, 40.0, 25.0),
                        60,
                        "as an angle slip: a slow one, of a bolt that turns along for a while, is told by how far the torque"
                                + " stays behind",
                        (made, size) -> made.slipOfTurn = turn -> 20 * Math.max(0, Math.min(1, (turn - 150) / size)),
                        ANGLE_SLIP),
                FaultCase.made(
                                "tool wind-up",
                                "deg of spring-back",
                                List.of(14.0, 16.0, 20.0, 30.0),
                                16,
                                "the angle runs back by more than `spring-back` at the stop",
                                (made, size) -> made.springBackDeg = size,
                                TOOL_WIND_UP)
                        .withPast(15.5),
                FaultCase.made(
                                "overshoot",
                                "deg past 360",
                                List.of(3.0, 5.0, 8.0, 40.0),
                                8,
                                "the turn past the snug point is above its limit in `window.turn`",
                                (made, size) -> made.turnDeg = 360 + size,
                                TURN_LONG)
                        .withPast(5),
                FaultCase.made(
                                "stopped short",
                                "deg short of 360",
                                List.of(2.0, 4.0, 8.0, 40.0),
                                8,
                                "the turn past the snug point is below its limit in `window.turn`",
                                (made, size) -> made.turnDeg = 360 - size,
                                TURN_SHORT)
                        .withPast(4),
                FaultCase.made(
                                "early onset",
                                "deg earlier than allowed",
                                List.of(2.0, 5.0, 10.0, 40.0),
                                10,
                                "the gradient falls below `onset-ratio` of the torque rate, for good, before the earliest angle of"
                                        + " `onset.past-snug` or `onset.past-origin`",
                                (made, size) -> {
                                    made.kneeDeg = 400 - size;
                                    made.remainingRatio = 0.3;
                                },
                                EARLY_ONSET,
                                WEAK_BOLT)
                        .withPast(2),
                FaultCase.made(
                                "weak bolt",
                                "deg earlier than allowed",
                                List.of(15.0, 25.0, 40.0, 60.0),
                                40,
                                "an early onset at a torque below the usual one by more than `cause-share`, or with a final torque below"
                                        + " its limit, at the usual torque rate",
                                (made, size) -> {
                                    made.kneeDeg = 400 - size;
                                    made.remainingRatio = 0.3;
                                },
                                WEAK_BOLT)
                        .withPast(25),
                FaultCase.made(
                                "over-yielded",
                                "gradient ratio left",
                                List.of(0.12, 0.08, 0.04, 0.0),
                                0.04,
                                "the gradient at the stop is below `onset.least-final-ratio` of the torque rate",
                                (made, size) -> {
                                    made.kneeDeg = 425;
                                    made.remainingRatio = size;
                                },
                                OVER_YIELDED)
                        .withPast(0.08),
                FaultCase.made(
                        "friction high",
                        "% of torque rate",
                        List.of(5.0, 10.0, 20.0, 40.0),
                        20,
                        "torque rate and final torque above their limits at the right turn",
                        (made, size) -> made.rateNmPerDeg *= 1 + size / 100,
                        HIGH_FRICTION),
                FaultCase.made(
                                "friction low",
                                "% of torque rate",
                                List.of(5.0, 10.0, 20.0, 25.0, 30.0),
                                25,
                                "torque rate and final torque below their limits at the right turn",
                                (made, size) -> made.rateNmPerDeg *= 1 - size / 100,
                                LOW_FRICTION)
                        .calledAtLeast(0),
                FaultCase.recorded(
                                "recording truncated",
                                "% of the samples kept",
                                List.of(95.0, 90.0, 80.0, 60.0),
                                90,
                                "the recording ends with the tool still turning",
                                (curve, size) -> MadeCurve.cut(curve, (int) (size / 100 * curve.size())),
                                TRUNCATED)
                        .withPast(97),
                FaultCase.recorded(
                                "recording shifted: its start is missing",
                                "N·m at the first sample",
                                List.of(15.0, 17.0, 19.0, 19.5),
                                19,
                                "the recording begins at more than 0.9 of the snug torque",
                                Faults::fromTorque,
                                TRUNCATED)
                        .withPast(18.5),
                FaultCase.recorded(
                        "recording shifted: its torque is late",
                        "samples",
                        List.of(4.0, 10.0, 30.0, 60.0),
                        60,
                        "at the stop the angle has run back by half its way and the torque still stands at 0.9 or more of its peak",
                        Faults::late,
                        RECORDING_SHIFTED),
                FaultCase.recorded(
                                "sensor saturated",
                                "N·m limit of the sensor",
                                List.of(70.0, 65.0, 60.0, 50.0),
                                70,
                                "`saturated-samples` turning samples in a row stand at the highest torque, to a digit, three times as long"
                                        + " as at any torque below",
                                (curve, size) -> Curve.of(
                                        curve.anglesDeg(),
                                        Arrays.stream(curve.torquesNm())
                                                .map(torque -> Math.min(size, torque))
                                                .toArray()),
                                SENSOR_SATURATED)
                        .withPast(72),
                FaultCase.recorded(
                                "recording duplicated",
                                "1 whole, 2 row by row",
                                List.of(1.0, 2.0),
                                1,
                                "the recording holds the same samples twice, one after the other or row by row",
                                Faults::twice,
                                DUPLICATED_RECORDING)
                        .withPast(2));
    }

    private static Curve fromTorque(Curve curve, double torqueNm) {
        int from = 0;
        while (curve.torqueNm(from) < torqueNm) {
            from++;
        }
        return MadeCurve.part(curve, from, curve.size());
    }

    private static Curve late(Curve curve, double samples) {
        var late = Curve.of(
                curve.anglesDeg(),
                IntStream.range(0, curve.size())
                        .mapToDouble(i -> curve.torqueNm(Math.max(0, i - (int) samples)))
                        .toArray());
        return curve.hasTime()
                ? late.withTimeS(IntStream.range(0, curve.size())
                        .mapToDouble(curve::timeS)
                        .toArray())
                : late;
    }

    private static Curve twice(Curve curve, double how) {
        int n = curve.size();
        var order = IntStream.range(0, 2 * n).map(i -> how == 1 ? i % n : i / 2).toArray();
        var twice = Curve.of(
                Arrays.stream(order).mapToDouble(curve::angleDeg).toArray(),
                Arrays.stream(order).mapToDouble(curve::torqueNm).toArray());
        return curve.hasTime()
                ? twice.withTimeS(Arrays.stream(order).mapToDouble(curve::timeS).toArray())
                : twice;
    }
}
