package org.tautlog.report.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.report.words.Figures;

/**
 * The head from above, to scale: where each stated bolt position lies in a drawing that is wide enough for a label of
 * {@value #LABEL_WIDTH} by {@value #LABEL_HEIGHT} at each place. Lengths in the drawing's own units.
 */
final class HeadPlan {
    private static final double LABEL_WIDTH = 128;
    private static final double LABEL_HEIGHT = 104;
    /** How far the place itself lies below the upper edge of its label. */
    private static final double ABOVE = 24;

    private static final double RULER_LEFT = 46;
    private static final double RULER_BELOW = 38;
    private static final double NARROWEST = 640;
    private static final double WIDEST = 1300;
    private static final double TICK_WIDTH = 34;
    private static final double TICK_HEIGHT = 18;

    private final double leftMm;
    private final double topMm;
    private final double perMm;
    private final double width;
    private final double height;
    private final List<BoltPlace> places;

    private HeadPlan(List<BoltPlace> places, double perMm) {
        this.places = places;
        this.perMm = perMm;
        leftMm = places.stream().mapToDouble(BoltPlace::xMm).min().orElse(0);
        topMm = places.stream().mapToDouble(BoltPlace::yMm).max().orElse(0);
        width = RULER_LEFT + perMm * extentMm(places, BoltPlace::xMm) + LABEL_WIDTH;
        height = perMm * extentMm(places, BoltPlace::yMm) + LABEL_HEIGHT + RULER_BELOW;
    }

    /**
     * A plan of these places; empty where none are stated, or where they lie so unevenly that labels would cover each other
     * on any drawing that can still be read.
     */
    static Optional<HeadPlan> of(List<BoltPlace> places) {
        if (places.isEmpty()) {
            return Optional.empty();
        }
        double needed = 0;
        for (int i = 0; i < places.size(); i++) {
            for (int k = 0; k < i; k++) {
                double x = Math.abs(places.get(i).xMm() - places.get(k).xMm());
                double y = Math.abs(places.get(i).yMm() - places.get(k).yMm());
                needed = Math.max(needed, Math.min(LABEL_WIDTH / x, LABEL_HEIGHT / y));
            }
        }
        double extent = extentMm(places, BoltPlace::xMm);
        double perMm = extent > 0 ? Math.max(needed, (NARROWEST - RULER_LEFT - LABEL_WIDTH) / extent) : needed;
        var plan = new HeadPlan(places, perMm > 0 ? perMm : 1);
        return plan.width <= WIDEST && plan.height <= WIDEST ? Optional.of(plan) : Optional.empty();
    }

    private static double extentMm(List<BoltPlace> places, ToDoubleFunction<BoltPlace> along) {
        var extent = places.stream().mapToDouble(along).summaryStatistics();
        return extent.getMax() - extent.getMin();
    }

    /** Measures, rulers and scale as the template's macro asks for them. */
    Map<String, Object> frame() {
        double rulerY = height - RULER_BELOW;
        return Map.of(
                "width", at(width),
                "height", at(height),
                "left", at(RULER_LEFT),
                "ruler", at(rulerY),
                "xTicks", ticks(BoltPlace::xMm, this::x, TICK_WIDTH),
                "yTicks", ticks(BoltPlace::yMm, this::y, TICK_HEIGHT));
    }

    /** Where the place of a bolt position lies in the drawing. */
    Map<String, Object> place(BoltPlace place) {
        return Map.of("x", at(x(place.xMm())), "y", at(y(place.yMm())));
    }

    private double x(double mm) {
        return RULER_LEFT + LABEL_WIDTH / 2 + perMm * (mm - leftMm);
    }

    private double y(double mm) {
        return ABOVE + perMm * (topMm - mm);
    }

    /** The places' own lengths, those left out that would be written over others. */
    private List<Map<String, Object>> ticks(ToDoubleFunction<BoltPlace> along, DoubleUnaryOperator drawn, double room) {
        var ticks = new ArrayList<Map<String, Object>>();
        double last = Double.NEGATIVE_INFINITY;
        for (double mm : places.stream().mapToDouble(along).sorted().toArray()) {
            if (perMm * (mm - last) >= room) {
                ticks.add(Map.of("at", at(drawn.applyAsDouble(mm)), "mm", Figures.of(mm, mm == Math.rint(mm) ? 0 : 1)));
                last = mm;
            }
        }
        return ticks;
    }

    private static String at(double length) {
        return String.format(Locale.ROOT, "%.1f", length);
    }
}
