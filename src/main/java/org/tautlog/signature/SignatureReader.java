package org.tautlog.signature;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

/**
 * Reads a curve. What cannot be read is missing with its reason; no curve makes it fail.
 *
 * <p>Everything is worked on angle: samples that do not turn on are left out, the rest are averaged over small cells, so
 * that time-sampled and angle-sampled curves say the same and a drive that stands still says nothing. Cells keep their
 * own mean angle; nothing is interpolated where the tool was too fast to be sampled.
 */
public final class SignatureReader {
    /** Least width of a cell, deg. Common practice 0.25 to 0.5. */
    private static final double CELL_DEG = 0.25;

    /** Span of the smoothing by which levels are found, deg. */
    private static final double SMOOTHING_DEG = 10;

    /** Turn before the stop over which its torque is read, deg. */
    private static final double LAST_DEG = 5;

    /** Turn over which the free turning is read: one turn, so that a run-out of the thread averages out. */
    private static final double FREE_DEG = 360;

    /** How far before the point of no torque on the elastic line the free turning ends: the parts draw together between. */
    private static final double SEATING_DEG = 60;

    /** The same where no elastic line says where the torque starts: the far end of common practice's 90 to 180 deg. */
    private static final double BEFORE_SNUG_DEG = 180;

    /** Largest angle in deg and torque in N·m that sums of squares still bear. */
    private static final double MOST = 1e7;

    private static final double LEAST_FREE_DEG = 5;
    private static final double MEDIAN_TO_MEAN = 1.2533;

    private SignatureReader() {}

    /**
     * Reads one curve.
     *
     * @param curve the samples
     * @param method snug torque and turn aimed at; only the snug torque matters here
     * @param rule spans and ratios
     * @return what the curve says
     */
    public static Signature read(Curve curve, TighteningMethod method, ReadingRule rule) {
        return read(curve, method, rule, new Scratch());
    }

    /**
     * The same in arrays that serve for many curves, one after another.
     *
     * @param curve the samples
     * @param method snug torque and turn aimed at; only the snug torque matters here
     * @param rule spans and ratios
     * @param scratch arrays to work in
     * @return what the curve says
     */
    public static Signature read(Curve curve, TighteningMethod method, ReadingRule rule, Scratch scratch) {
        return read(curve, method, List.of(rule), scratch).get(0);
    }

    /**
     * Reads one curve by rules that differ only in what they call an onset; all else is read once.
     *
     * @param curve the samples
     * @param method snug torque and turn aimed at; only the snug torque matters here
     * @param rules spans and ratios, at least one; the spans must be the same in all
     * @return what the curve says by each rule, in their order
     * @throws IllegalArgumentException where the spans differ
     */
    public static List<Signature> read(Curve curve, TighteningMethod method, List<ReadingRule> rules) {
        return read(curve, method, rules, new Scratch());
    }

    private static List<Signature> read(
            Curve curve, TighteningMethod method, List<ReadingRule> rules, Scratch scratch) {
        var rule = rules.get(0);
        for (var other : rules) {
            if (other.gradientSpanDeg() != rule.gradientSpanDeg() || other.snugHoldDeg() != rule.snugHoldDeg()) {
                throw new IllegalArgumentException("gradientSpanDeg or snugHoldDeg differ within " + rules.size()
                        + " rules; rules that are read together differ in their onset only");
            }
        }
        var stop = Stop.of(curve);
        if (beyondAllSense(curve)) {
            var why = String.format(
                    Locale.ROOT, "an angle or a torque lies beyond %.0e: no tool turns or pulls so", MOST);
            return Collections.nCopies(rules.size(), unread(curve, stop, why));
        }
        scratch.backTo(0);
        var turning = Walk.of(curve, stop, method.snugTorqueNm(), scratch);
        var cells = turning.cells(CELL_DEG, scratch);
        if (cells.size() < 3) {
            var why = String.format(
                    Locale.ROOT,
                    "the angle moves on at %d of %d samples only, the torque reaches %.2f N·m; too few to read",
                    turning.size(),
                    curve.size(),
                    peak(curve, stop));
            return Collections.nCopies(rules.size(), unread(curve, stop, why));
        }
        var smooth = cells.line(SMOOTHING_DEG);
        int loaded = firstLoaded(smooth.values(), cells.size(), method.snugTorqueNm() / 2);
        double cellNoise = cells.noiseNm(loaded);
        double noise = Math.max(cellNoise, turning.noiseNm(turning.firstFrom(cells.angleDeg(loaded))));
        var found = SnugFinder.angle(cells, smooth, cellNoise, method, rule);
        double pauseDeg = SnugBeforePause.pauseDeg(found, turning);
        var asRecorded = ElasticFit.of(cells, smooth, cellNoise, found, pauseDeg, rule);
        var even = RunOut.without(cells, asRecorded);
        var fit = even == cells
                ? asRecorded
                : ElasticFit.of(even, even.line(SMOOTHING_DEG), cellNoise, found, pauseDeg, rule);
        var snugDeg = SnugBeforePause.refine(found, cells, even, fit, pauseDeg, cellNoise, method.snugTorqueNm());
        var prevailing = prevailing(cells, fit, snugDeg);
        var elastic = elastic(cells, fit, prevailing, snugDeg);
        var snug = new SnugPoint(
                snugDeg,
                SnugStage.torque(curve, stop, turning, cells, smooth, fit, snugDeg, method.snugTorqueNm(), noise));
        var end = end(curve, stop, cells, smooth, snugDeg, noise, cellNoise);
        var marks = new MarkReader(curve, stop, turning, cells, smooth, fit, noise)
                .marks(prevailing, elastic.originDeg(), snugDeg, method.snugTorqueNm());
        var criteria = new OnsetCriteriaReader(even, fit, cellNoise);
        return rules.stream()
                .map(one -> new Signature(
                                curve.size(),
                                prevailing,
                                snug,
                                elastic,
                                OnsetFinder.read(even, smooth, fit, one, cellNoise, end.angleDeg()),
                                end,
                                marks)
                        .withCriteria(criteria.read(one)))
                .toList();
    }

    private static boolean beyondAllSense(Curve curve) {
        for (int i = 0; i < curve.size(); i++) {
            if (Math.abs(curve.angleDeg(i)) > MOST || Math.abs(curve.torqueNm(i)) > MOST) {
                return true;
            }
        }
        return false;
    }

    private static Signature unread(Curve curve, Stop stop, String why) {
        var none = Signature.none(curve.size(), why);
        var end = new FinalPoint(
                Feature.of(stop.angleDeg(), 0),
                Feature.of(curve.torqueNm(stop.sample()), 0),
                Feature.of(peak(curve, stop), 0),
                none.end().turnDeg());
        return new Signature(
                none.samples(),
                none.prevailingTorqueNm(),
                none.snug(),
                none.elastic(),
                none.onset(),
                end,
                none.marks());
    }

    private static int firstLoaded(double[] values, int size, double levelNm) {
        int i = 0;
        while (i < size && values[i] < levelNm) {
            i++;
        }
        return i == size ? 0 : i;
    }

    private static double peak(Curve curve, Stop stop) {
        double peak = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < stop.end(); i++) {
            peak = Math.max(peak, curve.torqueNm(i));
        }
        return peak;
    }

    private static Feature prevailing(Cells cells, ElasticFit fit, Feature snugDeg) {
        double until = fit.line != null
                ? fit.line.angleAt(0) - SEATING_DEG
                : snugDeg.isFound() ? snugDeg.number() - BEFORE_SNUG_DEG : Double.NEGATIVE_INFINITY;
        int to = cells.firstFrom(until);
        int from = cells.firstFrom(until - FREE_DEG);
        double turned = to - from < 3 ? 0 : cells.angleDeg(to - 1) - cells.angleDeg(from);
        if (turned < LEAST_FREE_DEG) {
            return Feature.missing(String.format(
                    Locale.ROOT,
                    "the recording holds %.1f deg of free turning before the parts seat; %.0f are needed",
                    turned,
                    LEAST_FREE_DEG));
        }
        var taken = Robust.taken(cells.torques(), from, to);
        double median = Robust.percentile(taken, 0.5);
        double spread = Robust.spreadAbout(taken, median);
        return Feature.of(median, MEDIAN_TO_MEAN * spread / Math.sqrt(to - from));
    }

    private static ElasticLine elastic(Cells cells, ElasticFit fit, Feature prevailing, Feature snugDeg) {
        var line = fit.line;
        if (line == null) {
            var missing = Feature.missing(fit.why);
            return new ElasticLine(missing, missing, missing);
        }
        double level = prevailing.number();
        double levelUncertainty = prevailing.standardUncertainty();
        if (!prevailing.isFound()) {
            double least = leastBeforeSnug(cells, snugDeg);
            level = least / 2;
            levelUncertainty = least / Math.sqrt(12);
        }
        double origin = line.angleAt(level);
        double uncertainty = Math.hypot(line.angleUncertainty(origin), levelUncertainty / line.slope());
        return new ElasticLine(
                Feature.of(line.slope(), line.slopeUncertainty()),
                Feature.of(origin, uncertainty),
                Feature.of(line.residualNm(), line.residualNm() / Math.sqrt(2.0 * line.points())));
    }

    /** Without free turning its torque lies somewhere between none and the least torque before the snug point. */
    private static double leastBeforeSnug(Cells cells, Feature snugDeg) {
        int snug = Math.min(cells.size(), cells.firstFrom(snugDeg.number()) + 1);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < snug; i++) {
            least = Math.min(least, cells.torqueNm(i));
        }
        return Math.max(0, least);
    }

    /**
     * The stop. Between the last sample and the true stop up to a step of turning is not recorded; the reading lies at one
     * end of that stretch, so its standard uncertainty is the stretch over sqrt(3).
     */
    private static FinalPoint end(
            Curve curve, Stop stop, Cells cells, MovingLine smooth, Feature snugDeg, double noise, double cellNoise) {
        double deg = stop.angleDeg();
        double step = cells.stepDeg(cells.firstFrom(deg - 20 * CELL_DEG));
        var angle = Feature.of(deg, Math.max(step / Math.sqrt(12), stop.gapDeg() / Math.sqrt(3)));
        int from = cells.firstFrom(deg - LAST_DEG);
        int n = cells.size() - from;
        double unseenDeg = deg - curve.angleDeg(stop.sample()) + stop.gapDeg();
        double unseenNm = unseenDeg * Math.max(0, smooth.slope(cells.size() - 1)) / Math.sqrt(3);
        var torque = Feature.of(curve.torqueNm(stop.sample()), Math.hypot(noise, unseenNm));
        if (n >= 4) {
            torque = Feature.of(
                    cells.fitted(from, cells.size()).at(deg), Math.hypot(2 * cellNoise / Math.sqrt(n), unseenNm));
        }
        var turn = snugDeg.isFound()
                ? Feature.of(
                        deg - snugDeg.number(), Math.hypot(angle.standardUncertainty(), snugDeg.standardUncertainty()))
                : Feature.missing("no snug point: " + snugDeg.whyMissing());
        return new FinalPoint(angle, torque, Feature.of(peak(curve, stop), noise), turn);
    }
}
