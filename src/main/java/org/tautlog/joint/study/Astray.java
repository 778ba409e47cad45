package org.tautlog.joint.study;

import java.util.Map;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltMaterial;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Engagement;
import org.tautlog.joint.Friction;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.MetricThread;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.warmup.Temperatures;

/** One tightening with every factor as far astray as it was drawn. */
final class Astray {
    private Astray() {}

    static Tightening tightening(Tightening nominal, Map<Factor, Double> astray) {
        var seating = nominal.seating();
        return new Tightening(
                joint(nominal.joint(), astray),
                nominal.snugTorqueNm() + by(astray, Factor.SNUG_TORQUE),
                nominal.turnDeg() + by(astray, Factor.TURN),
                nominal.prevailingTorqueNm(),
                new Seating(Math.max(0, seating.closureMm() + by(astray, Factor.SEATING)), seating.closingLoadN()),
                nominal.torsionRule(),
                nominal.knee());
    }

    static Temperatures temperatures(Temperatures nominal, Map<Factor, Double> astray) {
        var layersK = by(astray, Factor.LAYER_TEMPERATURE);
        return new Temperatures(
                nominal.assemblyC(),
                nominal.boltC() + by(astray, Factor.BOLT_TEMPERATURE),
                nominal.layersC().stream().map(layerC -> layerC + layersK).toList());
    }

    private static BoltedJoint joint(BoltedJoint nominal, Map<Factor, Double> astray) {
        var longer = 1 + by(astray, Factor.LENGTH) / nominal.gripMm();
        var stiffer = 1 + by(astray, Factor.LAYER_STIFFNESS);
        var layers = nominal.layers().stream()
                .map(layer -> new Layer(
                        layer.name(), layer.thicknessMm() * longer, stiffer(layer.material(), stiffer), layer.shape()))
                .toList();
        var both = by(astray, Factor.FRICTION);
        var friction = new Friction(
                nominal.friction().threadMu() + both + by(astray, Factor.THREAD_FRICTION),
                nominal.friction().underHeadMu() + both + by(astray, Factor.UNDER_HEAD_FRICTION));
        return new BoltedJoint(bolt(nominal.bolt(), longer, astray), layers, friction);
    }

    private static Bolt bolt(Bolt nominal, double longer, Map<Factor, Double> astray) {
        var thread = nominal.thread();
        var segments = nominal.segments().stream()
                .map(segment -> new BoltSegment(segment.lengthMm() * longer, segment.diameterMm(), segment.form()))
                .toList();
        var stiffer = 1 + by(astray, Factor.BOLT_STIFFNESS);
        var engagement = nominal.engagement();
        return new Bolt(
                new MetricThread(thread.nominalMm(), thread.pitchMm() + by(astray, Factor.PITCH)),
                segments,
                material(nominal.material(), stiffer, by(astray, Factor.YIELD_STRENGTH)),
                nominal.headForm(),
                nominal.bearingOuterMm(),
                nominal.bearingInnerMm(),
                new Engagement(engagement.mate(), engagement.youngsModulusMPa() * stiffer));
    }

    /** Strength moves as a lot's does: yield and tensile strength together. */
    private static BoltMaterial material(BoltMaterial nominal, double stiffer, double strongerMPa) {
        return new BoltMaterial(
                nominal.youngsModulusMPa() * stiffer,
                nominal.yieldStrengthMPa() + strongerMPa,
                nominal.ultimateStrengthMPa() + strongerMPa,
                nominal.expansionPerK(),
                nominal.uniformElongation(),
                nominal.hardeningModulusMPa());
    }

    private static LayerMaterial stiffer(LayerMaterial nominal, double stiffer) {
        return new LayerMaterial(nominal.name(), nominal.youngsModulusMPa() * stiffer, nominal.expansionPerK());
    }

    private static double by(Map<Factor, Double> astray, Factor factor) {
        return astray.getOrDefault(factor, 0.0);
    }
}
