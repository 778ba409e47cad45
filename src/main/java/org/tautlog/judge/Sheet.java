package org.tautlog.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.Signature;
import org.tautlog.trace.TraceIdentity;

/** One tightening on the judge's desk: what is known of it, and what was found so far. */
final class Sheet {
    private static final Set<FindingCode> EXPLAIN = EnumSet.of(
            FindingCode.NOT_SEATED,
            FindingCode.STRIPPING,
            FindingCode.CROSS_THREADED,
            FindingCode.ALREADY_TIGHT,
            FindingCode.WRONG_PARTS,
            FindingCode.WEAK_BOLT,
            FindingCode.HIGH_FRICTION,
            FindingCode.LOW_FRICTION,
            FindingCode.ANGLE_SLIP,
            FindingCode.TRUNCATED,
            FindingCode.SENSOR_SATURATED,
            FindingCode.RECORDING_SHIFTED);

    private final TraceIdentity identity;
    private final Signature signature;
    private final JointSpecification specification;
    private final List<Finding> findings = new ArrayList<>();
    private final EnumSet<FindingCode> found = EnumSet.noneOf(FindingCode.class);

    Sheet(TraceIdentity identity, Signature signature, JointSpecification specification) {
        this.identity = identity;
        this.signature = signature;
        this.specification = specification;
    }

    TraceIdentity identity() {
        return identity;
    }

    Signature signature() {
        return signature;
    }

    JointSpecification specification() {
        return specification;
    }

    Window window() {
        return specification.window();
    }

    FaultRule faults() {
        return specification.faults();
    }

    boolean has(FindingCode code) {
        return found.contains(code);
    }

    /** Adds a finding; the sentence is formatted without any country's habits. */
    void add(
            FindingCode code,
            @Nullable Double measured,
            @Nullable Double limit,
            String unit,
            String text,
            Object... numbers) {
        found.add(code);
        findings.add(new Finding(
                code,
                specification.consequenceOf(code),
                measured,
                limit,
                unit,
                String.format(Locale.ROOT, text, numbers)));
    }

    List<Finding> gravestFirst() {
        var sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(Finding::severity)
                .reversed()
                .thenComparing(finding -> EXPLAIN.contains(finding.code()) ? 0 : 1));
        return List.copyOf(sorted);
    }

    /** Torque rate in the middle of its limits, else the curve's own. */
    OptionalDouble usualRateNmPerDeg() {
        var band = window().torqueRateNmPerDeg();
        if (band.hasLow() && band.hasHigh()) {
            return OptionalDouble.of((band.low() + band.high()) / 2);
        }
        return signature.elastic().torqueRateNmPerDeg().value();
    }

    /** Torque at the earliest onset allowed on a usual elastic line; else the lower limit of the final torque. */
    OptionalDouble usualOnsetNm() {
        var onset = window().onset();
        var rate = usualRateNmPerDeg();
        if (rate.isPresent() && onset.pastSnugDeg().hasLow()) {
            return OptionalDouble.of(specification.method().snugTorqueNm()
                    + rate.getAsDouble() * onset.pastSnugDeg().low());
        }
        if (rate.isPresent() && onset.pastOriginDeg().hasLow()) {
            return OptionalDouble.of(signature.prevailingTorqueNm().number()
                    + rate.getAsDouble() * onset.pastOriginDeg().low());
        }
        var end = window().finalTorqueNm();
        return end.hasLow() ? OptionalDouble.of(end.low()) : OptionalDouble.empty();
    }

    static String words(Band band, String unit) {
        if (band.hasLow() && band.hasHigh()) {
            return String.format(Locale.ROOT, "%s to %s %s", short1(band.low()), short1(band.high()), unit);
        }
        return band.hasLow()
                ? String.format(Locale.ROOT, "at least %s %s", short1(band.low()), unit)
                : String.format(Locale.ROOT, "at most %s %s", short1(band.high()), unit);
    }

    /** A limit as a person writes it: no digits that say nothing. */
    private static String short1(double value) {
        var text = String.format(Locale.ROOT, "%.3f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
