package org.tautlog.joint.window;

import java.util.Locale;
import java.util.Optional;

/** Everything that can be found wrong or odd about one tightening, each with what it means unless a specification says otherwise. */
public enum FindingCode {
    /** The snug torque was never reached and held: the parts were not seated before the turn. */
    NOT_SEATED(Consequence.NONCONFORMING, "not seated"),
    /** The torque at the end of the snug stage lies outside its limits. */
    SNUG_TORQUE_OUTSIDE(Consequence.NONCONFORMING, "snug torque outside its limits"),
    /** The turn past the snug point ended short of its lower limit. */
    TURN_SHORT(Consequence.NONCONFORMING, "turn too short"),
    /** The turn past the snug point ran past its upper limit. */
    TURN_LONG(Consequence.NONCONFORMING, "turn too long"),
    /** The final torque lies below its lower limit. */
    FINAL_TORQUE_LOW(Consequence.NONCONFORMING, "final torque low"),
    /** The final torque lies above its upper limit. */
    FINAL_TORQUE_HIGH(Consequence.NONCONFORMING, "final torque high"),
    /** The slope of the elastic line lies below its lower limit. */
    TORQUE_RATE_LOW(Consequence.REVIEW, "torque rate low"),
    /** The slope of the elastic line lies above its upper limit. */
    TORQUE_RATE_HIGH(Consequence.REVIEW, "torque rate high"),
    /** The torque of the free turning lies above its upper limit. */
    PREVAILING_TORQUE_HIGH(Consequence.REVIEW, "prevailing torque high"),
    /** The gradient fell below the onset ratio before the earliest angle allowed. */
    EARLY_ONSET(Consequence.NONCONFORMING, "yield onset too early"),
    /** The gradient fell below the onset ratio later than the latest angle allowed. */
    LATE_ONSET(Consequence.REVIEW, "yield onset too late"),
    /** Gradient ratio, angle offset and segmented fit put the yield onset further apart than they can on one knee. */
    ONSET_DISAGREES(Consequence.REVIEW, "onset criteria disagree"),
    /** At the end the gradient ratio was below the least one allowed: the bolt was taken too far into yield. */
    OVER_YIELDED(Consequence.NONCONFORMING, "taken too far into yield"),
    /** The torque stands still or falls after seating, far below the usual onset torque: a thread gives way. */
    STRIPPING(Consequence.NONCONFORMING, "thread stripping"),
    /** Torque rises irregularly in the rundown, long before the parts can touch. */
    CROSS_THREADED(Consequence.NONCONFORMING, "cross-threaded"),
    /** The snug torque was there within a few degrees of the start: the bolt was tight before. */
    ALREADY_TIGHT(Consequence.NONCONFORMING, "already tight at the start"),
    /** Torque rate, elastic origin and onset together say that bolt or clamped parts are not the ones specified. */
    WRONG_PARTS(Consequence.NONCONFORMING, "wrong bolt or missing part"),
    /** The elastic zone ends at low torque and low angle together: the bolt's strength is low. */
    WEAK_BOLT(Consequence.NONCONFORMING, "bolt of too low strength"),
    /** Torque rate and final torque are high together while the turn is right: friction is high. */
    HIGH_FRICTION(Consequence.NONCONFORMING, "friction high: dry bolt"),
    /** Torque rate and final torque are low together while the turn is right: friction is low. */
    LOW_FRICTION(Consequence.REVIEW, "friction low"),
    /** The turn from the first sample to the snug point lies outside its limits. */
    RUNDOWN_OUTSIDE(Consequence.REVIEW, "rundown outside its limits"),
    /** A long curved seating zone: the parts draw together late or something soft lies between them. */
    SOFT_SEATING(Consequence.REVIEW, "soft seating"),
    /** The torque saws up and down while turning. */
    STICK_SLIP(Consequence.REVIEW, "stick-slip"),
    /** The torque fell suddenly while turning and came back. */
    TORQUE_DROP(Consequence.REVIEW, "torque drop"),
    /** The angle went on without the torque that belongs to it: drive, socket or the bolt's other end slipped. */
    ANGLE_SLIP(Consequence.NONCONFORMING, "angle slip of the tool"),
    /** The recorded angle jumps or runs back where the tool was turning on. */
    ANGLE_JUMP(Consequence.REVIEW, "angle jump in the recording"),
    /** The drive twists more than it should: large spring-back at the stop. */
    TOOL_WIND_UP(Consequence.REVIEW, "tool wind-up"),
    /** The recording ends before the tightening does. */
    TRUNCATED(Consequence.UNJUDGED, "recording truncated"),
    /** The torque stands at one highest value: the sensor is at its limit. */
    SENSOR_SATURATED(Consequence.UNJUDGED, "sensor saturated"),
    /** Torque and angle were not recorded at the same moments. */
    RECORDING_SHIFTED(Consequence.UNJUDGED, "torque and angle out of step"),
    /** The recording holds the same samples twice. */
    DUPLICATED_RECORDING(Consequence.REVIEW, "recording duplicated"),
    /** A second or later attempt on the same bolt position. */
    REPEATED_ATTEMPT(Consequence.REVIEW, "repeated attempt"),
    /** The curve has too few samples in the zone that matters. */
    TOO_FEW_SAMPLES(Consequence.UNJUDGED, "too few samples"),
    /** No elastic line could be fitted. */
    NO_ELASTIC_LINE(Consequence.UNJUDGED, "no elastic line"),
    /** The program failed on this curve: a fault of the program, not of the tightening. */
    JUDGING_FAILED(Consequence.UNJUDGED, "judging failed"),
    /** A feature that is not needed for the verdict could not be found. */
    FEATURE_MISSING(Consequence.NOTE, "feature not found");

    private final Consequence usual;
    private final String title;

    FindingCode(Consequence usual, String title) {
        this.usual = usual;
        this.title = title;
    }

    /** {@return what the finding means unless a specification says otherwise} */
    public Consequence usual() {
        return usual;
    }

    /** {@return a short title in plain words} */
    public String title() {
        return title;
    }

    /** {@return the word of this code in lower case with hyphens, for example {@code turn-short}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Finds the code of a word.
     *
     * @param word for example {@code turn-short}
     * @return the code, or empty where there is none of that word
     */
    public static Optional<FindingCode> parse(String word) {
        for (var code : values()) {
            if (code.word().equals(word)) {
                return Optional.of(code);
            }
        }
        return Optional.empty();
    }
}
