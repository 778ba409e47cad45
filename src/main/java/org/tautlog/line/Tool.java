package org.tautlog.line;

import org.apache.commons.rng.UniformRandomProvider;
import org.tautlog.trace.Curve;

/**
 * A tool that tightens one bolt: runs down, stops at the snug torque, pauses, turns on and lets go.
 *
 * <p>Between the angle sensor and the bolt's head lies a drive that twists like a spring. The head moves when the drive's
 * torque exceeds what the bolt asks, and stands still otherwise: so the recorded angle holds the drive's wind-up, a stop
 * shows as spring-back, and a re-start first winds the drive up to the peak at which the bolt breaks loose.
 */
final class Tool {
    /**
     * What came of it.
     *
     * @param curve what was recorded
     * @param seconds how long it took, s
     * @param snugToolDeg angle counted by the tool where the snug torque was reached, deg
     * @param snugHeadDeg angle of the head there, deg
     * @param stopHeadDeg angle of the head where the tool stopped, deg
     */
    record Done(Curve curve, double seconds, double snugToolDeg, double snugHeadDeg, double stopHeadDeg) {}

    private static final double LONGEST_STEP_S = 0.001;
    private static final double RUNDOWN_DEG_PER_S = 1200;
    private static final double SPEED_UP_S = 0.06;
    private static final double TIGHTENING_DEG_PER_S = 180;
    private static final double SLOW_DOWN_NM = 8;
    private static final double REPLY_S = 0.003;
    private static final double PAUSE_S = 0.15;
    private static final double PAUSE_KEEPS_SHARE = 0.6;
    private static final double RELAXED_SHARE = 0.015;
    private static final double BREAKAWAY_FADES_DEG = 1.5;
    private static final double STICK_PERIOD_DEG = 1.8;
    private static final double HOLD_S = 0.03;
    private static final double LET_GO_S = 0.012;
    private static final double REST_S = 0.1;
    private static final double LONGEST_RUNDOWN_DEG = 3600;
    private static final double SLIPPING_SHARE = 0.12;
    private static final int MOST_ROUNDS = 5;
    private static final double SETTLED_DEG = 2e-4;
    private static final int SNUG = 1;
    private static final int TURN = 2;

    private final TurnedBolt bolt;
    private final Programme programme;
    private final Spindle spindle;
    private final Recorder recorder;
    private final double breakawayShare;
    private final double pauseS;
    private final double stepS;

    private double seconds;
    private double toolDeg;
    private double headDeg;
    private double slippedDeg;
    private double shaftNm;
    private double restartHeadDeg = Double.NEGATIVE_INFINITY;
    private boolean recording = true;

    private Tool(TurnedBolt bolt, Programme programme, Spindle spindle, UniformRandomProvider random) {
        this.bolt = bolt;
        this.programme = programme;
        this.spindle = spindle;
        breakawayShare = 0.04 + 0.10 * random.nextDouble();
        pauseS = PAUSE_S * (1 + random.nextDouble());
        stepS = spindle.sampling().noLongerThan(LONGEST_STEP_S);
        recorder = new Recorder(spindle, random);
    }

    static Done tighten(TurnedBolt bolt, Programme programme, Spindle spindle, UniformRandomProvider random) {
        return new Tool(bolt, programme, spindle, random).run();
    }

    private Done run() {
        see(SNUG);
        runDown();
        double snugToolDeg = toolDeg;
        double snugHeadDeg = headDeg;
        if (programme.pauses()) {
            coast(SNUG);
            pause();
            restartHeadDeg = headDeg;
        }
        turn(snugToolDeg);
        coast(TURN);
        double stopHeadDeg = headDeg;
        letGo();
        if (recording) {
            recorder.close(seconds, toolDeg, shaftNm, TURN);
        }
        return new Done(recorder.curve(), seconds, snugToolDeg, snugHeadDeg, stopHeadDeg);
    }

    private void runDown() {
        boolean slow = false;
        double shownNm = spindle.shownNm(shaftNm);
        while (shownNm < programme.snugNm() && toolDeg < LONGEST_RUNDOWN_DEG) {
            slow = slow || shownNm > SLOW_DOWN_NM;
            double speedingUp = RUNDOWN_DEG_PER_S * (seconds + stepS) / SPEED_UP_S;
            advance(Math.min(speedingUp, slow ? tighteningDegPerS() : RUNDOWN_DEG_PER_S), SNUG);
            shownNm = spindle.shownNm(shaftNm);
        }
    }

    private void turn(double snugToolDeg) {
        while (toolDeg - snugToolDeg < programme.turnDeg()) {
            double turnDeg = toolDeg - snugToolDeg;
            recording = turnDeg <= programme.lastTurnDeg();
            if (turnDeg > programme.slipAtTurnDeg() && slippedDeg < programme.slipDeg()) {
                slip();
            } else {
                advance(tighteningDegPerS(), TURN);
            }
        }
    }

    private double tighteningDegPerS() {
        return TIGHTENING_DEG_PER_S * programme.speedShare(toolDeg);
    }

    /** The motor needs some milliseconds to stop. */
    private void coast(int stage) {
        for (double waited = 0; waited < REPLY_S; waited += stepS) {
            advance(TIGHTENING_DEG_PER_S * (1 - waited / REPLY_S), stage);
        }
    }

    private void pause() {
        double fromDeg = toolDeg;
        double backDeg = (1 - PAUSE_KEEPS_SHARE) * shaftNm / spindle.driveNmPerDeg();
        int steps = (int) (pauseS / stepS);
        for (int i = 0; i < steps; i++) {
            bolt.relax(headDeg, RELAXED_SHARE / steps);
            double gone = 1 - LET_GO_S / (LET_GO_S + i * stepS);
            goTo(fromDeg - backDeg * gone, SNUG);
        }
    }

    private void letGo() {
        int holdSteps = (int) (HOLD_S / stepS);
        for (int i = 0; i < holdSteps; i++) {
            goTo(toolDeg, TURN);
        }
        double fromDeg = toolDeg;
        double backDeg = shaftNm / spindle.driveNmPerDeg();
        int steps = (int) (REST_S / stepS);
        for (int i = 0; i < steps; i++) {
            double left = 1 - (double) i / steps;
            goTo(fromDeg - backDeg * (1 - left * left * left), TURN);
        }
    }

    private void advance(double degPerS, int stage) {
        goTo(toolDeg + degPerS * stepS, stage);
    }

    /** The socket rides over the head's corners: the drive turns, the head stands. */
    private void slip() {
        double byDeg = TIGHTENING_DEG_PER_S * stepS;
        double keptNm = bolt.torqueNm(headDeg) * SLIPPING_SHARE;
        double springDeg = Math.max(0, shaftNm - keptNm) / spindle.driveNmPerDeg();
        slippedDeg += byDeg + 0.4 * springDeg;
        goTo(toolDeg + byDeg, TURN);
    }

    private void goTo(double nextToolDeg, int stage) {
        seconds += stepS;
        toolDeg = nextToolDeg;
        double stiffness = spindle.driveNmPerDeg();
        double driveDeg = toolDeg - slippedDeg;
        shaftNm = Math.max(0, stiffness * (driveDeg - headDeg));
        double resistNm = resistNm(headDeg);
        if (shaftNm > resistNm) {
            double changeDeg = Double.POSITIVE_INFINITY;
            for (int i = 0; i < MOST_ROUNDS && changeDeg > SETTLED_DEG; i++) {
                double next = Math.max(headDeg, driveDeg - resistNm / stiffness);
                changeDeg = Math.abs(next - headDeg);
                headDeg = next;
                resistNm = resistNm(headDeg);
            }
            shaftNm = Math.max(0, stiffness * (driveDeg - headDeg));
        }
        see(stage);
    }

    private double resistNm(double atHeadDeg) {
        return bolt.torqueNm(atHeadDeg) * (1 + breakawayShare(atHeadDeg) + stickShare(atHeadDeg));
    }

    /** The first fraction of a turn after a stop needs more torque than turning on. */
    private double breakawayShare(double atHeadDeg) {
        double past = (atHeadDeg - restartHeadDeg) / BREAKAWAY_FADES_DEG;
        return past < 0 ? 0 : breakawayShare / (1 + past * past);
    }

    /** A chattering bolt sticks tighter and tighter, then slips: a saw that rises slowly and falls at once. */
    private double stickShare(double atHeadDeg) {
        if (programme.stickShare() == 0 || restartHeadDeg == Double.NEGATIVE_INFINITY) {
            return 0;
        }
        double place = (atHeadDeg - restartHeadDeg) / STICK_PERIOD_DEG;
        return programme.stickShare() * (2 * (place - Math.floor(place)) - 1);
    }

    private void see(int stage) {
        if (recording) {
            recorder.see(seconds, toolDeg, shaftNm, stage);
        }
    }
}
