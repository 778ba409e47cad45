package org.tautlog.signature;

/**
 * The part of an elastic zone that is straight: its middle, and from there outwards as long as the torque keeps to the line
 * through it. A zone found by its gradient alone holds the end of the seating and the beginning of the knee, both below the
 * line, and a line through all of it is too flat.
 *
 * <pre>
 * a block of cells joins where |mean of its torque less the line| is at most 2 sqrt(s^2 / n + u^2)
 * </pre>
 *
 * or at most 0.2 % of the zone's rise; s is the noise of a cell, n the cells of the block, u the line's own uncertainty there.
 *
 * <p>Source: none; prediction limits of a least-squares line, applied block by block.
 */
final class StraightPart {
    private static final double CORE_SHARE = 0.5;
    private static final double LEAST_CORE_DEG = 20;
    private static final double BLOCK_DEG = 6;
    private static final int LEAST_CORE_CELLS = 6;
    private static final double DEVIATIONS = 2;
    private static final int ROUNDS = 4;
    /** No line is straighter than this share of its rise: the run-out of a thread shows on the quietest curve. */
    private static final double LEAST_SHARE = 0.002;

    private final Cells cells;
    private final int zoneFrom;
    private final int zoneTo;
    private final double noiseNm;
    private final double breakDeg;
    private int from;
    private int to;

    private StraightPart(Cells cells, int zoneFrom, int zoneTo, double noiseNm, double breakDeg) {
        this.cells = cells;
        this.zoneFrom = zoneFrom;
        this.zoneTo = zoneTo;
        this.noiseNm = noiseNm;
        this.breakDeg = breakDeg;
    }

    /** The part from a cell inclusive to one exclusive, with the line through it. */
    record Found(int from, int to, RobustLine line) {}

    static Found of(Cells cells, int zoneFrom, int zoneTo, double noiseNm, double breakDeg) {
        return new StraightPart(cells, zoneFrom, zoneTo, noiseNm, breakDeg).find();
    }

    private Found find() {
        double low = cells.angleDeg(zoneFrom);
        double high = cells.angleDeg(zoneTo - 1);
        double half = Math.max(CORE_SHARE * (high - low), LEAST_CORE_DEG) / 2;
        from = Math.max(zoneFrom, cells.firstFrom((low + high) / 2 - half));
        to = Math.min(zoneTo, cells.firstFrom((low + high) / 2 + half));
        if (to - from < LEAST_CORE_CELLS) {
            return new Found(zoneFrom, zoneTo, line(zoneFrom, zoneTo));
        }
        var line = line(from, to);
        for (int round = 0; round < ROUNDS && grow(line); round++) {
            line = line(from, to);
        }
        return new Found(from, to, line);
    }

    private RobustLine line(int first, int last) {
        return RobustLine.through(cells, first, last, breakDeg);
    }

    private boolean grow(RobustLine line) {
        int before = to - from;
        int next = blockUp(to);
        while (next > to && keeps(line, to, next)) {
            to = next;
            next = blockUp(to);
        }
        next = blockDown(from);
        while (next < from && keeps(line, next, from)) {
            from = next;
            next = blockDown(from);
        }
        return to - from > before;
    }

    private int blockUp(int start) {
        return start >= zoneTo
                ? start
                : Math.min(zoneTo, Math.max(start + 1, cells.firstFrom(cells.angleDeg(start) + BLOCK_DEG)));
    }

    private int blockDown(int end) {
        return end <= zoneFrom
                ? end
                : Math.max(zoneFrom, Math.min(end - 1, cells.firstFrom(cells.angleDeg(end - 1) - BLOCK_DEG)));
    }

    private boolean keeps(RobustLine line, int first, int last) {
        double away = 0;
        double deg = 0;
        int n = last - first;
        for (int i = first; i < last; i++) {
            away += (cells.torqueNm(i) - line.torqueAt(cells.angleDeg(i))) / n;
            deg += cells.angleDeg(i) / n;
        }
        double cellNoise = Math.max(noiseNm, line.residualNm()) * line.inflation();
        double lineNm = line.angleUncertainty(deg) * Math.abs(line.slope());
        double rise = Math.abs(line.slope()) * (cells.angleDeg(zoneTo - 1) - cells.angleDeg(zoneFrom));
        return Math.abs(away)
                <= Math.max(LEAST_SHARE * rise, DEVIATIONS * Math.hypot(cellNoise / Math.sqrt(n), lineNm));
    }
}
