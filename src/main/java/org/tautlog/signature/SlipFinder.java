package org.tautlog.signature;

/** Turn without the torque that belongs to it: drive, socket or the bolt's other end slipped. */
final class SlipFinder {
    /** Shorter slips drown in encoder steps and noise, deg. */
    private static final double LEAST_SLIP_DEG = 3;

    /** Turn over which a lag must last, so that a saw of the torque averages out, deg. */
    private static final double LASTING_DEG = 30;

    private static final double LOST_RATIO = 0.4;

    /** Least and most turn of a straight elastic part on either side of a lag, deg; how steep it is over the torque rate. */
    private static final double LEAST_PART_DEG = 20;

    private static final double MOST_PART_DEG = 60;

    private static final double AS_STEEP = 0.9;

    /** A lag within this many of its standard uncertainties is noise. */
    private static final double DEVIATIONS = 4;

    /** Gradient over torque rate from which on the curve is elastic again. */
    private static final double ELASTIC_RATIO = 0.8;

    /** Falls that come again and again are stick-slip, not a slipping drive. */
    private static final int MOST_SLIPS = 2;

    private final Turning turning;
    private final Cells cells;
    private final MovingLine smooth;
    private final ElasticFit fit;
    private final double noiseNm;

    SlipFinder(Turning turning, Cells cells, MovingLine smooth, ElasticFit fit, double noiseNm) {
        this.turning = turning;
        this.cells = cells;
        this.smooth = smooth;
        this.fit = fit;
        this.noiseNm = noiseNm;
    }

    /**
     * Longest turn without the torque that belongs to it, after which torque rises as before, with its place. One spread over
     * turn must be more than half of the torque's saw, which lags too, tooth by tooth.
     */
    double[] longest(double snugDeg, Feature sawNm) {
        var line = fit.line;
        if (line == null) {
            return new double[] {0, 0};
        }
        var longest = new Longest(LEAST_SLIP_DEG + cells.stepDeg(cells.firstFrom(snugDeg)));
        for (var loss : turning.losses()) {
            double here = loss.toDeg() - loss.fromDeg() - Math.max(0, (loss.toNm() - loss.fromNm()) / line.slope());
            if (loss.fromDeg() > snugDeg) {
                int before = Math.max(0, cells.firstFrom(loss.fromDeg()) - 1);
                int after = Math.min(cells.size() - 1, cells.firstFrom(loss.toDeg()));
                longest.offer(Math.min(here, lasting(before, after, line)), loss.fromDeg());
            }
        }
        for (int i = Math.max(1, cells.firstFrom(snugDeg + 5)); i < cells.size(); i++) {
            double step = cells.angleDeg(i) - cells.angleDeg(i - 1);
            double rise = cells.torqueNm(i) - cells.torqueNm(i - 1);
            double slip = step - Math.max(0, rise + 2 * noiseNm) / line.slope();
            if (step > LEAST_SLIP_DEG && !crossesPause(cells.angleDeg(i - 1), cells.angleDeg(i))) {
                longest.offer(slip, cells.angleDeg(i - 1));
            }
        }
        standing(snugDeg, line, longest);
        var spread = new Longest(longest.leastDeg);
        lagging(snugDeg, line, spread);
        if (spread.deg * line.slope() < sawNm.number() / 2) {
            spread = new Longest(longest.leastDeg);
        }
        if (longest.count > MOST_SLIPS || spread.count > MOST_SLIPS) {
            return new double[] {0, 0};
        }
        var found = spread.deg > longest.deg ? spread : longest;
        return new double[] {found.deg, found.atDeg};
    }

    private static final class Longest {
        /** A slip shorter than this and a usual step drowns between two samples, deg. */
        private final double leastDeg;

        private double deg;
        private double atDeg;
        private int count;

        Longest(double leastDeg) {
            this.leastDeg = leastDeg;
        }

        void offer(double slipDeg, double at) {
            offer(slipDeg, at, false);
        }

        /** One that goes on where another ended is no further one. */
        boolean offer(double slipDeg, double at, boolean goesOn) {
            boolean counts = slipDeg > leastDeg;
            if (counts) {
                count += goesOn ? 0 : 1;
                atDeg = slipDeg > deg ? at : atDeg;
                deg = Math.max(deg, slipDeg);
            }
            return counts;
        }
    }

    private boolean crossesPause(double fromDeg, double toDeg) {
        for (var pause : turning.pauses()) {
            if (pause.angleDeg() >= fromDeg - 0.5 && pause.angleDeg() <= toDeg + 0.5) {
                return true;
            }
        }
        for (var loss : turning.losses()) {
            if (loss.fromDeg() <= toDeg && loss.toDeg() >= fromDeg) {
                return true;
            }
        }
        return false;
    }

    /** Stretches where the gradient is lost and comes back to elastic: the torque stands while the angle goes on. */
    private void standing(double snugDeg, RobustLine line, Longest longest) {
        double half = smooth.spanDeg() / 2;
        int from = -1;
        int before = -1;
        for (int i = cells.firstFrom(snugDeg + smooth.spanDeg()); i < cells.size(); i++) {
            if (smooth.slope(i) < LOST_RATIO * line.slope()) {
                from = from < 0 ? i : from;
            } else if (from >= 0) {
                if (backToElastic(i, line)) {
                    int a = cells.firstFrom(cells.angleDeg(from) - half / 2);
                    int b = Math.min(cells.size() - 1, cells.firstFrom(cells.angleDeg(i) + half / 2));
                    double rise = smooth.value(b) - smooth.value(a);
                    double here = cells.angleDeg(b) - cells.angleDeg(a) - rise / line.slope();
                    boolean goesOn = before >= 0 && cells.angleDeg(from) - cells.angleDeg(before) < half;
                    before = longest.offer(Math.min(here, lasting(a, b, line)), cells.angleDeg(from), goesOn)
                            ? i
                            : before;
                }
                from = -1;
            }
        }
    }

    /**
     * Stretches where the torque only falls behind: the gradient lies below the elastic one for a while, and before and
     * after it the curve is as steep as its elastic line.
     */
    private void lagging(double snugDeg, RobustLine line, Longest longest) {
        double margin = fit.gradient.spanDeg() / 4;
        double least = ELASTIC_RATIO * line.slope();
        int from = -1;
        for (int i = cells.firstFrom(snugDeg); i < cells.size(); i++) {
            if (fit.gradient.slope(i) < least) {
                from = from < 0 ? i : from;
            } else if (from >= 0 && fit.gradient.slope(i) >= AS_STEEP * line.slope()) {
                int a = cells.firstFrom(cells.angleDeg(from) - margin);
                int b = cells.firstFrom(cells.angleDeg(i) + margin);
                if (asSteep(before(a), a, line) && asSteep(b, after(b, MOST_PART_DEG), line)) {
                    longest.offer(lasting(a, b, line), cells.angleDeg(from));
                }
                from = -1;
            }
        }
    }

    /**
     * Whether a part is surely as steep as the elastic line: by a standard uncertainty of its slope,
     *
     * <pre>
     * u = s sqrt(12 / n) / span
     * </pre>
     *
     * s the residual of the elastic line, widened where neighbours are alike, n the cells. Source: least squares.
     */
    private boolean asSteep(int from, int to, RobustLine line) {
        double spanDeg = to - from < 2 ? 0 : cells.angleDeg(to - 1) - cells.angleDeg(from);
        if (spanDeg < LEAST_PART_DEG) {
            return false;
        }
        double uncertainty = line.residualNm() * line.inflation() * Math.sqrt(12.0 / (to - from)) / spanDeg;
        return cells.fitted(from, to).slope() - uncertainty >= AS_STEEP * line.slope();
    }

    private int before(int at) {
        return cells.firstFrom(cells.angleDeg(at) - LASTING_DEG);
    }

    private int after(int at, double turnDeg) {
        return at < cells.size() ? cells.firstFrom(cells.angleDeg(at) + turnDeg) : at;
    }

    /** By how much turn the torque lags for good: mean distance from the line after a stretch and before it. */
    private double lasting(int from, int to, RobustLine line) {
        int before = before(from);
        int after = Math.min(cells.size(), Math.max(after(to, LASTING_DEG), to + 1));
        double lag = (away(before, from + 1, line) - away(to, after, line)) / line.slope();
        double uncertainty = line.residualNm()
                * line.inflation()
                / line.slope()
                * Math.sqrt(1.0 / (from + 1 - before) + 1.0 / (after - to));
        return lag > DEVIATIONS * uncertainty ? lag : 0;
    }

    private double away(int from, int to, RobustLine line) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += cells.torqueNm(i) - line.torqueAt(cells.angleDeg(i));
        }
        return sum / (to - from);
    }

    /** Whether a span of elastic gradient follows within a span. */
    private boolean backToElastic(int i, RobustLine line) {
        double least = ELASTIC_RATIO * line.slope();
        double until = cells.angleDeg(i) + 2 * smooth.spanDeg();
        int since = -1;
        for (int j = i; j < cells.size() && cells.angleDeg(j) <= until; j++) {
            if (fit.gradient.slope(j) < least) {
                since = -1;
                continue;
            }
            since = since < 0 ? j : since;
            if (cells.angleDeg(j) - cells.angleDeg(since) >= smooth.spanDeg() / 2) {
                return true;
            }
        }
        return false;
    }
}
