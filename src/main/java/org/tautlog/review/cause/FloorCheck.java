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
            "the two torques differ",
            "they agree"),
    /** The counted angle against a mark. */
    MARKED_TURN(
            "turn this spindle through a marked full turn and read the counted angle",
            "the count is off",
            "the count is right"),
    /** The drive alone, its socket held fast. */
    HELD_SOCKET(
            "load this spindle against a socket held fast, up to snug torque, and read how far it twists",
            "it twists otherwise than the spindle beside it",
            "both twist alike"),
    /** The snug stage alone. */
    SNUG_STAGE_ALONE(
            "run the snug stage alone and check the torque left with an audit wrench",
            "it ends at another torque than on the spindle beside it",
            "both end alike"),
    /** One joint for two tools. */
    MASTER_JOINT(
            "tighten one master joint, lubricated alike, with this spindle and with the one beside it",
            "the two spindles differ on it too",
            "they agree on it"),
    /** Bolts of before at the same place. */
    EARLIER_BOLTS(
            "tighten bolts of the lot before at the same place, by the same spindle",
            "the difference goes with the bolts",
            "it stays"),
    /** Friction measured off the line. */
    FRICTION_BENCH(
            "measure the friction coefficient of these bolts and of the lot before on the test bench (ISO 16047)",
            "it differs",
            "it is the same");

    private final String act;
    private final String meets;
    private final String meetsNot;

    FloorCheck(String act, String meets, String meetsNot) {
        this.act = act;
        this.meets = meets;
        this.meetsNot = meetsNot;
    }

    /** {@return what to do, as a part of a sentence} */
    public String act() {
        return act;
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
