package org.tautlog.signature;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.ReadingRule;

/**
 * The elastic zone: where the local gradient keeps near its plateau, with a robust line through it.
 *
 * <pre>
 * plateau = 95th percentile of the gradients past a quarter of the peak torque, less 1.645 s(g)
 * zone    = longest stretch with gradient at least 0.9 plateau - s(g)
 * s(g)    = sqrt(12) noise sqrt(step) / span^1.5
 * </pre>
 *
 * s(g) in N·m/deg is what noise alone does to a gradient; without it the highest gradients of a noisy curve would pass
 * for the plateau. The span is widened, up to three times, until s(g) is 5 % of the slope.
 *
 * <p>Source: common practice (points with slope of at least 0.9 of the highest; highest as a robust 95th percentile);
 * the noise terms from least squares.
 */
final class ElasticFit {
    private static final double PLATEAU_SHARE = 0.9;
    private static final double PLATEAU_PERCENTILE = 0.95;
    private static final double NORMAL_95 = 1.645;
    private static final double LOW_TORQUE_SHARE = 0.25;
    private static final double WANTED_GRADIENT_NOISE = 0.05;
    private static final double WIDEST = 3;
    private static final double LEAST_ZONE_DEG = 20;
    private static final int LEAST_CELLS = 6;
    /** Slopes of the two halves of a line that is straight under its saw differ by less than this. */
    private static final double HALVES_RATIO = 1.25;

    /** Gradient spans that a line under a saw must cover, so that some teeth lie in it. */
    private static final double SAWN_SPANS = 2;

    private static final double WORST_RESIDUAL = 0.15;

    final @Nullable RobustLine line;
    final String why;
    final MovingLine gradient;
    final int from;
    final int to;
    final double gradientNoise;

    private ElasticFit(
            @Nullable RobustLine line, String why, MovingLine gradient, int from, int to, double gradientNoise) {
        this.line = line;
        this.why = why;
        this.gradient = gradient;
        this.from = from;
        this.to = to;
        this.gradientNoise = gradientNoise;
    }

    static ElasticFit of(
            Cells cells, MovingLine smooth, double noiseNm, Feature snugDeg, double pauseDeg, ReadingRule rule) {
        if (!snugDeg.isFound()) {
            return none("without a snug point there is no elastic zone", smooth, 0);
        }
        int snug = Math.min(cells.size() - 1, cells.firstFrom(snugDeg.number()));
        double peak = 0;
        for (int i = snug; i < cells.size(); i++) {
            peak = Math.max(peak, smooth.value(i));
        }
        int start = snug;
        while (start > 0 && smooth.value(start) >= LOW_TORQUE_SHARE * peak) {
            start--;
        }
        int n = cells.size() - start;
        if (n < LEAST_CELLS || cells.angleDeg(cells.size() - 1) - cells.angleDeg(start) < LEAST_ZONE_DEG) {
            return none(
                    String.format(
                            Locale.ROOT,
                            "only %d cells over %.1f deg of turning under load; %d over %.0f deg are needed",
                            n,
                            cells.angleDeg(cells.size() - 1) - cells.angleDeg(start),
                            LEAST_CELLS,
                            LEAST_ZONE_DEG),
                    smooth,
                    0);
        }
        double step = cells.stepDeg(start);
        double crude = crudeSlope(cells, smooth, start, peak);
        double span = span(rule.gradientSpanDeg(), step, noiseNm, crude);
        var gradient = span == smooth.spanDeg() ? smooth : cells.line(span);
        double gradientNoise = Math.sqrt(12) * noiseNm * Math.sqrt(step) / Math.pow(span, 1.5);
        double plateau =
                Robust.percentile(Robust.taken(gradient.slopes(start), start, cells.size()), PLATEAU_PERCENTILE)
                        - NORMAL_95 * gradientNoise;
        if (plateau <= 0) {
            return none("the torque does not rise past the snug point", gradient, gradientNoise);
        }
        var zone = longestAbove(cells, gradient, start, PLATEAU_SHARE * plateau - gradientNoise, span / 2);
        double width = cells.angleDeg(zone[1] - 1) - cells.angleDeg(zone[0]);
        if (width < LEAST_ZONE_DEG) {
            var sawn = byTorque(cells, smooth, gradient, start, peak, gradientNoise);
            if (sawn.line != null) {
                return sawn;
            }
        }
        if (zone[1] - zone[0] < LEAST_CELLS || width < LEAST_ZONE_DEG) {
            return none(
                    String.format(
                            Locale.ROOT,
                            "the gradient keeps near its plateau for %.1f deg only; %.0f deg are needed",
                            width,
                            LEAST_ZONE_DEG),
                    gradient,
                    gradientNoise);
        }
        if (crude > 0 && cells.slope(zone[0], zone[1]) > HALVES_RATIO * crude) {
            var whole = byTorque(cells, smooth, gradient, start, peak, gradientNoise);
            if (whole.line != null) {
                return whole;
            }
        }
        var straight = StraightPart.of(cells, zone[0], zone[1], noiseNm, pauseDeg);
        var line = straight.line();
        if (!(line.slope() > 0) || line.residualNm() > WORST_RESIDUAL * line.slope() * width) {
            return none(
                    String.format(
                            Locale.ROOT,
                            "the torque strays %.2f N·m from a straight line that rises %.2f N·m: no line",
                            line.residualNm(),
                            line.slope() * width),
                    gradient,
                    gradientNoise);
        }
        return new ElasticFit(line, "", gradient, straight.from(), straight.to(), gradientNoise);
    }

    /**
     * Where stick-slip leaves no gradient to keep near a plateau, or a few steep cells of a coarse curve pass for one: the
     * cells between 30 and 70 % of the peak torque, if both halves rise alike. Source: common practice, the elastic window by torque.
     */
    private static ElasticFit byTorque(
            Cells cells, MovingLine smooth, MovingLine gradient, int start, double peak, double gradientNoise) {
        int from = firstAbove(cells, smooth, start, 0.3 * peak);
        int to = firstAbove(cells, smooth, from, 0.7 * peak) + 1;
        int middle = (from + to) / 2;
        if (middle - from < 2 * LEAST_CELLS
                || cells.angleDeg(to - 1) - cells.angleDeg(from) < SAWN_SPANS * gradient.spanDeg()) {
            return none("too short", gradient, gradientNoise);
        }
        double first = RobustLine.through(cells, from, middle).slope();
        double second = RobustLine.through(cells, middle, to).slope();
        var line = RobustLine.through(cells, from, to);
        double rise = line.slope() * (cells.angleDeg(to - 1) - cells.angleDeg(from));
        boolean alike = first > 0 && second > 0 && Math.max(first, second) < HALVES_RATIO * Math.min(first, second);
        return alike && line.residualNm() < WORST_RESIDUAL * rise
                ? new ElasticFit(line, "", gradient, from, to, gradientNoise)
                : none("no straight line", gradient, gradientNoise);
    }

    private static int firstAbove(Cells cells, MovingLine smooth, int from, double levelNm) {
        int i = from;
        while (i < cells.size() - 1 && smooth.value(i) < levelNm) {
            i++;
        }
        return i;
    }

    private static ElasticFit none(String why, MovingLine gradient, double gradientNoise) {
        return new ElasticFit(null, why, gradient, 0, 0, gradientNoise);
    }

    /** Mean slope between 30 and 70 % of the peak torque. */
    private static double crudeSlope(Cells cells, MovingLine smooth, int start, double peak) {
        int low = firstAbove(cells, smooth, start, 0.3 * peak);
        int high = firstAbove(cells, smooth, low, 0.7 * peak);
        double turn = cells.angleDeg(high) - cells.angleDeg(low);
        return turn > 0 ? (smooth.value(high) - smooth.value(low)) / turn : 0;
    }

    private static double span(double wantedDeg, double stepDeg, double noiseNm, double slope) {
        double least = Math.max(wantedDeg, LEAST_CELLS * stepDeg);
        if (slope <= 0) {
            return least;
        }
        double quiet =
                Math.pow(Math.sqrt(12) * noiseNm * Math.sqrt(stepDeg) / (WANTED_GRADIENT_NOISE * slope), 2.0 / 3.0);
        return Math.max(least, Math.min(WIDEST * wantedDeg, quiet));
    }

    /** The longest stretch above a gradient, dips shorter than {@code dipDeg} allowed; at least one cell. */
    private static int[] longestAbove(Cells cells, MovingLine gradient, int start, double least, double dipDeg) {
        int bestFrom = start;
        int bestTo = start + 1;
        int from = -1;
        int last = -1;
        for (int i = start; i <= cells.size(); i++) {
            boolean ends = i == cells.size();
            boolean above = !ends && gradient.slope(i) >= least;
            boolean apart = !ends && last >= 0 && cells.angleDeg(i) - cells.angleDeg(last) > dipDeg;
            if (above && !(apart && from >= 0)) {
                from = from < 0 ? i : from;
                last = i;
            } else if (from >= 0 && (ends || cells.angleDeg(i) - cells.angleDeg(last) > dipDeg)) {
                if (cells.angleDeg(last) - cells.angleDeg(from)
                        > cells.angleDeg(bestTo - 1) - cells.angleDeg(bestFrom)) {
                    bestFrom = from;
                    bestTo = last + 1;
                }
                from = above ? i : -1;
                last = i;
            }
        }
        return new int[] {bestFrom, bestTo};
    }
}
