package org.tautlog.signature;

/**
 * The snug point from the cells before the pause that follows it. During the pause the joint relaxes by a degree or two of
 * turn and the bolt must break loose again, so the cells after it lie on another line.
 *
 * <pre>
 * angle = mean angle + (snug torque - mean torque) / k      over the last n cells before the pause, n as the noise asks for
 * </pre>
 *
 * k is the torque rate where those cells lie in the elastic zone, else the slope of a line through them.
 *
 * <p>Source: none; the relaxation and the breaking loose are common practice.
 */
final class SnugBeforePause {
    private static final double WANTED_DEG = 0.25;
    private static final int FEWEST_CELLS = 12;
    private static final int MOST_CELLS = 100;
    private static final double FURTHEST_PAUSE_DEG = 15;
    private static final double FARTHEST_BACK_DEG = 45;
    private static final double MOST_CHANGE_DEG = 6;

    private SnugBeforePause() {}

    /** Cells as recorded, and the same without run-out, along which the elastic line lies. */
    static Feature refine(
            Feature snugDeg, Cells cells, Cells even, ElasticFit fit, double pauseDeg, double noiseNm, double snugNm) {
        if (fit.line == null || Double.isInfinite(pauseDeg)) {
            return snugDeg;
        }
        int to = Math.min(cells.size(), cells.firstFrom(pauseDeg + 1e-9));
        double wanted = noiseNm / (WANTED_DEG * fit.line.slope());
        int n = (int) Math.ceil(Math.min(MOST_CELLS, Math.max(FEWEST_CELLS, wanted * wanted)));
        int from = Math.max(Math.max(0, to - n), cells.firstFrom(pauseDeg - FARTHEST_BACK_DEG));
        if (to - from < FEWEST_CELLS) {
            return snugDeg;
        }
        boolean inZone = fit.from <= from && fit.to >= to;
        double slope = inZone ? fit.line.slope() + runOutSlope(cells, even, from, to - 1) : ownSlope(cells, from, to);
        if (!(slope > 0)) {
            return snugDeg;
        }
        double meanDeg = 0;
        double meanNm = 0;
        for (int i = from; i < to; i++) {
            meanDeg += cells.angleDeg(i) / (to - from);
            meanNm += cells.torqueNm(i) / (to - from);
        }
        double deg = meanDeg + (snugNm - meanNm) / slope;
        double squares = 0;
        for (int i = from; i < to; i++) {
            squares += Math.pow(cells.torqueNm(i) - meanNm - slope * (cells.angleDeg(i) - meanDeg), 2);
        }
        double cellNoiseNm = Math.sqrt(squares / (to - from - 1));
        double uncertainty = cellNoiseNm / (slope * Math.sqrt(to - from)) * (inZone ? 1 : 2);
        return Math.abs(deg - snugDeg.number()) <= MOST_CHANGE_DEG ? Feature.of(deg, uncertainty) : snugDeg;
    }

    /** Where the tool paused at the snug point, or negative infinity where it did not. */
    static double pauseDeg(Feature snugDeg, Turning turning) {
        if (snugDeg.isFound()) {
            for (var pause : turning.pauses()) {
                double past = pause.angleDeg() - snugDeg.number();
                if (past > -MOST_CHANGE_DEG && past < FURTHEST_PAUSE_DEG) {
                    return pause.angleDeg();
                }
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    private static double runOutSlope(Cells cells, Cells even, int from, int last) {
        double first = cells.torqueNm(from) - even.torqueNm(from);
        return (cells.torqueNm(last) - even.torqueNm(last) - first) / (cells.angleDeg(last) - cells.angleDeg(from));
    }

    private static double ownSlope(Cells cells, int from, int to) {
        return cells.fitted(from, to).slope();
    }
}
