package org.tautlog.signature;

/**
 * What swings in the torque of the free turning, turn after turn: a thread, a washer or a drive that runs out of true. It goes
 * on under load, where its slope would pass for the joint's, so the elastic line and the onset are read without it.
 *
 * <pre>
 * torque(x) = mean + sum of A sin(2 pi f x / 360 + phase)      at most two swings, f from 0.8 to 8 a turn
 * </pre>
 *
 * A swing counts if chance alone would hardly show one like it: amplitude^2 n / (2 s^2) above 20, for n blocks of noise s.
 * It needs a turn and a quarter of free turning.
 *
 * <p>Source: the periodogram of Lomb, Astrophysics and Space Science 39 (1976) 447-462; with 150 frequencies tried, exp(-20)
 * each keeps chance below one in a million. That the swing goes on under load is common practice, no source.
 */
final class RunOut {
    private static final double LEAST_DEG = 450;
    private static final double MOST_DEG = 1080;
    private static final double BEFORE_ORIGIN_DEG = 60;
    private static final double BLOCK_DEG = 10;
    private static final double RISING_DEG = 15;
    private static final double FREE_DEVIATIONS = 2;
    private static final double LOWEST = 0.8;
    private static final double HIGHEST = 8;
    private static final double STEP = 0.05;
    private static final double LEAST_POWER = 20;
    private static final int MOST_SWINGS = 2;

    /** Blocks that a swing's level, sine and cosine need, and as many again to be doubted by. */
    private static final int FEWEST_CELLS = 6;

    private static final int HALVINGS = 5;

    /** Most of the free turning's own level that swings may be, so that nothing else passes for them. */
    private static final double MOST_SHARE = 0.3;

    private final double[] frequency = new double[MOST_SWINGS];
    private final double[] sine = new double[MOST_SWINGS];
    private final double[] cosine = new double[MOST_SWINGS];
    private final double originDeg;
    private int swings;

    private RunOut(double originDeg) {
        this.originDeg = originDeg;
    }

    /** The cells without their run-out; the same cells where none is seen. */
    static Cells without(Cells cells, ElasticFit fit) {
        if (fit.line == null) {
            return cells;
        }
        int to = cells.firstFrom(fit.line.angleAt(0) - BEFORE_ORIGIN_DEG);
        if (to < 2) {
            return cells;
        }
        int from = cells.firstFrom(cells.angleDeg(to - 1) - MOST_DEG);
        if (to - from < FEWEST_CELLS) {
            return cells;
        }
        to = beforeSeating(cells, from, to);
        if (cells.angleDeg(to - 1) - cells.angleDeg(from) < LEAST_DEG) {
            return cells;
        }
        var runOut = new RunOut(cells.angleDeg(from));
        runOut.find(new Blocks(cells, from, to));
        return runOut.swings == 0 ? cells : runOut.takenFrom(cells);
    }

    /** Where the torque leaves the level of the first half for good: from there on the parts draw together. */
    private static int beforeSeating(Cells cells, int from, int to) {
        int middle = (from + to) / 2;
        var taken = Robust.taken(cells.torques(), from, middle);
        double usual = Robust.percentile(taken, 0.5);
        double most = usual + FREE_DEVIATIONS * Robust.spreadAbout(taken, usual);
        int end = to;
        while (end > middle) {
            int first = Math.min(end - 1, cells.firstFrom(cells.angleDeg(end - 1) - RISING_DEG));
            double sum = 0;
            for (int i = first; i < end; i++) {
                sum += cells.torqueNm(i);
            }
            if (sum / (end - first) <= most) {
                break;
            }
            end = first;
        }
        return end;
    }

    private Cells takenFrom(Cells cells) {
        int n = cells.size();
        var torque = cells.scratch().doubles(n);
        for (int i = 0; i < n; i++) {
            torque[i] = cells.torqueNm(i) - at(cells.angleDeg(i));
        }
        return new Cells(cells.angles(), torque, n, cells.scratch());
    }

    private double at(double deg) {
        double sum = 0;
        for (int k = 0; k < swings; k++) {
            double phase = 2 * Math.PI * frequency[k] * (deg - originDeg) / 360;
            sum += sine[k] * Math.sin(phase) + cosine[k] * Math.cos(phase);
        }
        return sum;
    }

    private void find(Blocks blocks) {
        double level = Math.abs(blocks.mean);
        for (int k = 0; k < MOST_SWINGS; k++) {
            var best = strongest(blocks);
            double left = Math.max(1e-9, blocks.squares() - best.explained);
            double power = best.explained / (left / Math.max(1, blocks.n - 3)) / 2;
            double amplitude = Math.hypot(best.sine, best.cosine);
            if (power < LEAST_POWER || amplitude > MOST_SHARE * level) {
                return;
            }
            frequency[k] = best.frequency;
            sine[k] = best.sine;
            cosine[k] = best.cosine;
            swings = k + 1;
            blocks.take(best);
        }
    }

    private static Swing strongest(Blocks blocks) {
        blocks.startAt(LOWEST, STEP);
        var best = blocks.swing(LOWEST);
        for (double f = LOWEST + STEP; f <= HIGHEST; f += STEP) {
            var here = blocks.turnedOn(f);
            best = here.explained > best.explained ? here : best;
        }
        for (double step = STEP / 2; step > STEP / (1 << HALVINGS); step /= 2) {
            var below = blocks.swing(best.frequency - step);
            var above = blocks.swing(best.frequency + step);
            best = below.explained > best.explained ? below : best;
            best = above.explained > best.explained ? above : best;
        }
        return best;
    }

    /**
     * One swing fitted.
     *
     * @param frequency how many a turn
     * @param sine amplitude of its sine from the first cell on, N·m
     * @param cosine of its cosine, N·m
     * @param explained sum of squares that it explains
     */
    private record Swing(double frequency, double sine, double cosine, double explained) {}

    /** Means over a few degrees, about their own mean. */
    private static final class Blocks {
        private final double[] place;
        private final double[] torque;
        private final double[] sine;
        private final double[] cosine;
        private final double[] stepSine;
        private final double[] stepCosine;
        private final int n;
        private final double mean;
        private double allTorque;

        Blocks(Cells cells, int from, int to) {
            double turned = cells.angleDeg(to - 1) - cells.angleDeg(from);
            int most = (int) Math.min(to - from, turned / BLOCK_DEG + 2);
            place = new double[most];
            torque = new double[most];
            sine = new double[most];
            cosine = new double[most];
            stepSine = new double[most];
            stepCosine = new double[most];
            int count = 0;
            double sum = 0;
            int i = from;
            while (i < to) {
                int first = i;
                double sx = 0;
                double sy = 0;
                double end = cells.angleDeg(i) + BLOCK_DEG;
                while (i < to && cells.angleDeg(i) < end) {
                    sx += cells.angleDeg(i) - cells.angleDeg(from);
                    sy += cells.torqueNm(i);
                    i++;
                }
                place[count] = sx / (i - first);
                torque[count] = sy / (i - first);
                sum += torque[count];
                count++;
            }
            n = count;
            mean = sum / count;
            for (int k = 0; k < n; k++) {
                torque[k] -= mean;
            }
            sum();
        }

        private void sum() {
            allTorque = 0;
            for (int i = 0; i < n; i++) {
                allTorque += torque[i];
            }
        }

        double squares() {
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += torque[i] * torque[i];
            }
            return sum;
        }

        void take(Swing swing) {
            for (int i = 0; i < n; i++) {
                double phase = 2 * Math.PI * swing.frequency * place[i] / 360;
                torque[i] -= swing.sine * Math.sin(phase) + swing.cosine * Math.cos(phase);
            }
            sum();
        }

        /** Phases at a frequency, and by how much they turn on from one frequency to the next. */
        void startAt(double frequency, double step) {
            phases(frequency);
            for (int i = 0; i < n; i++) {
                double turn = 2 * Math.PI * step * place[i] / 360;
                stepSine[i] = Math.sin(turn);
                stepCosine[i] = Math.cos(turn);
            }
        }

        /** The swing at the next frequency: its phases follow from those before, without a sine to work out. */
        Swing turnedOn(double frequency) {
            for (int i = 0; i < n; i++) {
                double s = sine[i];
                double c = cosine[i];
                sine[i] = s * stepCosine[i] + c * stepSine[i];
                cosine[i] = c * stepCosine[i] - s * stepSine[i];
            }
            return atPhases(frequency);
        }

        private void phases(double frequency) {
            double perDeg = 2 * Math.PI * frequency / 360;
            for (int i = 0; i < n; i++) {
                sine[i] = Math.sin(perDeg * place[i]);
                cosine[i] = Math.cos(perDeg * place[i]);
            }
        }

        Swing swing(double frequency) {
            phases(frequency);
            return atPhases(frequency);
        }

        /** Least squares of constant, sine and cosine. */
        private Swing atPhases(double frequency) {
            double ss = 0;
            double cc = 0;
            double sc = 0;
            double s1 = 0;
            double c1 = 0;
            double sy = 0;
            double cy = 0;
            for (int i = 0; i < n; i++) {
                double s = sine[i];
                double c = cosine[i];
                s1 += s;
                c1 += c;
                ss += s * s;
                cc += c * c;
                sc += s * c;
                sy += s * torque[i];
                cy += c * torque[i];
            }
            ss -= s1 * s1 / n;
            cc -= c1 * c1 / n;
            sc -= s1 * c1 / n;
            sy -= s1 * allTorque / n;
            cy -= c1 * allTorque / n;
            double det = ss * cc - sc * sc;
            if (det < 1e-6 * n) {
                return new Swing(frequency, 0, 0, 0);
            }
            double a = (sy * cc - cy * sc) / det;
            double b = (cy * ss - sy * sc) / det;
            return new Swing(frequency, a, b, a * sy + b * cy);
        }
    }
}
