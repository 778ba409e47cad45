package org.tautlog.accuracy;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Curve;

/**
 * A fault that can be placed at several sizes.
 *
 * @param name in plain words
 * @param codes the fault's own findings, of which one must be there
 * @param unit what the size is
 * @param sizes from small to large
 * @param matters the size from which on it must be found
 * @param past a size just past the fault's limit, where a limit twice as wide would no longer find it
 * @param leastCalled share that must be called so first, above all else that was found
 * @param rule the quantitative rule that finds it, with the keys of the specification
 * @param change places it in the curve's making
 * @param after places it in the recording
 */
record FaultCase(
        String name,
        Set<FindingCode> codes,
        String unit,
        List<Double> sizes,
        double matters,
        double past,
        double leastCalled,
        String rule,
        BiConsumer<MadeCurve, Double> change,
        BiFunction<Curve, Double, Curve> after) {
    static final double WANTED = 0.98;

    static FaultCase made(
            String name,
            String unit,
            List<Double> sizes,
            double matters,
            String rule,
            BiConsumer<MadeCurve, Double> change,
            FindingCode first,
            FindingCode... others) {
        return new FaultCase(
                name,
                EnumSet.of(first, others),
                unit,
                sizes,
                matters,
                matters,
                WANTED,
                rule,
                change,
                (curve, size) -> curve);
    }

    static FaultCase recorded(
            String name,
            String unit,
            List<Double> sizes,
            double matters,
            String rule,
            BiFunction<Curve, Double, Curve> after,
            FindingCode code) {
        return new FaultCase(
                name, EnumSet.of(code), unit, sizes, matters, matters, WANTED, rule, (made, size) -> {}, after);
    }

    FaultCase withPast(double size) {
        return new FaultCase(name, codes, unit, sizes, matters, size, leastCalled, rule, change, after);
    }

    FaultCase calledAtLeast(double share) {
        return new FaultCase(name, codes, unit, sizes, matters, past, share, rule, change, after);
    }

    Curve curve(long seed, double size) {
        var made = Faults.ordinary(seed);
        change.accept(made, size);
        return after.apply(made.make(), size);
    }
}
