package org.tautlog.review.tuning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredElongation;
import org.tautlog.trace.MeasuredElongation.Point;

/**
 * Clamp load from a bolt's measured elongation. Elastic, the bolt's resilience alone gives it; past yield the elongation goes
 * on without load, and what a turn gives neither to the bolt nor to any twist is what the layers give.
 *
 * <pre>
 * elastic        F = l / dS                                          N
 * along all      z = P x / 360 - l = c + m l    in the elastic part  mm
 *                F = (z - c - k l) / ((m - k) dS)
 * uncertainty    u(F) / F = u(dS) / dS
 *
 * l elongation, mm    dS resilience of the bolt, mm/N    P pitch, mm    x angle, deg
 * m, c by the median of slopes over the elongations from 10 to 30 % of the highest, as a bolt may stretch to three times what
 * it does elastically: how much layers and drive give beside the bolt, measured and not assumed
 * k plastic twist of the bolt over its plastic stretch, as thread travel P / 360, by the stated joint's own curve: a bolt that
 * yields under torsion twists as well
 * </pre>
 *
 * <p>The onset does not depend on dS, which scales the load alone; the scatter of l reaches it (1 + k) / (m - k) times, and
 * {@link LoadOnset} carries it on. k rests on the stated thread friction.
 *
 * <p>Source: dS the elastic resilience of VDI 2230-1:2015 (5.1.1), from memory; turn shared by bolt, layers and drive as springs
 * in a row, elementary; plastic twist {@link TighteningCurve}.
 */
public final class ElongationLoad {
    private static final double LOWEST_SHARE = 0.1;
    private static final double HIGHEST_SHARE = 0.3;
    private static final double LEAST_BESIDE = 0.05;
    private static final double QUARTER_TURN_DEG = 90;
    private static final double ANY_SNUG_NM = 1;
    private static final double UM_PER_MM = 1000;
    private static final double N_PER_KN = 1000;

    private ElongationLoad() {}

    /**
     * The load over the angle.
     *
     * @param measured the elongation
     * @param stated bolt and pitch
     * @return the load; empty where too few points lie in the elastic part, or layers and drive give next to nothing
     */
    public static Optional<MeasuredClampLoad> of(MeasuredElongation measured, StatedJoint stated) {
        double pitchMm = stated.joint().bolt().thread().pitchMm();
        double boltMmPerN = stated.joint().boltResilienceMmPerN();
        var points = measured.points();
        double highest = points.stream().mapToDouble(Point::elongationUm).max().orElse(0);
        int yielded = first(points, HIGHEST_SHARE * highest);
        var elastic = points.subList(0, yielded).stream()
                .filter(point -> point.elongationUm() >= LOWEST_SHARE * highest)
                .toList();
        if (elastic.size() < LoadOnset.LEAST_POINTS) {
            return Optional.empty();
        }
        double m = slope(elastic, pitchMm);
        double k = twistOverStretch(stated);
        if (!(m - k > LEAST_BESIDE)) {
            return Optional.empty();
        }
        double c =
                LoadOnset.median(elastic.stream().mapToDouble(point -> besideMm(point, pitchMm) - m * lengthMm(point)));
        return Optional.of(new MeasuredClampLoad(
                measured.serial(),
                measured.bolt(),
                measured.attempt(),
                points.stream()
                        .map(point -> new MeasuredClampLoad.Point(
                                point.angleDeg(),
                                (besideMm(point, pitchMm) - c - k * lengthMm(point))
                                        / ((m - k) * boltMmPerN)
                                        / N_PER_KN))
                        .toList()));
    }

    /**
     * How far such a load may be off as a whole.
     *
     * @param stated the joint
     * @return standard uncertainty of the bolt's resilience as a share; empty where the specification states none
     */
    public static OptionalDouble uncertainty(StatedJoint stated) {
        return Optional.ofNullable(stated.tolerance().get(Factor.BOLT_STIFFNESS))
                .map(Spread::standardDeviation)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** Taken a quarter turn past the onset, where the bolt has yielded all through. */
    private static double twistOverStretch(StatedJoint stated) {
        var curve = TighteningCurve.of(new Tightening(
                stated.joint(), ANY_SNUG_NM, 0, 0, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.ROUND));
        double head = curve.onsetAngleDeg() + QUARTER_TURN_DEG;
        double plasticDeg = head - curve.elasticOriginDeg() - curve.preloadN(head) / curve.preloadRateNPerDeg();
        double stretchMm = curve.plasticStretchMm(head);
        return stated.joint().bolt().thread().pitchMm() * plasticDeg / 360 / stretchMm - 1;
    }

    private static int first(List<Point> points, double elongationUm) {
        return IntStream.range(0, points.size())
                .filter(i -> points.get(i).elongationUm() > elongationUm)
                .findFirst()
                .orElse(points.size());
    }

    private static double slope(List<Point> points, double pitchMm) {
        return LoadOnset.median(IntStream.range(0, points.size())
                .boxed()
                .flatMapToDouble(i -> IntStream.range(0, i)
                        .filter(j ->
                                points.get(i).elongationUm() != points.get(j).elongationUm())
                        .mapToDouble(j -> (besideMm(points.get(i), pitchMm) - besideMm(points.get(j), pitchMm))
                                / (lengthMm(points.get(i)) - lengthMm(points.get(j))))));
    }

    private static double besideMm(Point point, double pitchMm) {
        return pitchMm * point.angleDeg() / 360 - lengthMm(point);
    }

    private static double lengthMm(Point point) {
        return point.elongationUm() / UM_PER_MM;
    }
}
