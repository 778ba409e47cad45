package org.tautlog.joint.window;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
 * @param boltPositions the bolt positions that an engine has, each once and named; empty where they are not stated
 * @param boltPlaces where each of these positions lies on the head; empty where that is not stated
 */
public record JointSpecification(
        String name,
        String version,
        TighteningMethod method,
        Window window,
        ReadingRule reading,
        FaultRule faults,
        Map<FindingCode, Consequence> consequences,
        @Nullable StatedJoint statedJointOrNull,
        List<String> boltPositions,
        List<BoltPlace> boltPlaces) {
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
        boltPositions = List.copyOf(boltPositions);
        if (boltPositions.stream().anyMatch(position -> position.isBlank() || !position.equals(position.strip()))
                || Set.copyOf(boltPositions).size() < boltPositions.size()) {
            throw new IllegalArgumentException("boltPositions are '" + String.join("', '", boltPositions)
                    + "'; each has a name without blanks around it and stands once");
        }
        boltPlaces = List.copyOf(boltPlaces);
        var placed = boltPlaces.stream().map(BoltPlace::bolt).sorted().toList();
        if (!placed.isEmpty() && !placed.equals(boltPositions.stream().sorted().toList())) {
            throw new IllegalArgumentException("boltPlaces are of '" + String.join("', '", placed)
                    + "'; either each bolt position has one place or none has");
        }
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
        this(name, version, method, window, reading, faults, consequences, null, List.of(), List.of());
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
        return new JointSpecification(
                name, version, method, window, reading, faults, merged, statedJointOrNull, boltPositions, boltPlaces);
    }

    /**
     * The same specification with other fault rules.
     *
     * @param others the fault rules
     * @return the changed specification
     */
    public JointSpecification withFaults(FaultRule others) {
        return new JointSpecification(
                name,
                version,
                method,
                window,
                reading,
                others,
                consequences,
                statedJointOrNull,
                boltPositions,
                boltPlaces);
    }

    /**
     * The same specification for a stated joint.
     *
     * @param other bolt, layers and tolerances
     * @return the changed specification
     */
    public JointSpecification withStatedJoint(StatedJoint other) {
        return new JointSpecification(
                name, version, method, window, reading, faults, consequences, other, boltPositions, boltPlaces);
    }

    /**
     * The same specification for an engine whose bolt positions are stated, without their places.
     *
     * @param others the bolt positions, each once and named; empty where they are not stated
     * @return the changed specification
     */
    public JointSpecification withBoltPositions(List<String> others) {
        return new JointSpecification(
                name, version, method, window, reading, faults, consequences, statedJointOrNull, others, List.of());
    }

    /**
     * The same specification for an engine whose bolt positions have places.
     *
     * @param others one place for each bolt position; empty where they are not stated
     * @return the changed specification
     */
    public JointSpecification withBoltPlaces(List<BoltPlace> others) {
        return new JointSpecification(
                name, version, method, window, reading, faults, consequences, statedJointOrNull, boltPositions, others);
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
                name,
                otherVersion,
                method,
                other,
                reading,
                faults,
                consequences,
                statedJointOrNull,
                boltPositions,
                boltPlaces);
    }
}
