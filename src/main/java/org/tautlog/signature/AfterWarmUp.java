package org.tautlog.signature;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.FirstYield;
import org.tautlog.joint.Friction;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Tightened;
import org.tautlog.joint.warmup.HotStrength;
import org.tautlog.joint.warmup.WarmUp;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.joint.window.StatedWarmUp;

/**
 * The clamp load that the first warm-up leaves of an estimated one. Where the hot bolt yields, what stays hangs on its own
 * yield strength, of which only the lot's mean is known, unless the curve shows the yielding itself.
 */
final class AfterWarmUp {
    private static final double N_PER_KN = 1000;
    /** Of yield strength within and between lots, 3 to 5 %. Source: common practice, no source. */
    private static final double YIELD_SHARE = 0.04;

    private static final double BOUNDS_PER_DEVIATION = 4;

    /**
     * A clamp load before the warm-up.
     *
     * @param preloadN the load, N
     * @param shankNm torque in the shank at that load, N·m
     * @param torqueNm final torque less prevailing torque, N·m
     * @param mu apparent friction
     * @param plastic whether the curve shows that the bolt yielded at this load, so that its own strength is known
     */
    record Before(double preloadN, double shankNm, double torqueNm, double mu, boolean plastic) {}

    private AfterWarmUp() {}

    static Feature estimate(StatedJoint stated, Before low, Before middle, Before high) {
        var warmUp = stated.warmUp();
        if (warmUp.isEmpty()) {
            return Feature.missing("the specification states no warm-up");
        }
        var after = run(stated.joint(), warmUp.get(), middle);
        double ownN = (run(stated.joint(), warmUp.get(), high).coldN()
                        - run(stated.joint(), warmUp.get(), low).coldN())
                / BOUNDS_PER_DEVIATION;
        double yieldN = after.yields() ? YIELD_SHARE * after.coldN() : 0;
        return Feature.of(after.coldN() / N_PER_KN, Math.hypot(ownN, yieldN) / N_PER_KN);
    }

    private static Cold run(BoltedJoint joint, StatedWarmUp warmUp, Before before) {
        var own = joint.withFriction(Friction.both(Math.min(1, Math.max(0, before.mu()))));
        double share = before.preloadN() / yieldN(own);
        if (before.plastic() && share < 1) {
            own = weaker(own, share);
            share = 1;
        }
        var result = new WarmUp(
                        own,
                        warmUp.temperatures(),
                        HotStrength.ofBoltSteel(warmUp.temperatures().boltC()),
                        warmUp.torsionLeftShare(),
                        warmUp.embeddingMm(),
                        TorsionRule.FULLY_PLASTIC,
                        Knee.ROUND)
                .run(new Tightened(
                        before.preloadN(), before.torqueNm(), before.shankNm(), 0, 0, share, before.plastic()));
        return new Cold(result.coldAfterN(), result.yieldsAtWarmUp());
    }

    private static double yieldN(BoltedJoint joint) {
        return FirstYield.turningPreloadN(joint.bolt(), joint.friction().threadMu(), TorsionRule.FULLY_PLASTIC);
    }

    private static BoltedJoint weaker(BoltedJoint joint, double share) {
        var bolt = joint.bolt();
        var material =
                bolt.material().withYieldStrengthMPa(share * bolt.material().yieldStrengthMPa());
        return new BoltedJoint(bolt.withMaterial(material), joint.layers(), joint.friction());
    }

    /** What is left when cold again, and whether the hot bolt yielded. */
    private record Cold(double coldN, boolean yields) {}
}
