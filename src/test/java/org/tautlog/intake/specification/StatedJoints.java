package org.tautlog.intake.specification;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltMaterial;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Engagement;
import org.tautlog.joint.Friction;
import org.tautlog.joint.HeadForm;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.LayerShape;
import org.tautlog.joint.MetricThread;
import org.tautlog.joint.PropertyClass;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.joint.window.StatedWarmUp;

/** Joints of every kind that a file can state. */
final class StatedJoints {
    private StatedJoints() {}

    static Arbitrary<StatedJoint> any() {
        return Combinators.combine(
                        joints(),
                        between(0, 20),
                        between(1, 100).injectNull(0.3),
                        warmUps().injectNull(0.3),
                        Arbitraries.maps(Arbitraries.of(Factor.class), spreads()))
                .as((joint, prevailing, drive, warmUp, tolerance) ->
                        new StatedJoint(joint, prevailing, drive, warmUp, warmUp == null ? Map.of() : tolerance));
    }

    private static Arbitrary<BoltedJoint> joints() {
        return Combinators.combine(
                        bolts(),
                        between(0, 1),
                        between(0, 1),
                        Arbitraries.of("block", "cylinder \"head\"", "Zylinderkopf α"),
                        shapes())
                .as((bolt, thread, underHead, name, shape) -> {
                    double half = bolt.freeLengthMm() / 2;
                    var aluminium = new LayerMaterial("AlSi7Mg", 71_234.5, 23e-6);
                    return new BoltedJoint(
                            bolt,
                            List.of(new Layer(name, half, aluminium, shape), new Layer("b", half, aluminium, shape)),
                            new Friction(thread, underHead));
                });
    }

    private static Arbitrary<Bolt> bolts() {
        var threads = Arbitraries.of("M8x1", "M10x1.5", "M12x1.75").map(MetricThread::of);
        var engagements = Combinators.combine(Arbitraries.of(Engagement.Mate.class), between(60_000, 210_000))
                .as(Engagement::new);
        return Combinators.combine(
                        threads,
                        between(1, 400),
                        between(5, 9),
                        Arbitraries.of(HeadForm.class),
                        Arbitraries.of(PropertyClass.class).injectNull(0.3),
                        between(650, 1300),
                        engagements)
                .as((thread, length, diameter, head, known, yieldMPa, engagement) -> new Bolt(
                        thread,
                        List.of(
                                BoltSegment.shank(length, diameter),
                                BoltSegment.thread(12.3, thread),
                                new BoltSegment(1, diameter, BoltSegment.Form.THREAD)),
                        known == null
                                ? new BoltMaterial(204_000, yieldMPa, 1400, 12e-6, 0.07, 900)
                                : known.material(thread).withYieldStrengthMPa(yieldMPa),
                        head,
                        17.5,
                        11.1,
                        engagement));
    }

    private static Arbitrary<LayerShape> shapes() {
        return Arbitraries.oneOf(
                between(1, 2000).map(LayerShape.StatedArea::new),
                between(10, 17).map(hole -> new LayerShape.Cone(hole, hole + 20)),
                between(10, 17).map(hole -> new LayerShape.Sleeve(hole, hole + 20)));
    }

    private static Arbitrary<StatedWarmUp> warmUps() {
        return Combinators.combine(
                        between(-30, 40),
                        between(40, 200),
                        between(40, 200),
                        between(40, 200),
                        between(0, 1),
                        between(0.1, 2).injectNull(0.5))
                .as((assembly, bolt, first, second, share, stretch) -> new StatedWarmUp(
                        new Temperatures(assembly, bolt, List.of(first, second)), share, share / 50, stretch));
    }

    private static Arbitrary<Spread> spreads() {
        var widths = Arbitraries.doubles().between(0, 50);
        return Arbitraries.oneOf(widths.map(Spread::normal), widths.map(Spread::even));
    }

    private static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high);
    }
}
