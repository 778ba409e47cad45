package org.tautlog.review;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.signature.CurveMarks;
import org.tautlog.signature.ElasticLine;
import org.tautlog.signature.EndState;
import org.tautlog.signature.Feature;
import org.tautlog.signature.FinalPoint;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SnugPoint;
import org.tautlog.signature.YieldOnset;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/** A shift made by hand: eight spindles, one of which drifts upwards half-way, and a handful of faults at known places. */
public final class MadeShift {
    /** One tightening with its curve. */
    public record Made(Judgement judgement, Curve curve) {}

    private static final double RATE = 0.205;
    /** Samples in which the tool lets go and springs back. */
    private static final int RELEASE = 8;

    private static final OffsetDateTime START = OffsetDateTime.of(2026, 3, 2, 6, 0, 0, 0, ZoneOffset.ofHours(1));

    private MadeShift() {}

    /** The specification that all of them are held against. */
    public static JointSpecification specification() {
        return new JointSpecification(
                "Fenwater main through-bolt",
                "3",
                new TighteningMethod(15, 360),
                new Window(
                        new Band(14, 20),
                        new Band(345, 375),
                        new Band(70, 95),
                        new Band(0.17, 0.24),
                        new Band(Double.NEGATIVE_INFINITY, 4),
                        new OnsetLimits(Band.open(), Band.open(), 0.3)),
                ReadingRule.withDefaults(),
                Map.of());
    }

    /** The whole shift, in the order of time. */
    public static List<Made> shift(int engines) {
        var random = new SplittableRandom(7);
        var made = new ArrayList<Made>();
        for (int engine = 0; engine < engines; engine++) {
            for (int bolt = 1; bolt <= 8; bolt++) {
                made.add(one(engine, bolt, engine > engines / 2 && bolt == 3 ? 1.06 : 1, random));
            }
        }
        return made;
    }

    /** The review of such a shift. */
    public static ShiftReview review(int engines, int mostListed) {
        var reviewer = new ShiftReviewer(specification(), mostListed);
        shift(engines).forEach(made -> reviewer.accept(made.judgement(), made.curve()));
        return reviewer.review(new ImportRecord(1, 0, engines * 8L, 0, List.of(), List.of()));
    }

    /** One tightening of a given serial, judged by a few of the window's limits. */
    public static Made named(String serial, double turnDeg) {
        var identity = new TraceIdentity(serial, "S40", "1", "1", 1, START, "A17");
        return made(identity, 1, turnDeg, new SplittableRandom(1));
    }

    private static Made one(int engine, int bolt, double friction, SplittableRandom random) {
        var identity = new TraceIdentity(
                String.format(Locale.ROOT, "FW-%06d", engine + 1),
                bolt <= 4 ? "S40" : "S50",
                Integer.toString(1 + (bolt - 1) % 4),
                Integer.toString(bolt),
                1,
                START.plusSeconds(engine * 70L + bolt * 3L),
                engine < 40 ? "A17" : "A18");
        double turn = engine % 29 == 17 && bolt == 5 ? 290 + random.nextDouble(40) : 360 + random.nextDouble(-2, 2);
        double factor = engine % 41 == 23 && bolt == 2 ? 1.35 : friction * (1 + random.nextDouble(-0.03, 0.03));
        return made(identity, factor, turn, random);
    }

    private static Made made(TraceIdentity identity, double factor, double turnDeg, SplittableRandom random) {
        double rate = RATE * factor;
        double prevailing = 1.5;
        double origin = 700 + random.nextDouble(60);
        double snug = origin + (15 - prevailing) / rate;
        double onset = origin + 330;
        double end = snug + turnDeg;
        int n = 1000;
        var angle = new double[n + RELEASE];
        var torque = new double[n + RELEASE];
        for (int i = 0; i < n; i++) {
            double x = end * (i + 1) / n;
            angle[i] = x;
            double seated = Math.log1p(Math.exp((x - origin) / 12)) * 12 * rate;
            double past = Math.max(0, x - onset);
            torque[i] = prevailing + seated - 0.5 * rate * past * past / (past + 40) + random.nextDouble(-0.15, 0.15);
        }
        double last = torque[n - 1];
        for (int i = 0; i < RELEASE; i++) {
            angle[n + i] = end - 0.4 * (i + 1);
            torque[n + i] = last * (RELEASE - 1 - i) / RELEASE;
        }
        boolean yields = end > onset + 20;
        var signature = new Signature(
                n + RELEASE,
                Feature.of(prevailing, 0.1),
                new SnugPoint(Feature.of(snug, 0.5), Feature.of(15.4, 0.2)),
                new ElasticLine(Feature.of(rate, 0.001), Feature.of(origin, 1), Feature.of(0.1, 0)),
                new YieldOnset(
                        yields ? Feature.of(onset, 4) : Feature.missing("the gradient never fell below half"),
                        yields ? Feature.of(prevailing + 330 * rate, 0.5) : Feature.missing("no onset"),
                        Feature.of(yields ? 0.55 : 0.9, 0.02),
                        Feature.of(yields ? 0.55 : 0.9, 0.02),
                        yields ? Feature.of(end - onset, 4) : Feature.missing("no onset"),
                        yields ? EndState.ONSET_ZONE : EndState.ELASTIC),
                new FinalPoint(
                        Feature.of(end, 0.2),
                        Feature.of(last, 0.2),
                        Feature.of(last + 0.1, 0.2),
                        Feature.of(turnDeg, 0.6)),
                CurveMarks.none("made by hand"));
        var findings = findings(rate, turnDeg, last);
        var verdict = findings.isEmpty()
                ? Verdict.CONFORMING
                : Verdict.valueOf(findings.get(0).severity().name());
        var source = new Source("S40-early.csv", 2 + 1000 * Math.abs(identity.hashCode() % 997), "ab12".repeat(16));
        var spec = specification();
        return new Made(
                new Judgement(identity, source, spec.name(), spec.version(), signature, verdict, findings),
                Curve.of(angle, torque));
    }

    private static List<Finding> findings(double rate, double turnDeg, double last) {
        var found = new EnumMap<FindingCode, Finding>(FindingCode.class);
        check(found, turnDeg < 345, FindingCode.TURN_SHORT, "turn past snug", turnDeg, 345, "deg");
        check(found, last < 70, FindingCode.FINAL_TORQUE_LOW, "final torque", last, 70, "N·m");
        check(found, last > 95, FindingCode.FINAL_TORQUE_HIGH, "final torque", last, 95, "N·m");
        check(found, rate > 0.24, FindingCode.TORQUE_RATE_HIGH, "torque rate", rate, 0.24, "N·m/deg");
        return List.copyOf(found.values());
    }

    private static void check(
            Map<FindingCode, Finding> found,
            boolean broken,
            FindingCode code,
            String what,
            double measured,
            double limit,
            String unit) {
        if (broken) {
            var message = String.format(
                    Locale.ROOT, "%s is %.3f %s; the limit is %.2f %s", what, measured, unit, limit, unit);
            found.put(code, new Finding(code, code.usual(), measured, limit, unit, message));
        }
    }
}
