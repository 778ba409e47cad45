package org.tautlog.joint.tightening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.FirstYield;
import org.tautlog.joint.Require;
import org.tautlog.joint.TorsionRule;

/**
 * How a bolt stretches plastically: section after section starts to yield as the preload rises, each along its own straight
 * hardening line.
 *
 * <pre>
 * u_p(F) = sum over sections of max(0, F - F_y) / k_h      mm
 * k_h = E_p A / l      E_p = H / (1 - H/E) slope of stress over plastic strain, MPa
 * </pre>
 *
 * Torsion in proportion to preload lowers F_y and leaves k_h (flow rule of the distortion-energy criterion).
 *
 * <p>Source: elementary plasticity; a perfectly plastic section (H = 0) holds the preload at its yield load.
 *
 * @param steps the sections; at least one. Kept in order of the preload at which they yield
 */
public record YieldSteps(List<Step> steps) {
    /**
     * One section that yields.
     *
     * @param yieldN the preload at which it starts, N; at least 0
     * @param hardeningNPerMm the slope of preload over plastic stretch, N/mm; 0 is perfectly plastic
     * @param lengthMm the length that yields, mm; above 0
     */
    public record Step(double yieldN, double hardeningNPerMm, double lengthMm) {
        /** Checks each value. */
        public Step {
            Require.atLeast("yieldN", yieldN, 0, "N");
            Require.atLeast("hardeningNPerMm", hardeningNPerMm, 0, "N/mm");
            Require.above("lengthMm", lengthMm, 0, "mm");
        }

        private double stretchMm(double preloadN) {
            return preloadN <= yieldN || hardeningNPerMm == 0 ? 0 : (preloadN - yieldN) / hardeningNPerMm;
        }
    }

    /** Sorts and copies the list. */
    public YieldSteps {
        var sorted = new ArrayList<>(Require.present("steps", steps));
        if (sorted.isEmpty()) throw new IllegalArgumentException("steps is empty; a bolt has at least one section");
        sorted.sort(Comparator.comparingDouble(Step::yieldN));
        steps = List.copyOf(sorted);
    }

    /**
     * The steps of a bolt that is being turned.
     *
     * @param bolt the bolt
     * @param threadMu friction in the thread; at least 0
     * @param rule when a section counts as yielding
     * @return its steps
     */
    public static YieldSteps turning(Bolt bolt, double threadMu, TorsionRule rule) {
        var steps = new ArrayList<Step>();
        for (var section : bolt.strengthSections())
            steps.add(step(bolt, section, turningN(bolt, section, threadMu, rule)));
        return new YieldSteps(steps);
    }

    /**
     * The steps of a bolt whose turning is over: hardened by what it took, a torque left in the shank, its strength changed
     * by temperature.
     *
     * <p>A section that yielded on the way to the highest preload now yields at the equivalent stress it had there.
     *
     * @param bolt the bolt
     * @param threadMu friction in the thread while it was turned; at least 0
     * @param rule when a section counts as yielding
     * @param reachedN the highest preload while it was turned, N; at least 0
     * @param shankTorqueNm the torque left in the shank, N·m; at least 0
     * @param yieldShare yield strength now over yield strength while it was turned; above 0
     * @return its steps
     */
    public static YieldSteps standing(
            Bolt bolt, double threadMu, TorsionRule rule, double reachedN, double shankTorqueNm, double yieldShare) {
        Require.above("yieldShare", yieldShare, 0, "");
        var steps = new ArrayList<Step>();
        for (var section : bolt.strengthSections()) {
            var hardening = Math.max(1, reachedN / turningN(bolt, section, threadMu, rule));
            var stressMPa = bolt.material().yieldStrengthMPa() * hardening * yieldShare;
            steps.add(step(
                    bolt, section, FirstYield.standingPreloadN(stressMPa, section.diameterMm(), shankTorqueNm, rule)));
        }
        return new YieldSteps(steps);
    }

    /**
     * The preload at which the weakest section yields.
     *
     * @return N
     */
    public double firstN() {
        return steps.get(0).yieldN();
    }

    /**
     * The preload that cannot be passed because a perfectly plastic section holds it.
     *
     * @return N; infinite where every section hardens
     */
    public double heldN() {
        for (var step : steps) if (step.hardeningNPerMm() == 0) return step.yieldN();
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Plastic stretch at a preload.
     *
     * @param preloadN N; up to {@link #heldN}
     * @return mm; at the held preload the least stretch it takes to get there
     */
    public double stretchMm(double preloadN) {
        var sum = 0.0;
        for (var step : steps) sum += step.stretchMm(preloadN);
        return sum;
    }

    /**
     * How fast plastic stretch grows with preload.
     *
     * @param preloadN N; below {@link #heldN}
     * @return mm/N
     */
    public double slopeMmPerN(double preloadN) {
        var sum = 0.0;
        for (var step : steps) if (preloadN > step.yieldN()) sum += 1 / step.hardeningNPerMm();
        return sum;
    }

    /**
     * The preload when bolt and joint together are drawn together by a given length.
     *
     * <pre>
     * F resilience + u_p(F) = u
     * </pre>
     *
     * @param resilienceMmPerN how much bolt and layers give elastically, mm/N; above 0
     * @param drawnMm the length u, mm
     * @return N; at most {@link #heldN}
     */
    public double preloadN(double resilienceMmPerN, double drawnMm) {
        Require.above("resilienceMmPerN", resilienceMmPerN, 0, "mm/N");
        var preloadN = drawnMm / resilienceMmPerN;
        var giveMmPerN = resilienceMmPerN;
        for (var step : steps) {
            if (preloadN <= step.yieldN()) break;
            if (step.hardeningNPerMm() == 0) return step.yieldN();
            var moreMm = (preloadN - step.yieldN()) * giveMmPerN;
            giveMmPerN += 1 / step.hardeningNPerMm();
            preloadN = step.yieldN() + moreMm / giveMmPerN;
        }
        return preloadN;
    }

    /**
     * The largest plastic strain of any section when the whole bolt has stretched plastically by a given length.
     *
     * @param preloadN the preload, N
     * @param stretchMm the whole bolt's plastic stretch, mm; what the hardening sections do not account for is taken by the
     *     section that holds the preload
     * @return a share (0.01 is 1 %)
     */
    public double largestStrain(double preloadN, double stretchMm) {
        var largest = 0.0;
        var restMm = stretchMm;
        for (var step : steps) {
            var ownMm = step.stretchMm(preloadN);
            restMm -= ownMm;
            largest = Math.max(largest, ownMm / step.lengthMm());
        }
        if (preloadN >= heldN())
            for (var step : steps) if (step.hardeningNPerMm() == 0) return Math.max(largest, restMm / step.lengthMm());
        return largest;
    }

    private static double turningN(Bolt bolt, BoltSegment section, double threadMu, TorsionRule rule) {
        return FirstYield.turningPreloadN(
                bolt.material().yieldStrengthMPa(), section.diameterMm(), bolt.thread(), threadMu, rule);
    }

    private static Step step(Bolt bolt, BoltSegment section, double yieldN) {
        return new Step(
                yieldN,
                bolt.material().plasticModulusMPa() * section.areaMm2() / section.lengthMm(),
                section.lengthMm());
    }
}
