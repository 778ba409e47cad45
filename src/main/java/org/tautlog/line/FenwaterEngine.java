package org.tautlog.line;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.tautlog.joint.Bolt;
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
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.joint.window.StatedWarmUp;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;

/**
 * The invented engine that the demo is about: three cylinders, aluminium, held together by eight long through-bolts M10 of
 * class 10.9, each through a steel washer, cylinder head, block and bearing ladder into a nut.
 *
 * <p>Tightened to a snug torque of 20 N·m and one full turn on, a bolt of usual strength and friction ends at about nine
 * tenths of its yield strength, tension and torsion together: just short of yield.
 */
public final class FenwaterEngine {
    /** How many through-bolts an engine has; positions count from 1. */
    public static final int BOLTS = 8;

    /** How the bolts are tightened. */
    public static final TighteningMethod METHOD = new TighteningMethod(20.0, 360.0);

    /** Friction in the thread and under the head that bolts and washers are bought for. */
    public static final Friction USUAL_FRICTION = new Friction(0.11, 0.11);

    /** Thickness of the washer under the head, mm. */
    public static final double WASHER_MM = 2.5;

    private static final String SERIAL_PREFIX = "FW-";
    private static final MetricThread THREAD = MetricThread.of("M10x1.5");
    private static final double SHANK_MM = 8.2;
    private static final double SHANK_LENGTH_MM = 378;
    private static final double FREE_THREAD_MM = 24.5;
    private static final double HEAD_MM = 15.6;
    private static final double HOLE_MM = 10.5;
    private static final double STEEL_MPA = 205_000;
    private static final LayerMaterial STEEL = new LayerMaterial("hardened steel", STEEL_MPA, 11.5e-6);
    private static final LayerMaterial ALUMINIUM = new LayerMaterial("cast aluminium", 72_000, 23e-6);
    private static final double COLUMN_MM2 = 900;

    /** Four bulkheads 84 mm apart, a bolt on either side of the bores; the four of each station lie crosswise. */
    private static final List<BoltPlace> PLACES = List.of(
            new BoltPlace("1", 24, 118),
            new BoltPlace("2", 108, 22),
            new BoltPlace("3", 192, 118),
            new BoltPlace("4", 276, 22),
            new BoltPlace("5", 24, 22),
            new BoltPlace("6", 108, 118),
            new BoltPlace("7", 192, 22),
            new BoltPlace("8", 276, 118));

    private FenwaterEngine() {}

    /** {@return one through-bolt and what it clamps, as drawn} */
    public static BoltedJoint joint() {
        return joint(WASHER_MM, 1.0);
    }

    /**
     * The joint as one engine has it.
     *
     * @param washerMm thickness of the washer, mm; 0 where it is missing, the nut then stands further up the thread
     * @param columnShare bearing area of the aluminium columns over the drawn one; above 0
     */
    static BoltedJoint joint(double washerMm, double columnShare) {
        var bolt = new Bolt(
                THREAD,
                List.of(
                        BoltSegment.shank(SHANK_LENGTH_MM, SHANK_MM),
                        BoltSegment.thread(FREE_THREAD_MM - WASHER_MM + washerMm, THREAD)),
                PropertyClass.CLASS_10_9.material(THREAD),
                HeadForm.HEXAGON,
                HEAD_MM,
                HOLE_MM,
                new Engagement(Engagement.Mate.NUT, STEEL_MPA));
        var column = new LayerShape.StatedArea(COLUMN_MM2 * columnShare);
        var parts = List.of(
                new Layer("cylinder head", 125, ALUMINIUM, column),
                new Layer("block", 210, ALUMINIUM, column),
                new Layer("bearing ladder", 65, ALUMINIUM, column));
        if (washerMm == 0) {
            return new BoltedJoint(bolt, parts, USUAL_FRICTION);
        }
        var washer = new Layer("washer", washerMm, STEEL, new LayerShape.Sleeve(HOLE_MM, 20));
        return new BoltedJoint(bolt, List.of(washer, parts.get(0), parts.get(1), parts.get(2)), USUAL_FRICTION);
    }

    /** {@return the released specification: method, window and reading rule} */
    public static JointSpecification specification() {
        var window = new Window(
                new Band(19.0, 24.0),
                new Band(355.0, 367.0),
                new Band(58.0, 80.0),
                new Band(0.112, 0.168),
                new Band(Double.NEGATIVE_INFINITY, 3.5),
                new OnsetLimits(
                        new Band(270.0, Double.POSITIVE_INFINITY), new Band(330.0, Double.POSITIVE_INFINITY), 0.15));
        return new JointSpecification(
                        "Fenwater through-bolt M10", "4", METHOD, window, ReadingRule.withDefaults(), Map.of())
                .withFaults(
                        new FaultRule(new Band(1150, 1300), 30, 0.35, 60, 0.10, 0.10, 5, 5, 8, 0.07, 0.60, 0.06, 8, 20))
                .withStatedJoint(statedJoint())
                .withBoltPositions(IntStream.rangeClosed(1, BOLTS)
                        .mapToObj(Integer::toString)
                        .toList())
                .withBoltPlaces(PLACES);
    }

    /** What the works know of their joint: lot means and spreads, and coolant near 100 deg C after a start at 20. */
    private static StatedJoint statedJoint() {
        var joint = joint();
        var bolt = joint.bolt();
        var usual = bolt.withMaterial(bolt.material().withYieldStrengthMPa(BoltLot.USUAL_YIELD_MPA));
        return new StatedJoint(
                new BoltedJoint(usual, joint.layers(), joint.friction()),
                1.6,
                25.0,
                StatedWarmUp.of(new Temperatures(20, 95, List.of(100.0, 100.0, 100.0, 100.0))),
                Map.of(
                        Factor.YIELD_STRENGTH, Spread.normal(18),
                        Factor.FRICTION, Spread.normal(0.005),
                        Factor.THREAD_FRICTION, Spread.normal(0.004),
                        Factor.UNDER_HEAD_FRICTION, Spread.normal(0.004),
                        Factor.SNUG_TORQUE, Spread.normal(0.3),
                        Factor.TURN, Spread.even(3),
                        Factor.LAYER_STIFFNESS, Spread.normal(0.015),
                        Factor.BOLT_TEMPERATURE, Spread.normal(4),
                        Factor.LAYER_TEMPERATURE, Spread.normal(4)));
    }

    /**
     * The serial of an engine.
     *
     * @param number 1 for the first engine
     * @return such as {@code FW-000001}
     */
    public static String serial(int number) {
        return SERIAL_PREFIX + String.format(Locale.ROOT, "%06d", number);
    }

    /**
     * The number of an engine.
     *
     * @param serial its serial
     * @return 1 for the first engine
     * @throws NumberFormatException where the serial is none of this engine's
     */
    public static int number(String serial) {
        return Integer.parseInt(serial.substring(SERIAL_PREFIX.length()));
    }
}
