package org.tautlog.joint.warmup;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Require;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.PlasticStretch;
import org.tautlog.joint.tightening.Tightened;

/**
 * The first warm-up of a tightened joint, and its return to the cold.
 *
 * <pre>
 * cold:        F_0 delta = u_0 - f_Z
 * hot:         F_h delta_h + u_p(F_h) = u_0 - f_Z + du      delta_h = delta_S E/E_h + delta_P
 * cold again:  F_c delta = u_0 - f_Z - u_p
 *
 * u_0 drawn together at the end of the turn, f_Z embedding, du outgrowth of the layers, u_p new plastic stretch, mm
 * delta_S, delta_P what bolt and layers give, mm/N
 * </pre>
 *
 * So the bolt that stays elastic gets its clamp load back, and the bolt that reaches its hot yield is cut down to hot yield
 * less the thermal load: high clamp loads come down, low ones stay. It is no levelling.
 *
 * <p>Source: VDI 2230-1:2015 clause 5.4.2.3 for the elastic part, from memory; elementary plasticity for the rest.
 *
 * @param joint bolt, layers and friction
 * @param temperatures when tightened and when hot
 * @param strength what heat leaves of the bolt
 * @param torsionLeftShare share of the shank's torque that stays after the tool lets go; 0 to 1. Half is usual (VDI 2230-1,
 *     from memory)
 * @param embeddingMm how far rough faces flatten before the warm-up, mm; at least 0
 * @param torsionRule when a twisted and stretched section counts as yielding
 * @param knee how the bolt's stress goes on past the elastic line
 */
public record WarmUp(
        BoltedJoint joint,
        Temperatures temperatures,
        HotStrength strength,
        double torsionLeftShare,
        double embeddingMm,
        TorsionRule torsionRule,
        Knee knee) {
    /** Share of the shank's torque that usually stays. Source: VDI 2230-1:2015 (reduction coefficient 0.5), from memory. */
    public static final double USUAL_TORSION_LEFT_SHARE = 0.5;

    /** Checks each value. */
    public WarmUp {
        Require.present("joint", joint);
        Require.present("temperatures", temperatures);
        Require.present("strength", strength);
        Require.within("torsionLeftShare", torsionLeftShare, 0, 1, "");
        Require.atLeast("embeddingMm", embeddingMm, 0, "mm");
        Require.present("torsionRule", torsionRule);
        Require.present("knee", knee);
    }

    /**
     * A warm-up of quenched and tempered bolt steel with a round knee, half the torsion left and no embedding.
     *
     * @param joint bolt, layers and friction
     * @param temperatures when tightened and when hot
     * @return the warm-up
     */
    public static WarmUp of(BoltedJoint joint, Temperatures temperatures) {
        return new WarmUp(
                joint,
                temperatures,
                HotStrength.ofBoltSteel(temperatures.boltC()),
                USUAL_TORSION_LEFT_SHARE,
                0,
                TorsionRule.FULLY_PLASTIC,
                Knee.ROUND);
    }

    /**
     * Takes a tightened bolt through its first warm-up.
     *
     * @param end the bolt at the end of its turn
     * @return cold, hot and cold again
     */
    public WarmUpResult run(Tightened end) {
        var bolt = joint.bolt();
        var boltMmPerN = joint.boltResilienceMmPerN();
        var layersMmPerN = joint.clampedResilienceMmPerN();
        var coldMmPerN = boltMmPerN + layersMmPerN;
        var hotMmPerN = boltMmPerN / strength.modulusShare() + layersMmPerN;
        var drawnMm = Math.max(0, end.preloadN() * coldMmPerN - embeddingMm);
        var outgrowthMm = temperatures.outgrowthMm(joint);
        var plastic = PlasticStretch.standing(
                bolt,
                joint.friction().threadMu(),
                torsionRule,
                knee,
                end.preloadN(),
                torsionLeftShare * end.shankTorqueNm(),
                strength.yieldShare());
        var hotDrawnMm = Math.max(0, drawnMm + outgrowthMm);
        var hotN = plastic.preloadN(hotMmPerN, hotDrawnMm);
        var stretchMm = Math.max(0, hotDrawnMm - hotN * hotMmPerN);
        var strain = end.plasticStrain() + plastic.largestStrain(hotN, stretchMm);
        var hotYieldN = plastic.elasticLimitN();
        return new WarmUpResult(
                drawnMm / coldMmPerN,
                outgrowthMm,
                outgrowthMm / hotMmPerN,
                hotYieldN,
                hotN,
                Math.max(0, (drawnMm - stretchMm) / coldMmPerN),
                stretchMm,
                strain,
                strain / bolt.material().uniformElongation(),
                end.yielded(),
                hotN >= hotYieldN && stretchMm > 0);
    }
}
