package org.tautlog.line;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Friction;
import org.tautlog.joint.MetricThread;
import org.tautlog.joint.PropertyClass;
import org.tautlog.joint.tightening.Seating;

/** Sets up one bolt for one attempt, ordinary or with its fault: what the parts are, and what the tool will do. */
final class Bench {
    /** Torque shown over true torque of the transducer that is out of scale. */
    static final double OUT_OF_SCALE = 1.06;

    private static final double THREAD_MU_SPREAD = 0.004;
    private static final double HEAD_MU_SPREAD = 0.004;
    private static final double COLUMN_SPREAD = 0.015;
    private static final double CONTACT_DEG = 1080;
    private static final double CONTACT_SPREAD_DEG = 12;
    private static final double LOAD_OF_A_TIGHT_BOLT_N = 41_000;
    private static final double DRY_MU = 0.19;
    private static final double ALUMINIUM_UNDER_HEAD_MU = 0.17;

    private Bench() {}

    /** The bolt that goes into one place of one engine, and what its fault changes of it. */
    static Setup setup(Fault fault, int engine, int bolt, long seed) {
        var ordinary = drawn(engine, bolt, seed, FenwaterEngine.WASHER_MM);
        var random = Seeds.stream(seed, Seeds.Use.FAULT, engine, bolt);
        double chance = random.nextDouble();
        return switch (fault) {
            case WEAK_BOLT -> ordinary.withJoint(ofClass88(ordinary.joint(), chance));
            case NOT_SEATED -> ordinary.withObstacle(Obstacle.burr(ordinary.contactDeg() - 250 + 60 * chance, 27, 14));
            case STRIPPED_THREAD -> ordinary.withStripN(22_000 + 6_000 * chance);
            case CROSS_THREADED -> ordinary.withObstacle(Obstacle.crossedThread(150 + 150 * chance, 0.045, 2.5));
            case ALREADY_TIGHT ->
                ordinary.withContactDeg(
                        -new LoadCurve(ordinary.joint(), ordinary.seating()).angleDeg(LOAD_OF_A_TIGHT_BOLT_N));
            case WASHER_MISSING -> withoutWasher(ordinary, engine, bolt, seed);
            case SOFT_LAYER -> ordinary.withSeating(new Seating(0.85 + 0.25 * chance, 15_000));
            case DRY_BOLT -> ordinary.withJoint(ordinary.joint().withFriction(Friction.both(DRY_MU + 0.04 * chance)));
            default -> ordinary;
        };
    }

    /** What the tool does, with the fault. */
    static Programme programme(Fault fault, int engine, int bolt, long seed) {
        var released = Programme.released();
        double chance = Seeds.stream(seed, Seeds.Use.FAULT, engine, bolt).nextDouble();
        return switch (fault) {
            case TURN_SHORT -> released.withTurnDeg(220 + 100 * chance);
            case TURN_LONG -> released.withTurnDeg(400 + 40 * chance);
            case ANGLE_SLIP -> released.withSlip(150 + 100 * chance, 40 + 30 * chance);
            case STICK_SLIP -> released.withStick(0.06);
            case TRUNCATED -> released.recordedTo(150 + 110 * chance);
            default -> released;
        };
    }

    private static Setup drawn(int engine, int bolt, long seed, double washerMm) {
        var lot = BoltLot.ofEngine(engine, seed);
        double columns = 1 + COLUMN_SPREAD * gauss(Seeds.stream(seed, Seeds.Use.ENGINE, engine));
        var random = Seeds.stream(seed, Seeds.Use.BOLT, engine, bolt);
        double yieldMPa = lot.yieldMPa() + BoltLot.YIELD_SPREAD_MPA * gauss(random);
        double shift = lot.frictionShift() + Drift.friction(engine, seed);
        var usual = FenwaterEngine.USUAL_FRICTION;
        var friction = new Friction(
                usual.threadMu() + shift + THREAD_MU_SPREAD * gauss(random),
                usual.underHeadMu() + shift + HEAD_MU_SPREAD * gauss(random));
        var joint = withYield(FenwaterEngine.joint(washerMm, columns), yieldMPa).withFriction(friction);
        return new Setup(
                joint,
                new Seating(0.035 + 0.012 * random.nextDouble(), 2_000),
                CONTACT_DEG + CONTACT_SPREAD_DEG * gauss(random),
                FreeTurning.swinging(1.4 + 0.4 * random.nextDouble(), 360 * random.nextDouble()),
                Obstacle.none(),
                Double.POSITIVE_INFINITY);
    }

    private static Setup withoutWasher(Setup ordinary, int engine, int bolt, long seed) {
        var shorter = drawn(engine, bolt, seed, 0);
        double furtherDeg =
                360 * FenwaterEngine.WASHER_MM / shorter.joint().bolt().thread().pitchMm();
        var friction = new Friction(shorter.joint().friction().threadMu(), ALUMINIUM_UNDER_HEAD_MU);
        return shorter.withJoint(shorter.joint().withFriction(friction))
                .withContactDeg(ordinary.contactDeg() + furtherDeg);
    }

    private static BoltedJoint ofClass88(BoltedJoint joint, double chance) {
        MetricThread thread = joint.bolt().thread();
        var weak = PropertyClass.CLASS_8_8.material(thread);
        return new BoltedJoint(
                joint.bolt().withMaterial(weak.withYieldStrengthMPa(weak.yieldStrengthMPa() + 40 + 40 * chance)),
                joint.layers(),
                joint.friction());
    }

    private static BoltedJoint withYield(BoltedJoint joint, double yieldMPa) {
        var bolt = joint.bolt();
        return new BoltedJoint(
                bolt.withMaterial(bolt.material().withYieldStrengthMPa(yieldMPa)), joint.layers(), joint.friction());
    }

    private static double gauss(UniformRandomProvider random) {
        return ZigguratSampler.NormalizedGaussian.of(random).sample();
    }
}
