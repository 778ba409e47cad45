package org.tautlog.review.cause;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.review.stream.Cue;

/**
 * By how much each cause moves each cue, from the joint's own model by central differences.
 *
 * <pre>
 * s = (cue(+h) - cue(-h)) / (2 h)      cue's unit per share of one, N·m or deg of the cause
 *
 * h a quarter of the cause's usual size
 * </pre>
 *
 * <p>Where no yield is near, friction, joint stiffness and the scales of torque and angle all move torque rate and final
 * torque alike; then prevailing torque, rundown, spring-back and the gradient at the stop tell them apart, or nothing does.
 */
public final class Sensitivities {
    private static final double STEP_SHARE = 0.25;

    private final Map<Cause, Map<Cue, Double>> changes;

    private Sensitivities(Map<Cause, Map<Cue, Double>> changes) {
        this.changes = changes;
    }

    /**
     * The sensitivities of a specification's joint.
     *
     * @param specification method and stated joint
     * @param rundownDeg usual turn from the first sample to the snug point in this export, deg
     * @return the sensitivities; empty where the specification states no bolt and layers
     */
    public static Optional<Sensitivities> of(JointSpecification specification, double rundownDeg) {
        return specification.statedJoint().map(stated -> of(Shown.usual(specification, stated, rundownDeg)));
    }

    private static Sensitivities of(Shown usual) {
        var changes = new EnumMap<Cause, Map<Cue, Double>>(Cause.class);
        for (var cause : Cause.values()) {
            double h = STEP_SHARE * cause.usualSize();
            var more = usual.with(cause, h).cues();
            var less = usual.with(cause, -h).cues();
            var own = new EnumMap<Cue, Double>(Cue.class);
            more.forEach((cue, value) -> own.put(cue, (value - Objects.requireNonNull(less.get(cue))) / (2 * h)));
            changes.put(cause, own);
        }
        return new Sensitivities(changes);
    }

    /**
     * {@return the change of a cue for one unit of a cause}
     *
     * @param cause the cause
     * @param cue the cue
     */
    public double of(Cause cause, Cue cue) {
        return Objects.requireNonNull(Objects.requireNonNull(changes.get(cause)).get(cue));
    }
}
