package org.tautlog.joint.warmup;

/**
 * A bolt's clamp load cold, hot and cold again.
 *
 * @param coldBeforeN clamp load before the warm-up, after embedding, N
 * @param outgrowthMm by how much the layers would outgrow the bolt freely, mm; negative where the bolt outgrows them
 * @param thermalN what that would add to an elastic bolt, N
 * @param hotYieldN clamp load at which the hot bolt yields, with the torsion that is left, N
 * @param hotN clamp load when hot, N
 * @param coldAfterN clamp load when cold again, N
 * @param plasticStretchMm how far the warm-up stretched the bolt for good, mm; at least 0
 * @param plasticStrain the largest plastic strain of any section, that of the tightening included, a share
 * @param usedElongationShare that strain over the uniform elongation; 1 is where necking starts
 * @param yieldedAtAssembly whether the bolt yielded while it was turned
 * @param yieldsAtWarmUp whether the bolt yielded further on the warm-up, by {@code PlasticStretch.elasticLimitN}
 */
public record WarmUpResult(
        double coldBeforeN,
        double outgrowthMm,
        double thermalN,
        double hotYieldN,
        double hotN,
        double coldAfterN,
        double plasticStretchMm,
        double plasticStrain,
        double usedElongationShare,
        boolean yieldedAtAssembly,
        boolean yieldsAtWarmUp) {
    /**
     * The clamp load that the warm-up took for good.
     *
     * @return N; 0 for a bolt that stayed elastic
     */
    public double lostN() {
        return coldBeforeN - coldAfterN;
    }
}
