package org.tautlog.report.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tautlog.spc.study.FrozenLimits;
import org.tautlog.spc.study.StudyKind;

/**
 * Control limits of phase 1 with what they are limits of.
 *
 * @param kind the chart they belong to
 * @param columns what of the table they are limits of
 * @param source name of the table's file, without its folder
 * @param sha256 SHA-256 of that file's bytes, lower-case hex
 * @param groups the limits of each group by its name, in the table's order; at least 1, all of the kind
 */
public record KeptLimits(
        StudyKind kind, ChartedColumns columns, String source, String sha256, Map<String, FrozenLimits> groups) {
    public KeptLimits {
        groups = Collections.unmodifiableMap(new LinkedHashMap<>(groups));
        if (groups.isEmpty()) {
            throw new IllegalArgumentException("groups is empty; at least 1 group has limits");
        }
        groups.forEach((name, limits) -> {
            if (limits.kind() != kind) {
                throw new IllegalArgumentException("group '" + name + "' has limits of kind "
                        + limits.kind().word() + "; all must be " + kind.word());
            }
        });
    }
}
