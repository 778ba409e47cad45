package org.tautlog.review;

import java.time.Instant;
import java.util.Comparator;
import org.tautlog.joint.window.Consequence;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;

/** The order in which a person should look: worst first. */
public final class Gravity {
    /**
     * Worst first: by verdict, then by how many findings of the gravest kind, then by how far the worst of them misses its
     * limit in parts of that limit, then by time, then by engine and bolt. The order of equals is the reading order.
     */
    public static final Comparator<Judgement> WORST_FIRST = Comparator.comparing(Judgement::verdict)
            .thenComparingLong(Gravity::gravest)
            .thenComparingDouble(Gravity::miss)
            .reversed()
            .thenComparing(Gravity::when)
            .thenComparing(judgement -> judgement.identity().words());

    private Gravity() {}

    private static long gravest(Judgement judgement) {
        return judgement.findings().stream()
                .filter(finding -> finding.severity() == worst(judgement))
                .count();
    }

    private static double miss(Judgement judgement) {
        return judgement.findings().stream()
                .filter(finding -> finding.severity() == worst(judgement))
                .mapToDouble(Gravity::miss)
                .max()
                .orElse(0);
    }

    private static double miss(Finding finding) {
        var measured = finding.measured();
        var limit = finding.limit();
        if (measured == null || limit == null || limit == 0) {
            return 0;
        }
        return Math.abs(measured - limit) / Math.abs(limit);
    }

    private static Consequence worst(Judgement judgement) {
        return judgement.findings().stream()
                .map(Finding::severity)
                .max(Comparator.naturalOrder())
                .orElse(Consequence.NOTE);
    }

    private static Instant when(Judgement judgement) {
        var time = judgement.identity().time();
        return time == null ? Instant.MAX : time.toInstant();
    }
}
