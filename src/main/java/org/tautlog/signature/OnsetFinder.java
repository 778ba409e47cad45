package org.tautlog.signature;

import java.util.Locale;
import org.tautlog.joint.window.ReadingRule;

/**
 * Yield onset by gradient ratio: the first angle past the elastic zone from which the local gradient stays below a stated
 * share of the torque rate and does not recover.
 *
 * <p>A fall that recovers is no yield: a slipping drive does that. Only full windows count, so the last half span before
 * the stop has no gradient of its own; the final gradient is that of the last full span.
 *
 * <p>Source: common practice (0.5 most common; sustained for half a span). On three real bolts the half-gradient point
 * lay from 34 deg before to 22 deg after the bolt's own elastic limit, hence three grades and the ratio itself.
 */
final class OnsetFinder {
    private static final double LEAST_SUSTAINED_DEG = 3;

    /** Standard uncertainty of the angle above which a wider span is tried, deg. */
    private static final double WANTED_DEG = 1.6;

    private static final double WIDENING = 1.4;
    private static final double WIDEST = 4;

    private final Cells cells;
    private final MovingLine smooth;
    private final ElasticFit fit;
    private final RobustLine line;
    private final ReadingRule rule;
    private final double noiseNm;
    private final int end;

    private OnsetFinder(
            Cells cells, MovingLine smooth, ElasticFit fit, RobustLine line, ReadingRule rule, double noiseNm) {
        this.cells = cells;
        this.smooth = smooth;
        this.fit = fit;
        this.line = line;
        this.rule = rule;
        this.noiseNm = noiseNm;
        double lastMiddle = cells.angleDeg(cells.size() - 1) - fit.gradient.spanDeg() / 2;
        this.end = Math.max(fit.from + 1, cells.firstFrom(lastMiddle));
    }

    static YieldOnset read(
            Cells cells, MovingLine smooth, ElasticFit fit, ReadingRule rule, double noiseNm, Feature stopDeg) {
        if (fit.line == null) {
            var missing = Feature.missing("no elastic line: " + fit.why);
            return new YieldOnset(missing, missing, missing, missing, missing, EndState.UNKNOWN);
        }
        return new OnsetFinder(cells, smooth, fit, fit.line, rule, noiseNm).onset(stopDeg);
    }

    private double ratio(int i) {
        return fit.gradient.slope(i) / line.slope();
    }

    private YieldOnset onset(Feature stopDeg) {
        double ratioNoise = fit.gradientNoise / line.slope();
        int from = Math.max((fit.from + fit.to) / 2, lastRecovered());
        double least = Double.POSITIVE_INFINITY;
        for (int i = Math.min(from, cells.size() - 1); i < cells.size(); i++) {
            least = Math.min(least, ratio(i));
        }
        var least1 = Feature.of(least, ratioNoise);
        var last = Feature.of(ratio(cells.size() - 1), ratioNoise);
        int at = firstSustainedBelow(from);
        var state = least >= rule.elasticRatio()
                ? EndState.ELASTIC
                : least <= rule.plasticRatio() ? EndState.PLASTIC : EndState.ONSET_ZONE;
        if (at < 0) {
            var missing = Feature.missing(String.format(
                    Locale.ROOT,
                    "the gradient never fell below %.2f of the torque rate for good; the least ratio is %.2f",
                    rule.onsetRatio(),
                    least));
            return new YieldOnset(missing, missing, least1, last, missing, state);
        }
        var crossing = crossing(at, ratioNoise);
        double deg = crossing.deg;
        double uncertainty = Math.max(cells.stepDeg(fit.from) / 2, crossing.uncertaintyDeg);
        int near = Math.min(cells.size() - 1, cells.firstFrom(deg));
        double torque = smooth.value(near) + smooth.slope(near) * (deg - cells.angleDeg(near));
        double torqueUncertainty = Math.hypot(
                noiseNm / Math.sqrt(Math.max(1, smooth.spanDeg() / Math.max(0.25, cells.stepDeg(fit.from)))),
                line.slope() * rule.onsetRatio() * uncertainty);
        return new YieldOnset(
                Feature.of(deg, uncertainty),
                Feature.of(torque, torqueUncertainty),
                least1,
                last,
                stopDeg.isFound()
                        ? Feature.of(stopDeg.number() - deg, Math.hypot(uncertainty, stopDeg.standardUncertainty()))
                        : stopDeg,
                state);
    }

    /** Last cell that ends half a span or more of elastic gradient. */
    private int lastRecovered() {
        double half = fit.gradient.spanDeg() / 2;
        int last = -1;
        for (int i = end - 1; i >= fit.from; i--) {
            if (ratio(i) < rule.elasticRatio()) {
                last = -1;
                continue;
            }
            last = last < 0 ? i : last;
            if (cells.angleDeg(last) - cells.angleDeg(i) >= half) {
                return last;
            }
        }
        return fit.from;
    }

    private int firstSustainedBelow(int from) {
        double half = fit.gradient.spanDeg() / 2;
        int since = -1;
        for (int i = from; i < end; i++) {
            if (ratio(i) >= rule.onsetRatio()) {
                since = -1;
                continue;
            }
            since = since < 0 ? i : since;
            if (cells.angleDeg(i) - cells.angleDeg(since) >= half) {
                return since;
            }
        }
        boolean longEnough = since >= 0
                && (cells.angleDeg(end - 1) - cells.angleDeg(since) >= LEAST_SUSTAINED_DEG || end - since >= 3);
        return longEnough && ratio(cells.size() - 1) < rule.onsetRatio() ? since : -1;
    }

    /** Where a gradient crosses the onset ratio, and how surely. */
    private record Crossing(double deg, double uncertaintyDeg) {}

    /**
     * The crossing; where noise leaves it in doubt, that of a gradient over a wider span, as far as the curve has room. A
     * knee's gradient falls about evenly where it is half gone, so a wider span moves the crossing little.
     */
    private Crossing crossing(int at, double ratioNoise) {
        double span = fit.gradient.spanDeg();
        double last = cells.angleDeg(cells.size() - 1);
        var best = new Crossing(crossing(fit.gradient, at), ratioNoise / steepness(fit.gradient, at));
        for (double wide = WIDENING * span; wide <= WIDEST * span; wide *= WIDENING) {
            double half = wide / 2;
            if (best.uncertaintyDeg <= WANTED_DEG
                    || best.deg + half > last
                    || best.deg - half < cells.angleDeg(fit.from)) {
                break;
            }
            var gradient = cells.line(wide);
            int near = nearestCrossing(gradient, best.deg, half);
            if (near < 0) {
                break;
            }
            double noise = ratioNoise * Math.pow(span / wide, 1.5);
            best = new Crossing(crossing(gradient, near), noise / steepness(gradient, near));
        }
        return best;
    }

    private int nearestCrossing(MovingLine gradient, double deg, double withinDeg) {
        double level = rule.onsetRatio() * line.slope();
        int nearest = -1;
        for (int i = Math.max(1, cells.firstFrom(deg - withinDeg));
                i < cells.size() && cells.angleDeg(i) <= deg + withinDeg;
                i++) {
            boolean crosses = gradient.slope(i - 1) >= level && gradient.slope(i) < level;
            if (crosses
                    && (nearest < 0 || Math.abs(cells.angleDeg(i) - deg) < Math.abs(cells.angleDeg(nearest) - deg))) {
                nearest = i;
            }
        }
        return nearest;
    }

    private double crossing(MovingLine gradient, int at) {
        double level = rule.onsetRatio() * line.slope();
        if (at == 0 || gradient.slope(at - 1) <= gradient.slope(at)) {
            return cells.angleDeg(at);
        }
        double share = (gradient.slope(at - 1) - level) / (gradient.slope(at - 1) - gradient.slope(at));
        share = Math.max(0, Math.min(1, share));
        return cells.angleDeg(at - 1) + share * (cells.angleDeg(at) - cells.angleDeg(at - 1));
    }

    /** How fast the ratio falls where it crosses, 1/deg; never so slow that the uncertainty passes all sense. */
    private double steepness(MovingLine gradient, int at) {
        double quarter = gradient.spanDeg() / 4;
        int before = Math.min(cells.size() - 1, cells.firstFrom(cells.angleDeg(at) - quarter));
        int after = Math.min(cells.size() - 1, cells.firstFrom(cells.angleDeg(at) + quarter));
        double turn = cells.angleDeg(after) - cells.angleDeg(before);
        double fall = (gradient.slope(before) - gradient.slope(after)) / line.slope();
        return turn > 0 ? Math.max(0.002, fall / turn) : 0.002;
    }
}
