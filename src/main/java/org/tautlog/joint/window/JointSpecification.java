package org.tautlog.joint.window;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the plant released for one joint: identity, method, window, reading rule and the meaning of findings.
 *
 * @param name the joint's name; never blank
 * @param version the released version, quoted in every verdict; never blank
 * @param method snug torque and turn aimed at
 * @param window the limits
 * @param reading how curves are read
 * @param faults from where on the shape of a curve counts as a fault
 * @param consequences what findings mean where that differs from {@link FindingCode#usual()}
 * @param statedJointOrNull bolt, layers and tolerances; null where the specification states none
 */
public record JointSpecification(
        String name,
        String version,
        TighteningMethod method,
        Window window,
        ReadingRule reading,
        FaultRule faults,
        Map<FindingCode, Consequence> consequences,
        @Nullable StatedJoint statedJointOrNull) {
    public JointSpecification {
        if (name.isBlank() || version.isBlank()) {
            throw new IllegalArgumentException(
                    "name is '" + name + "', version is '" + version + "'; a specification needs both");
        }
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(faults, "faults");
        consequences = Map.copyOf(consequences);
    }

    /**
     * A specification that states no bolt and layers.
     *
     * @param name the joint's name; never blank
     * @param version the released version; never blank
     * @param method snug torque and turn aimed at
     * @param window the limits
     * @param reading how curves are read
     * @param faults from where on the shape of a curve counts as a fault
     * @param consequences what findings mean where that differs from {@link FindingCode#usual()}
     */
    public JointSpecification(
            String name,
            String version,
            TighteningMethod method,
            Window window,
            ReadingRule reading,
            FaultRule faults,
            Map<FindingCode, Consequence> consequences) {
        this(name, version, method, window, reading, faults, consequences, null);
    }

    /**
     * A specification with the usual fault rules that states no bolt and layers.
     *
     * @param name the joint's name; never blank
     * @param version the released version; never blank
     * @param method snug torque and turn aimed at
     * @param window the limits
     * @param reading how curves are read
     * @param consequences what findings mean where that differs from {@link FindingCode#usual()}
     */
    public JointSpecification(
            String name,
            String version,
            TighteningMethod method,
            Window window,
            ReadingRule reading,
            Map<FindingCode, Consequence> consequences) {
        this(name, version, method, window, reading, FaultRule.withDefaults(), consequences);
    }

    /** {@return bolt, layers and tolerances, without which no clamp load can be estimated; empty where none are stated} */
    public Optional<StatedJoint> statedJoint() {
        return Optional.ofNullable(statedJointOrNull);
    }

    /**
     * What a finding means under this specification.
     *
     * @param code the finding's code
     * @return its consequence
     */
    public Consequence consequenceOf(FindingCode code) {
        return consequences.getOrDefault(code, code.usual());
    }

    /**
     * The same specification with other consequences.
     *
     * @param others consequences that replace the present ones code by code
     * @return the changed specification
     */
    public JointSpecification withConsequences(Map<FindingCode, Consequence> others) {
        var merged = new EnumMap<FindingCode, Consequence>(FindingCode.class);
        merged.putAll(consequences);
        merged.putAll(others);
        return new JointSpecification(name, version, method, window, reading, faults, merged, statedJointOrNull);
    }

    /**
     * The same specification with other fault rules.
     *
     * @param others the fault rules
     * @return the changed specification
     */
    public JointSpecification withFaults(FaultRule others) {
        return new JointSpecification(name, version, method, window, reading, others, consequences, statedJointOrNull);
    }

    /**
     * The same specification for a stated joint.
     *
     * @param other bolt, layers and tolerances
     * @return the changed specification
     */
    public JointSpecification withStatedJoint(StatedJoint other) {
        return new JointSpecification(name, version, method, window, reading, faults, consequences, other);
    }

    /**
     * The same specification with another window, under another version.
     *
     * @param otherVersion the version; never blank
     * @param other the limits
     * @return the changed specification
     */
    public JointSpecification withWindow(String otherVersion, Window other) {
        return new JointSpecification(
                name, otherVersion, method, other, reading, faults, consequences, statedJointOrNull);
    }
}
