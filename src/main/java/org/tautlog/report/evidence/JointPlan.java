package org.tautlog.report.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.report.words.Figures;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;
import org.tautlog.review.evidence.PositionStanding;
import org.tautlog.signature.ClampLoad;

/**
 * The joint seen from above, each bolt position with its clamp load on one scale: to scale where the specification states
 * the places, else in two rows in the order of their names.
 */
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
        var model = new HashMap<String, Object>();
        model.put("from", Figures.of(plan.low, 1));
        model.put("to", Figures.of(plan.high, 1));
        model.put("estimated", !values.isEmpty());
        var stated = dossier.specification().boltPlaces();
        var drawn = HeadPlan.of(stated);
        var placed = drawn.map(head -> gravest(dossier, stated)).orElse(Map.of());
        drawn.ifPresent(head -> model.put("head", plan.head(head, placed)));
        model.put(
                "reasons",
                placed.values().stream()
                        .filter(position -> position.last().isPresent())
                        .map(plan::cell)
                        .filter(cell -> Boolean.FALSE.equals(cell.get("found")))
                        .toList());
        model.put("order", order(stated, drawn.isPresent()));
        var rest = dossier.positions().stream()
                .filter(position -> !placed.containsValue(position))
                .toList();
        model.put("columns", Math.max(1, drawn.isPresent() ? rest.size() : (rest.size() + 1) / 2));
        model.put("cells", rest.stream().map(plan::cell).toList());
        return model;
    }

    private static String order(List<BoltPlace> stated, boolean drawn) {
        if (drawn) {
            return "The head from above, to scale, as the specification states the places; mm.";
        }
        return stated.isEmpty()
                ? "Bolt positions by number, on a wide page in two rows; the specification does not state where they lie,"
                        + " so this is their order and not their place."
                : "Bolt positions by number, on a wide page in two rows: the places that the specification states lie too"
                        + " unevenly for a drawing to scale that can be read, so this is their order.";
    }

    /** One position for each place: where two stations recorded the same bolt, the one that stands worse. */
    private static Map<BoltPlace, BoltPosition> gravest(EngineDossier dossier, List<BoltPlace> stated) {
        var placed = new LinkedHashMap<BoltPlace, BoltPosition>();
        for (var place : stated) {
            dossier.positions().stream()
                    .filter(position -> position.bolt().equals(place.bolt()))
                    .min(Comparator.comparing(BoltPosition::standing))
                    .ifPresent(position -> placed.put(place, position));
        }
        return placed;
    }

    private Map<String, Object> head(HeadPlan head, Map<BoltPlace, BoltPosition> placed) {
        var bolts = new ArrayList<Map<String, Object>>();
        var words = new ArrayList<String>();
        placed.forEach((place, position) -> {
            var cell = new HashMap<>(cell(position));
            cell.put("at", head.place(place));
            bolts.add(cell);
            words.add("bolt " + position.bolt() + " at " + Figures.of(place.xMm(), 0) + ", "
                    + Figures.of(place.yMm(), 0) + " mm: " + position.standing().word()
                    + (Boolean.TRUE.equals(cell.get("found")) ? ", " + cell.get("load") + " kN" : ""));
        });
        return Map.of("frame", head.frame(), "bolts", bolts, "words", String.join("; ", words));
    }

    /** The mark of a standing: what is missing or undecided is as unknown as what could not be judged. */
    static String mark(PositionStanding standing) {
        return switch (standing) {
            case NONCONFORMING -> "nonconforming";
            case MISSING, UNDECIDED_REPEAT, UNJUDGED -> "unjudged";
            case REVIEW -> "review";
            case DECIDED -> "decided";
            case CONFORMING -> "conforming";
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
                Map.entry("missing", position.attempts().isEmpty()),
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
