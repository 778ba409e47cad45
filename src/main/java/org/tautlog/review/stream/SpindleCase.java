package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One spindle that moved apart from its station's others, with all features in which it did, and what they point at together.
 *
 * @param stream the station and spindle
 * @param shifts the steps that hold, surest first, at least 1
 * @param cause what at least two of them agree on
 */
public record SpindleCase(Stream stream, List<OwnShift> shifts, Cause cause) {
    /** What features that move together point at; common practice of the trade, no source. */
    public enum Cause {
        /** Rate and another torque move the same way and no onset angle is seen to move: this spindle's torque reading. */
        TORQUE_SCALE(
                "Torque rate and another torque moved the same way on this spindle alone, and no onset angle was seen to"
                        + " move: that points at its torque transducer or drive, or at the friction where it turns. Check it"
                        + " against a reference before the next engine; every torque since then is in doubt."),
        /** Rate and onset angle move against each other: the angle of this spindle, or the stiffness of what it turns. */
        ANGLE_SCALE(
                "Torque rate and onset angle moved against each other, on this spindle alone: that points at its angle"
                        + " reading, socket or drive."),
        /** Onset torque and onset angle move together, the rate stays: the bolts that this spindle gets. */
        BOLT_STRENGTH(
                "Onset torque and onset angle moved together while the torque rate stayed: that points at the bolts of"
                        + " this position rather than at the tool."),
        /** Fewer than two features agree. */
        NOT_NAMED("One cue alone: no cause is named. Compare this spindle's traces before and after by hand.");

        private final String advice;

        Cause(String advice) {
            this.advice = advice;
        }

        /** {@return what it points at and what to do, in sentences} */
        public String advice() {
            return advice;
        }
    }

    public SpindleCase {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(cause, "cause");
        shifts = List.copyOf(shifts);
        if (shifts.isEmpty()) {
            throw new IllegalArgumentException("a case needs at least 1 step that holds");
        }
    }

    /** Cases of all steps that hold, the spindle with most and surest steps first. */
    static List<SpindleCase> of(List<OwnShift> shifts) {
        var streams = new TreeMap<Stream, List<OwnShift>>();
        shifts.stream()
                .filter(OwnShift::holds)
                .sorted(Comparator.comparingDouble(OwnShift::adjusted).thenComparing(OwnShift::feature))
                .forEach(shift -> streams.computeIfAbsent(shift.stream(), unused -> new ArrayList<>())
                        .add(shift));
        return streams.entrySet().stream()
                .map(entry -> new SpindleCase(entry.getKey(), entry.getValue(), cause(entry.getValue())))
                .sorted(Comparator.comparingInt(
                                (SpindleCase one) -> -one.shifts().size())
                        .thenComparingDouble(one -> one.shifts().get(0).adjusted()))
                .toList();
    }

    private static Cause cause(List<OwnShift> shifts) {
        Map<ChartedFeature, Double> signs = new EnumMap<>(ChartedFeature.class);
        shifts.forEach(shift ->
                signs.put(shift.feature(), Math.signum(shift.step().size().value())));
        double rate = signs.getOrDefault(ChartedFeature.TORQUE_RATE, 0.0);
        double torque = signs.getOrDefault(ChartedFeature.FINAL_TORQUE, 0.0);
        double onsetTorque = signs.getOrDefault(ChartedFeature.ONSET_TORQUE, 0.0);
        double onsetAngle = signs.getOrDefault(ChartedFeature.ONSET_ANGLE, 0.0);
        if (rate != 0 && onsetAngle == 0 && (rate == torque || rate == onsetTorque)) {
            return Cause.TORQUE_SCALE;
        }
        if (rate != 0 && rate == -onsetAngle) {
            return Cause.ANGLE_SCALE;
        }
        if (rate == 0 && onsetAngle != 0 && onsetAngle == onsetTorque) {
            return Cause.BOLT_STRENGTH;
        }
        return Cause.NOT_NAMED;
    }
}
