package org.tautlog.line;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/**
 * One attempt to tighten one bolt, all chance but the tool's drawn.
 *
 * @param spindle the tool
 * @param engine 1 for the first engine
 * @param bolt bolt position, from 1
 * @param number 1, 2, ... for the same bolt
 * @param start when the tool starts
 * @param fault what is wrong with it
 * @param setup the bolt
 * @param programme what the tool does
 */
record Attempt(
        Spindle spindle,
        int engine,
        int bolt,
        int number,
        OffsetDateTime start,
        Fault fault,
        Setup setup,
        Programme programme) {
    private static final Source NO_FILE = new Source("simulated", 1, "");

    SimulatedTightening run(long seed) {
        var turned = new TurnedBolt(setup);
        var random = Seeds.stream(seed, Seeds.Use.TIGHTENING, engine, bolt, number);
        var done = Tool.tighten(turned, programme, spindle, random);
        var identity = new TraceIdentity(
                FenwaterEngine.serial(engine),
                spindle.station(),
                spindle.name(),
                Integer.toString(bolt),
                number,
                start.plus(Duration.ofSeconds(Math.round(done.seconds()))),
                BoltLot.ofEngine(engine, seed).mark());
        return new SimulatedTightening(
                new Trace(identity, NO_FILE, done.curve()),
                measured(identity, turned, done, seed),
                truth(turned, done));
    }

    private MeasuredClampLoad measured(TraceIdentity identity, TurnedBolt turned, Tool.Done done, long seed) {
        var noise = Seeds.stream(seed, Seeds.Use.LOAD_CELL, engine, bolt, number);
        var points = fault == Fault.NONE
                ? LoadCell.read(turned, done, spindle.driveNmPerDeg(), noise)
                : List.<MeasuredClampLoad.Point>of();
        return new MeasuredClampLoad(identity.serial(), identity.bolt(), identity.attempt(), points);
    }

    private Truth truth(TurnedBolt turned, Tool.Done done) {
        var friction = setup.joint().friction();
        double onsetHeadDeg = turned.onsetHeadDeg();
        double onsetToolDeg = onsetHeadDeg + turned.torqueNm(onsetHeadDeg) / spindle.driveNmPerDeg();
        boolean reached = onsetHeadDeg <= done.stopHeadDeg() && setup.stripN() == Double.POSITIVE_INFINITY;
        return new Truth(
                fault,
                fault.leavesASoundBolt(),
                turned.loadN(done.stopHeadDeg()) / 1000,
                done.stopHeadDeg() - done.snugHeadDeg(),
                setup.joint().bolt().material().yieldStrengthMPa(),
                friction.threadMu(),
                friction.underHeadMu(),
                reached ? onsetToolDeg - done.snugToolDeg() : null);
    }
}
