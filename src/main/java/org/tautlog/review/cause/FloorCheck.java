package org.tautlog.review.cause;

import java.util.Arrays;

/**
 * Checks on the floor that tell two causes apart: each has one result where it meets one of its own causes, and another where
 * it does not. The first in this order that answers differently for two causes separates them, so the cheap and sure ones
 * come first.
 *
 * <p>Source: common practice, no source; the standards named are cited from memory.
 */
public enum FloorCheck {
    /** A reference transducer in line with the tool. */
    REFERENCE_TRANSDUCER(
            "put a reference torque transducer in line with this spindle (ISO 5393) and tighten three bolts",
            "put a reference torque transducer in line with two of the spindles in turn (ISO 5393) and tighten three bolts"
                    + " with each",
            "the two torques differ",
            "they agree"),
    /** The counted angle against a mark. */
    MARKED_TURN(
            "turn this spindle through a marked full turn and read the counted angle",
            "turn two of the spindles through a marked full turn and read the counted angle",
            "the count is off",
            "the count is right"),
    /** The drive alone, its socket held fast. */
    HELD_SOCKET(
            "load this spindle against a socket held fast, up to snug torque, and compare its twist with that of the spindle"
                    + " beside it",
            "load one of the spindles against a socket held fast, up to snug torque, and compare its twist with that of a"
                    + " new drive of the same make",
            "they twist otherwise",
            "both twist alike"),
    /** The snug stage alone. */
    SNUG_STAGE_ALONE(
            "run the snug stage alone and compare the torque left, by audit wrench, with that of the spindle beside it",
            "run the snug stage alone and compare the torque left, by audit wrench, with that of the programme before",
            "it ends at another torque",
            "both end alike"),
    /** One joint for two tools. */
    MASTER_JOINT(
            "tighten one master joint, lubricated alike, with this spindle and with the one beside it",
            "tighten one master joint, lubricated alike, with one of the spindles and with a calibrated tool of another"
                    + " station",
            "the two tools differ on it too",
            "they agree on the joint"),
    /** Bolts of another lot at the same place. */
    EARLIER_BOLTS(
            "tighten bolts of another lot at the same place, by the same spindle",
            "tighten bolts of another lot at the same station, by the same spindles",
            "the difference goes with the bolts",
            "the difference stays"),
    /** Friction measured off the line. */
    FRICTION_BENCH(
            "measure the friction coefficient of these bolts and of those of another lot on the test bench (ISO 16047)",
            "measure the friction coefficient of these bolts and of those of another lot on the test bench (ISO 16047)",
            "the friction differs",
            "the friction is the same");

    private final String act;
    private final String actOnAll;
    private final String meets;
    private final String meetsNot;

    FloorCheck(String act, String actOnAll, String meets, String meetsNot) {
        this.act = act;
        this.actOnAll = actOnAll;
        this.meets = meets;
        this.meetsNot = meetsNot;
    }

    /**
     * {@return what to do, as a part of a sentence}
     *
     * @param pattern in which streams something differs: where it is more than one spindle, none beside it serves to compare
     */
    public String act(Pattern pattern) {
        return pattern.hasNeighbour() ? act : actOnAll;
    }

    /**
     * {@return what is seen where a cause is there and nothing else}
     *
     * @param cause the cause
     */
    public String seen(Cause cause) {
        return meets(cause) ? meets : meetsNot;
    }

    /** The first check that answers differently for two causes. */
    static FloorCheck between(Cause one, Cause other) {
        return Arrays.stream(values())
                .filter(check -> check.meets(one) != check.meets(other))
                .findFirst()
                .orElseThrow();
    }

    private boolean meets(Cause cause) {
        return switch (this) {
            case REFERENCE_TRANSDUCER -> cause == Cause.TORQUE_SCALE;
            case MARKED_TURN -> cause == Cause.ANGLE_SCALE;
            case HELD_SOCKET -> cause == Cause.WIND_UP;
            case SNUG_STAGE_ALONE -> cause == Cause.SNUG_TORQUE;
            case MASTER_JOINT -> !cause.comesWithParts();
            case EARLIER_BOLTS -> cause.comesWithBolts();
            case FRICTION_BENCH -> cause == Cause.FRICTION;
        };
    }
}
