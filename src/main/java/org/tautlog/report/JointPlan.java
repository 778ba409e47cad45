package org.tautlog.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;
import org.tautlog.review.evidence.PositionStanding;
import org.tautlog.signature.ClampLoad;

/** The joint seen from above, as far as numbers tell: bolt positions in two rows, each with its clamp load on one scale. */
final class JointPlan {
    private static final double MARGIN = 0.08;

    private final double low;
    private final double high;

    private JointPlan(double low, double high) {
        this.low = low;
        this.high = high;
    }

    static Map<String, Object> of(EngineDossier dossier) {
        var values = new ArrayList<Double>();
        for (var position : dossier.positions()) {
            position.last()
                    .map(last -> last.judgement().signature().clampLoad())
                    .ifPresent(load -> {
                        load.lowKN().value().ifPresent(values::add);
                        load.highKN().value().ifPresent(values::add);
                        load.afterWarmUpKN().value().ifPresent(values::add);
                    });
        }
        double least = values.stream().mapToDouble(v -> v).min().orElse(0);
        double most = values.stream().mapToDouble(v -> v).max().orElse(1);
        double room = Math.max(MARGIN * (most - least), 0.01);
        var plan = new JointPlan(least - room, most + room);
        var positions = dossier.positions();
        int inRow = (positions.size() + 1) / 2;
        return Map.of(
                "columns",
                Math.max(1, inRow),
                "from",
                Figures.of(plan.low, 1),
                "to",
                Figures.of(plan.high, 1),
                "estimated",
                !values.isEmpty(),
                "cells",
                positions.stream().map(plan::cell).toList());
    }

    /** The mark of a standing: what is missing or undecided is as unknown as what could not be judged. */
    static String mark(PositionStanding standing) {
        return switch (standing) {
            case NONCONFORMING -> "nonconforming";
            case MISSING, UNDECIDED_REPEAT, UNJUDGED -> "unjudged";
            case REVIEW -> "review";
            case DECIDED, CONFORMING -> "conforming";
        };
    }

    private Map<String, Object> cell(BoltPosition position) {
        var load = position.last()
                .map(last -> last.judgement().signature().clampLoad())
                .orElse(ClampLoad.none("no recording"));
        boolean found = load.loadKN().isFound();
        return Map.ofEntries(
                Map.entry("bolt", position.bolt().isEmpty() ? "–" : position.bolt()),
                Map.entry("station", position.station()),
                Map.entry("mark", mark(position.standing())),
                Map.entry("word", position.standing().word()),
                Map.entry("found", found),
                Map.entry("load", Figures.of(load.loadKN(), 1)),
                Map.entry("after", Figures.of(load.afterWarmUpKN(), 1)),
                Map.entry("why", found ? "" : load.loadKN().whyMissing()),
                Map.entry("x", strip(load)));
    }

    /** Where load, bounds and what stays after the warm-up lie on a strip of 100. */
    private Map<String, Object> strip(ClampLoad load) {
        var strip = new HashMap<String, Object>();
        if (load.loadKN().isFound()) {
            strip.put("low", place(load.lowKN().number()));
            strip.put("load", place(load.loadKN().number()));
            strip.put("high", place(load.highKN().number()));
        }
        load.afterWarmUpKN().value().ifPresent(after -> strip.put("after", place(after)));
        return strip;
    }

    private String place(double valueKN) {
        return Figures.of(100 * (valueKN - low) / (high - low), 1);
    }
}
