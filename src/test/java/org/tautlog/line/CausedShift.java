package org.tautlog.line;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.tautlog.joint.Friction;

/**
 * A shift of the simulated line without any fault, in which one cause of a size of the caller's choice sets in. It is made by
 * the line's own bolts and tools.
 */
public final class CausedShift {
    /** What sets in. */
    public enum Kind {
        NOTHING,
        FRICTION,
        STRENGTH,
        STIFFNESS,
        TORQUE_SCALE,
        ANGLE_SCALE,
        WIND_UP,
        SNUG_TORQUE,
        TURN,
        /** Friction by the size, strength down by two thirds of it. */
        FRICTION_AND_STRENGTH
    }

    /** Where it shows. */
    public enum Shows {
        ONE_SPINDLE,
        ONE_LOT,
        /** All spindles of the station, from the middle on. */
        ONE_STATION,
        /** All spindles, all shift long. */
        WHOLE_SHIFT,
        /** One spindle, all shift long. */
        SPINDLE_ALL_SHIFT,
        /** One tightening of the spindle. */
        ONE_TIGHTENING
    }

    private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-17T06:00:00+01:00");
    private static final int MINUTES = 7;
    /** A good transducer from one day to the next, one standard deviation; common practice, no source. */
    private static final double SCALE_MOVES = 0.0025;

    private static final int ENGINES = SimulatedLine.ENGINES_PER_SHIFT;

    private CausedShift() {}

    /** Station, spindle and bolt position that are touched where the cause follows a spindle. */
    private static Spindle spindle(long seed) {
        var station = seed % 2 == 0 ? Station.S40 : Station.S50;
        return station.spindles(seed).get((int) Math.floorMod(seed / 2, (long) Station.SPINDLES));
    }

    /** Name of that spindle, such as {@code S40/2}. */
    public static String touched(long seed) {
        return spindle(seed).station() + '/' + spindle(seed).name();
    }

    /** Name of the tightening that is touched where the cause shows in one alone. */
    public static String touchedTightening(long seed) {
        var touched = spindle(seed);
        int bolt = touched.station().equals(Station.S40.name()) ? 0 : Station.SPINDLES;
        return FenwaterEngine.serial(ENGINES / 2 + 3) + " bolt " + (bolt + Integer.parseInt(touched.name()));
    }

    /** First and last engine of the bolt lot that is touched where the cause follows a lot: the second of three. */
    private static boolean inLot(int engine) {
        return BoltLot.ofEngine(engine, 1).mark().equals("A18");
    }

    /** How far the strength of one lot's bolts lies from that of the shift's other lots, a share of the usual one. */
    public static double strengthApart(String mark, long seed) {
        return apart(mark, seed, engine -> BoltLot.ofEngine(engine, seed).yieldMPa()) / BoltLot.USUAL_YIELD_MPA;
    }

    /** How far friction of one lot's bolts lies from that of the shift's other lots, a share of the usual one. */
    public static double frictionApart(String mark, long seed) {
        var usual = FenwaterEngine.USUAL_FRICTION;
        return 2
                * apart(
                        mark,
                        seed,
                        engine -> BoltLot.ofEngine(engine, seed).frictionShift() + Drift.friction(engine, seed))
                / (usual.threadMu() + usual.underHeadMu());
    }

    private static double apart(String mark, long seed, IntToDoubleFunction ofEngine) {
        var sides = IntStream.rangeClosed(1, ENGINES)
                .boxed()
                .collect(Collectors.partitioningBy(
                        engine -> BoltLot.ofEngine(engine, seed).mark().equals(mark),
                        Collectors.averagingDouble(ofEngine::applyAsDouble)));
        return sides.get(true) - sides.get(false);
    }

    /**
     * The tightenings that the cause touches, or all where nothing sets in.
     *
     * @param kind what sets in
     * @param size its size, a share of one, N·m or deg
     * @param shows where it shows
     */
    public static List<SimulatedTightening> tightenings(Kind kind, double size, Shows shows, long seed) {
        return tightenings(kind, size, shows, seed, 1, ENGINES);
    }

    /** The beginning of a shift in which nothing sets in, so many engines. */
    public static List<SimulatedTightening> first(long seed, int engines) {
        return tightenings(Kind.NOTHING, 0, Shows.WHOLE_SHIFT, seed, 1, engines);
    }

    /**
     * The beginning of the next shift, by the same tools on bolts of other lots: the tightenings of the spindle that the cause
     * touches, or all where nothing sets in. Each transducer's scale moved a little since, as those of good ones do.
     *
     * @param kind what set in between the two shifts
     * @param size its size, a share of one, N·m or deg
     * @param engines how many engines
     */
    public static List<SimulatedTightening> next(Kind kind, double size, long seed, int engines) {
        return tightenings(kind, size, Shows.SPINDLE_ALL_SHIFT, seed, ENGINES + 1, ENGINES + engines);
    }

    private static List<SimulatedTightening> tightenings(
            Kind kind, double size, Shows shows, long seed, int first, int last) {
        var done = new ArrayList<SimulatedTightening>();
        var touched = spindle(seed);
        for (int engine = first; engine <= last; engine++) {
            for (var station : Station.values()) {
                var spindles = station.spindles(seed);
                for (int i = 0; i < Station.SPINDLES; i++) {
                    var own = spindles.get(i);
                    boolean late = engine > ENGINES / 2;
                    boolean there = switch (shows) {
                        case ONE_SPINDLE -> own.equals(touched) && late;
                        case ONE_LOT -> inLot(engine);
                        case ONE_STATION -> own.station().equals(touched.station()) && late;
                        case WHOLE_SHIFT -> true;
                        case SPINDLE_ALL_SHIFT -> own.equals(touched);
                        case ONE_TIGHTENING -> own.equals(touched) && engine == ENGINES / 2 + 3;
                    };
                    if (there || kind == Kind.NOTHING) {
                        var start = START.plusMinutes((long) engine * MINUTES).plusSeconds(9L * i);
                        var tool = first == 1 ? own : aDayLater(own, station.bolt(i), seed);
                        done.add(one(kind, size, tool, engine, station.bolt(i), start, seed));
                    }
                }
            }
        }
        return done;
    }

    private static Spindle aDayLater(Spindle own, int bolt, long seed) {
        var gauss = ZigguratSampler.NormalizedGaussian.of(Seeds.stream(seed, Seeds.Use.SPINDLE, bolt, ENGINES));
        return own.withGain(own.gain() * (1 + SCALE_MOVES * gauss.sample()));
    }

    private static SimulatedTightening one(
            Kind kind, double size, Spindle own, int engine, int bolt, OffsetDateTime start, long seed) {
        var setup = Bench.setup(Fault.NONE, engine, bolt, seed);
        var programme = Programme.released();
        var tool = own;
        switch (kind) {
            case FRICTION -> {
                var usual = setup.joint().friction();
                setup = setup.withJoint(setup.joint()
                        .withFriction(new Friction(usual.threadMu() * (1 + size), usual.underHeadMu() * (1 + size))));
            }
            case FRICTION_AND_STRENGTH -> {
                var usual = setup.joint().friction();
                var slick = setup.joint()
                        .withFriction(new Friction(usual.threadMu() * (1 + size), usual.underHeadMu() * (1 + size)));
                setup = setup.withJoint(MadeJoint.stronger(slick, 1 - 2 * size / 3));
            }
            case STRENGTH -> setup = setup.withJoint(MadeJoint.stronger(setup.joint(), 1 + size));
            case STIFFNESS -> setup = setup.withJoint(MadeJoint.stiffer(setup.joint(), size));
            case TORQUE_SCALE -> tool = own.withGain(own.gain() * (1 + size));
            case WIND_UP ->
                tool = new Spindle(
                        own.station(),
                        own.name(),
                        own.gain(),
                        own.offsetNm(),
                        own.noiseNm(),
                        own.driveNmPerDeg() / (1 + size),
                        own.sampling());
            case SNUG_TORQUE ->
                programme = new Programme(
                        programme.snugNm() + size,
                        programme.turnDeg(),
                        programme.slipAtTurnDeg(),
                        programme.slipDeg(),
                        programme.lastTurnDeg(),
                        programme.stickShare(),
                        programme.pauses(),
                        programme.speedSwing());
            case TURN -> programme = programme.withTurnDeg(programme.turnDeg() + size);
            case ANGLE_SCALE -> programme = programme.withTurnDeg(programme.turnDeg() / (1 + size));
            default -> {}
        }
        var done = new Attempt(tool, engine, bolt, 1, start, Fault.NONE, setup, programme).run(seed);
        return kind == Kind.ANGLE_SCALE
                ? new SimulatedTightening(MadeJoint.counted(done.trace(), 1 + size), done.truth())
                : done;
    }
}
