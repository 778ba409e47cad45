package org.tautlog.joint.study;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tautlog.joint.tightening.Tightened;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.WarmUpResult;

/** All draws of one study: the factors as drawn, the quantities as found. Lives and dies within one run. */
final class Sample {
    static final List<Quantity> WINDOWED = List.of(
            Quantity.SNUG_TORQUE, Quantity.TURN, Quantity.FINAL_TORQUE, Quantity.TORQUE_RATE, Quantity.ONSET_ANGLE);

    final List<Factor> factors;
    final double[][] probability;
    final double[][] standardised;
    int yieldedAtAssembly;
    int yieldedAtWarmUp;
    double hotYieldSumN;
    double thermalSumN;

    private final int draws;
    private final Map<Quantity, double[]> found = new EnumMap<>(Quantity.class);

    Sample(List<Factor> factors, int draws) {
        this.factors = factors;
        probability = new double[factors.size()][draws];
        standardised = new double[factors.size()][draws];
        this.draws = draws;
    }

    double[] of(Quantity quantity) {
        return found.computeIfAbsent(quantity, none -> new double[draws]);
    }

    void keep(int draw, Tightening drawn, TighteningCurve curve, Tightened end, WarmUpResult warm) {
        var onsetN = curve.onsetPreloadN();
        of(Quantity.SNUG_TORQUE)[draw] = drawn.snugTorqueNm();
        of(Quantity.SNUG_PRELOAD)[draw] = curve.snugPreloadN();
        of(Quantity.TURN)[draw] = drawn.turnDeg();
        of(Quantity.FINAL_TORQUE)[draw] = end.torqueNm();
        of(Quantity.TORQUE_RATE)[draw] = curve.torqueRateNmPerDeg();
        of(Quantity.ONSET_ANGLE)[draw] = curve.headAngleDeg(onsetN) - curve.elasticOriginDeg();
        of(Quantity.ONSET_TORQUE)[draw] = curve.torqueNmAtPreload(onsetN);
        of(Quantity.FINAL_PRELOAD)[draw] = end.preloadN();
        of(Quantity.YIELD_SHARE)[draw] = end.yieldShare();
        of(Quantity.HOT_PRELOAD)[draw] = warm.hotN();
        of(Quantity.COLD_PRELOAD)[draw] = warm.coldAfterN();
        of(Quantity.PLASTIC_STRAIN)[draw] = warm.plasticStrain();
        of(Quantity.USED_ELONGATION)[draw] = warm.usedElongationShare();
        if (warm.yieldedAtAssembly()) yieldedAtAssembly++;
        if (warm.yieldsAtWarmUp()) yieldedAtWarmUp++;
        hotYieldSumN += warm.hotYieldN();
        thermalSumN += warm.thermalN();
    }
}
