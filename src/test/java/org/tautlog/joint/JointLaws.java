package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.tautlog.joint.LayerShape.Cone;

/** What holds for every joint. */
class JointLaws {
    private static final double MM_PER_INCH = 25.4;

    @Property
    void more_friction_never_raises_the_preload_at_yield(
            @ForAll @DoubleRange(min = 0, max = 0.4) double mu,
            @ForAll @DoubleRange(min = 0, max = 0.4) double more,
            @ForAll TorsionRule rule) {
        var bolt = Joints.longThroughBolt().bolt();
        assertTrue(FirstYield.turningPreloadN(bolt, mu + more, rule) <= FirstYield.turningPreloadN(bolt, mu, rule));
    }

    @Property
    void preload_from_torque_from_preload_is_the_same(
            @ForAll @DoubleRange(min = 0.02, max = 0.5) double threadMu,
            @ForAll @DoubleRange(min = 0.02, max = 0.5) double underHeadMu,
            @ForAll @DoubleRange(min = 1, max = 1e5) double preloadN,
            @ForAll TorqueForm form) {
        var bolt = Joints.longThroughBolt().bolt();
        var friction = new Friction(threadMu, underHeadMu);
        var torqueNm = TorquePreload.torqueNm(bolt, friction, preloadN, form);
        assertEquals(preloadN, TorquePreload.preloadN(bolt, friction, torqueNm, form), 1e-9 * preloadN);
    }

    @Property
    void a_friction_test_gives_back_the_friction(
            @ForAll @DoubleRange(min = 0.04, max = 0.4) double threadMu,
            @ForAll @DoubleRange(min = 0.04, max = 0.4) double underHeadMu,
            @ForAll @DoubleRange(min = 1_000, max = 1e5) double preloadN) {
        var bolt = Joints.longThroughBolt().bolt();
        var friction = new Friction(threadMu, underHeadMu);
        var form = TorqueForm.ADDED_TERMS;
        var reading = new FrictionTest(
                bolt.thread(),
                bolt.meanBearingDiameterMm(),
                preloadN,
                TorquePreload.torqueNm(bolt, friction, preloadN, form),
                TorquePreload.threadTorqueNm(bolt, friction, preloadN, form));
        assertEquals(threadMu, reading.threadMu(), 0.001 * threadMu);
        assertEquals(underHeadMu, reading.underHeadMu(), 1e-9);
        assertEquals(TorquePreload.nutFactor(bolt, friction, form), reading.nutFactor(), 1e-12);
    }

    @Property
    void the_unit_of_length_changes_no_stiffness(
            @ForAll @DoubleRange(min = 20, max = 60) double outerMm,
            @ForAll @DoubleRange(min = 20, max = 400) double gripMm,
            @ForAll Engagement.Mate mate) {
        var metric = joint(1, outerMm, gripMm, mate);
        var inches = joint(1 / MM_PER_INCH, outerMm, gripMm, mate);
        var given = metric.resilienceMmPerN();
        assertEquals(given, inches.resilienceMmPerN() * MM_PER_INCH, 1e-12 * given);
        assertEquals(metric.loadFactor(), inches.loadFactor(), 1e-12);
    }

    @Property
    void a_wider_layer_gives_less_and_the_load_factor_is_a_share(
            @ForAll @DoubleRange(min = 16, max = 60) double outerMm,
            @ForAll @DoubleRange(min = 0, max = 40) double widerMm,
            @ForAll @DoubleRange(min = 20, max = 400) double gripMm) {
        var narrow = joint(1, outerMm, gripMm, Engagement.Mate.NUT);
        var wide = joint(1, outerMm + widerMm, gripMm, Engagement.Mate.NUT);
        assertTrue(wide.clampedResilienceMmPerN() <= narrow.clampedResilienceMmPerN() * (1 + 1e-12));
        assertTrue(narrow.loadFactor() > 0 && narrow.loadFactor() < 1);
    }

    /** Lengths times a scale; moduli stay per mm2, so the unit of area is scaled back. */
    private static BoltedJoint joint(double scale, double outerMm, double gripMm, Engagement.Mate mate) {
        var perArea = 1 / (scale * scale);
        var bolt = new Bolt(
                new MetricThread(10 * scale, 1.5 * scale),
                List.of(
                        BoltSegment.shank(gripMm * 0.6 * scale, 8.2 * scale),
                        BoltSegment.thread(gripMm * 0.4 * scale, new MetricThread(10 * scale, 1.5 * scale))),
                new BoltMaterial(205_000 * perArea, 940 * perArea, 1040 * perArea, 11.5e-6, 0.04, 2500 * perArea),
                HeadForm.HEXAGON,
                14.63 * scale,
                11 * scale,
                new Engagement(mate, 205_000 * perArea));
        var material = new LayerMaterial("cast aluminium", 72_000 * perArea, 23e-6);
        return new BoltedJoint(
                bolt,
                List.of(new Layer("plate", gripMm * scale, material, new Cone(11 * scale, outerMm * scale))),
                Friction.both(0.1));
    }
}
