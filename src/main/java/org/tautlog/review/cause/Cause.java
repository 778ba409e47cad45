package org.tautlog.review.cause;

/**
 * What can make a curve differ, with the size that it usually has and the streams in which it usually shows.
 *
 * <p>Sizes are one standard deviation of what the trade meets when the cause is there; shares of patterns say of a hundred
 * such troubles how many show on one spindle, on all alike, with one lot, in one tightening. Common practice, no source: a
 * tool's sensors stay with their spindle, coating and strength come with the lot, a programme is sent to all spindles and no
 * bolt lot sets the torque at which its snug stage ends. The standards that the checks name are cited from memory.
 */
public enum Cause {
    /** Friction of thread and head, by lubricant or coating. */
    FRICTION(
            "friction or lubricant",
            "%",
            0.08,
            15,
            15,
            40,
            30,
            "Take bolts of this lot and of the lot before from the line and compare their friction coefficient on the test"
                    + " bench (ISO 16047); look at lubricant, washing and under-head face at this place."),
    /** Yield strength of the bolts. */
    BOLT_STRENGTH(
            "bolt strength",
            "%",
            0.04,
            5,
            10,
            50,
            35,
            "Have bolts of this lot tested for hardness and in tension (ISO 898-1), and compare marking and certificate with"
                    + " the lot before."),
    /** How stiff bolt and layers are together: a part of another make, a layer missing or added, a soft layer. */
    JOINT_STIFFNESS(
            "joint stiffness or a layer",
            "%",
            0.05,
            25,
            15,
            12,
            48,
            "Open one joint that differs: look for a missing, doubled or soft layer, and measure grip and washers."),
    /** Scale of the torque transducer. */
    TORQUE_SCALE(
            "torque transducer scale",
            "%",
            0.04,
            82,
            3,
            3,
            12,
            "Check this spindle against a reference torque transducer in line (ISO 5393) before the next engine; every torque"
                    + " since it began is in doubt."),
    /** Scale of the angle encoder. */
    ANGLE_SCALE(
            "angle encoder scale",
            "%",
            0.03,
            82,
            3,
            3,
            12,
            "Turn this spindle through a marked full turn and compare it with the counted angle; check encoder and gear ratio"
                    + " in the controller."),
    /** Twist of the drive between angle sensor and head. */
    WIND_UP(
            "drive wind-up",
            "%",
            0.25,
            84,
            2,
            2,
            12,
            "Look at socket, extension and coupling of this spindle for wear or an exchanged part, and compare its spring-back"
                    + " with the spindle beside it."),
    /** Torque at which the snug stage ends. */
    SNUG_TORQUE(
            "snug stage",
            "N·m",
            0.5,
            65,
            23,
            0,
            12,
            "Compare programmed snug torque, speed and switch-over of this spindle's snug stage with the spindle beside it."),
    /** Turn that the tool makes past the snug point. */
    TURN(
            "turn made by the tool",
            "deg",
            4,
            60,
            20,
            3,
            17,
            "Compare programmed turn, stopping speed and brake of this spindle with the spindle beside it.");

    private static final int EVEN_PERCENT = 33;

    private final String title;
    private final String unit;
    private final double usualSize;
    private final int onSpindle;
    private final int onAll;
    private final int withLot;
    private final int inOne;
    private final String check;

    Cause(String title, String unit, double usualSize, int onSpindle, int onAll, int withLot, int inOne, String check) {
        this.title = title;
        this.unit = unit;
        this.usualSize = usualSize;
        this.onSpindle = onSpindle;
        this.onAll = onAll;
        this.withLot = withLot;
        this.inOne = inOne;
        this.check = check;
    }

    /** {@return the cause in words} */
    public String title() {
        return title;
    }

    /** {@return the unit that its size is told in; sizes in per cent are shares of one} */
    public String unit() {
        return unit;
    }

    /** {@return one standard deviation of its size where it is there, a share of one or in its unit} */
    public double usualSize() {
        return usualSize;
    }

    /**
     * {@return the share of its occurrences that show in a pattern, 0 to 1}
     *
     * @param pattern in which streams
     */
    public double shareIn(Pattern pattern) {
        int percent = switch (pattern) {
            case ONE_SPINDLE -> onSpindle;
            case ALL_SPINDLES -> onAll;
            case ONLY_SPINDLE -> EVEN_PERCENT;
            case ONE_LOT -> withLot;
            case ONE_TIGHTENING -> inOne;
        };
        return percent / 100.0;
    }

    /** {@return whether it comes with bolts or joint; else it is of the tool} */
    public boolean comesWithParts() {
        return comesWithBolts() || this == JOINT_STIFFNESS;
    }

    boolean comesWithBolts() {
        return this == FRICTION || this == BOLT_STRENGTH;
    }

    /**
     * {@return what to check on the floor, in sentences}
     *
     * @param pattern in which streams something differs: where it is more than one spindle, none beside it serves to compare
     */
    public String check(Pattern pattern) {
        return pattern.hasNeighbour()
                ? check
                : switch (this) {
                    case FRICTION, BOLT_STRENGTH, JOINT_STIFFNESS -> check;
                    case TORQUE_SCALE ->
                        "Check each of the spindles against a reference torque transducer in line (ISO 5393) before the next"
                                + " engine, and see who calibrated them last; every torque since it began is in doubt.";
                    case ANGLE_SCALE ->
                        "Turn each of the spindles through a marked full turn and compare it with the counted angle; check"
                                + " the gear ratio in the controller.";
                    case WIND_UP ->
                        "Look at sockets, extensions and couplings for an exchanged make, and compare their spring-back with"
                                + " that of another station's.";
                    case SNUG_TORQUE ->
                        "Compare programmed snug torque, speed and switch-over of the snug stage with the programme before.";
                    case TURN -> "Compare programmed turn, stopping speed and brake with the programme before.";
                };
    }
}
