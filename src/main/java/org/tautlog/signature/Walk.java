package org.tautlog.signature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tautlog.signature.Turning.Loss;
import org.tautlog.signature.Turning.Pause;
import org.tautlog.signature.Turning.Role;
import org.tautlog.trace.Curve;

/**
 * Walks the samples up to the stop and keeps those that turn on. A pause under load shows by a new stage, or by torque
 * that falls while the angle stands or runs back; all from there until the torque is back is reloading, and a few degrees
 * more are breaking loose.
 *
 * <p>Source: common practice: join stages on the angle and drop the loop until the torque regains 95 to 100 % of its
 * value at the stop; restart peaks are 5 to 30 % high. The degrees are ours.
 */
final class Walk {
    /** Torque over the torque before it, below which the torque has fallen. */
    private static final double FALLEN = 0.85;

    /** Torque over the torque before the pause, from which on it is back. */
    private static final double BACK = 0.95;

    /** Turn after reloading that belongs to breaking loose, deg. */
    private static final double RESTART_DEG = 5;

    /** Turn past the pause within which the torque must be back. */
    private static final double LONGEST_RELOAD_DEG = 15;

    /** Turn within which a fallen torque must be back to count as a sudden loss. */
    private static final double LONGEST_LOSS_DEG = 90;

    /** A loss shorter than this near the snug torque is a pause whose back-run was not recorded. */
    private static final double UNSEEN_PAUSE_DEG = 4;

    /** Share of the snug torque from which on the bolt counts as loaded. */
    private static final double LOADED = 0.5;

    /** Back-runs smaller than this are the encoder's, deg. */
    private static final double BACK_STEP_DEG = 0.05;

    /** An angle that comes back so often, or runs back so far, stands; fewer are the encoder's steps. */
    private static final int STANDING_SAMPLES = 8;

    private static final double STANDING_DEG = 0.3;

    /** No drive springs back so far in a pause: the angle itself ran back. Common practice, 3 to 10 deg. */
    private static final double MOST_BACK_DEG = 20;

    private static final int MEMORY = 4;

    private final Curve curve;
    private final double snugNm;
    private final double[] angle;
    private final double[] torque;
    private final int[] sample;
    private final Role[] role;
    private final List<Pause> pauses = new ArrayList<>();
    private final List<Loss> losses = new ArrayList<>();
    private int size;
    private Role now = Role.TURNS;
    private double top = Double.NEGATIVE_INFINITY;
    private double beforeNm;
    private double openedDeg;
    private double regainedDeg;
    private double leastNm;
    private int openedAt;
    private int backSteps;
    private int still;
    private double jumpDeg;
    private int tentativeBackSteps;
    private double tentativeBackDeg;

    private Walk(Curve curve, double snugNm, int most, Scratch scratch) {
        this.curve = curve;
        this.snugNm = snugNm;
        angle = scratch.doubles(most);
        torque = scratch.doubles(most);
        sample = new int[most];
        role = new Role[most];
    }

    static Turning of(Curve curve, Stop stop, double snugNm, Scratch scratch) {
        var walk = new Walk(curve, snugNm, stop.sample() + 1, scratch);
        for (int i = 0; i <= stop.sample(); i++) {
            if (!Stop.wild(curve, i)) {
                walk.step(i);
            } else {
                walk.jumpDeg = Math.max(walk.jumpDeg, Math.abs(curve.angleDeg(i) - curve.angleDeg(i - 1)));
            }
        }
        walk.finish();
        walk.lookPast(stop);
        return new Turning(
                walk.angle,
                walk.torque,
                walk.role,
                walk.size,
                List.copyOf(walk.pauses),
                List.copyOf(walk.losses),
                walk.backSteps,
                walk.jumpDeg);
    }

    private void step(int i) {
        double a = curve.angleDeg(i);
        double t = curve.torqueNm(i);
        if (now == Role.TURNS && size > 0 && newStage(i) && loaded()) {
            open(Role.RELOADS);
        }
        if (a <= top) {
            stand(i, a, t);
            return;
        }
        if (tentativeBackSteps > 0) {
            backSteps += tentativeBackSteps;
            jumpDeg = Math.max(jumpDeg, tentativeBackDeg);
            tentativeBackSteps = 0;
            tentativeBackDeg = 0;
        }
        if (now == Role.TURNS && fallenUnderLoad(t)) {
            open(Role.LOST);
        }
        push(a, t, i);
        top = a;
        still = 0;
        switch (now) {
            case RELOADS -> reload(a, t);
            case RESTARTS -> restart(a);
            case LOST -> recover(a, t);
            case TURNS -> noteLeap();
        }
    }

    /** A tool that lets go runs back sample by sample; an angle that leaps back at once is none of the tool's. */
    private void lookPast(Stop stop) {
        for (int i = stop.sample() + 1; i < stop.end(); i++) {
            double back = curve.angleDeg(i - 1) - curve.angleDeg(i);
            if (back > MOST_BACK_DEG && !Stop.wild(curve, i) && !Stop.wild(curve, i - 1)) {
                jumpDeg = Math.max(jumpDeg, back);
            }
        }
    }

    private boolean newStage(int i) {
        return curve.hasStages() && curve.stage(i) != curve.stage(sample[size - 1]);
    }

    private void stand(int i, double a, double t) {
        if (top - a > MOST_BACK_DEG) {
            jumpDeg = Math.max(jumpDeg, top - a);
        }
        still++;
        boolean stands = still >= STANDING_SAMPLES || a < top - STANDING_DEG;
        if (stands && now == Role.TURNS && fallenUnderLoad(t)) {
            tentativeBackSteps = 0;
            tentativeBackDeg = 0;
            open(Role.RELOADS);
        } else if (stands && now == Role.LOST && t < FALLEN * beforeNm) {
            now = Role.RELOADS;
            Arrays.fill(role, openedAt, size, Role.RELOADS);
            pauses.add(new Pause(sample[Math.max(0, openedAt - 1)], openedDeg));
        } else if (now == Role.TURNS && i > 0 && a < curve.angleDeg(i - 1) - BACK_STEP_DEG) {
            tentativeBackSteps++;
            tentativeBackDeg = Math.max(tentativeBackDeg, top - a);
        }
        leastNm = Math.min(leastNm, t);
    }

    private void open(Role what) {
        now = what;
        boolean letGo = what == Role.RELOADS && size > 1 && LetGo.between(torque[size - 2], torque[size - 1]);
        openedAt = letGo ? size - 1 : size;
        Arrays.fill(role, openedAt, size, what);
        beforeNm = recentNm(openedAt);
        leastNm = beforeNm;
        openedDeg = top;
        if (what == Role.RELOADS) {
            pauses.add(new Pause(sample[size - 1], top));
        }
    }

    private void push(double a, double t, int i) {
        angle[size] = a;
        torque[size] = t;
        sample[size] = i;
        role[size] = now;
        size++;
        leastNm = Math.min(leastNm, t);
    }

    private void reload(double a, double t) {
        if (t >= BACK * beforeNm) {
            now = Role.RESTARTS;
            regainedDeg = a;
        } else if (a > openedDeg + LONGEST_RELOAD_DEG) {
            abandon();
        }
    }

    private void restart(double a) {
        if (a > regainedDeg + RESTART_DEG) {
            now = Role.TURNS;
        }
    }

    private void recover(double a, double t) {
        if (t >= BACK * beforeNm) {
            if (a - openedDeg <= UNSEEN_PAUSE_DEG && pauses.isEmpty() && nearSnug()) {
                pauses.add(new Pause(sample[Math.max(0, openedAt - 1)], openedDeg));
                Arrays.fill(role, openedAt, size, Role.RELOADS);
                now = Role.RESTARTS;
                regainedDeg = a;
            } else {
                losses.add(new Loss(openedDeg, a, beforeNm, t, leastNm));
                now = Role.TURNS;
            }
        } else if (a > openedDeg + LONGEST_LOSS_DEG) {
            abandon();
        }
    }

    private boolean nearSnug() {
        return beforeNm > 0.7 * snugNm && beforeNm < 1.5 * snugNm;
    }

    /** The torque did not come back: what was set aside is the bolt's own torque after all. */
    private void abandon() {
        Arrays.fill(role, openedAt, size, Role.TURNS);
        now = Role.TURNS;
    }

    /** A step of the angle far longer than those before and after it. */
    private void noteLeap() {
        if (size < 4) {
            return;
        }
        double last = angle[size - 1] - angle[size - 2];
        double leap = angle[size - 2] - angle[size - 3];
        double first = angle[size - 3] - angle[size - 4];
        double usual = Math.max(first, last);
        if (leap > 5 * usual + 1) {
            jumpDeg = Math.max(jumpDeg, leap - usual);
        }
    }

    private void finish() {
        if (now == Role.LOST || now == Role.RELOADS) {
            abandon();
        }
    }

    private boolean loaded() {
        return size >= MEMORY && recentNm() > LOADED * snugNm;
    }

    private boolean fallenUnderLoad(double t) {
        if (size < MEMORY) {
            return false;
        }
        double recent = recentNm();
        return recent > LOADED * snugNm && t < FALLEN * recent;
    }

    /** Mean of the last few turning torques. */
    private double recentNm() {
        return recentNm(size);
    }

    private double recentNm(int until) {
        double sum = 0;
        for (int i = until - MEMORY; i < until; i++) {
            sum += torque[Math.max(0, i)];
        }
        return sum / MEMORY;
    }
}
