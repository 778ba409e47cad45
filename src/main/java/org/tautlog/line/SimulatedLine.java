package org.tautlog.line;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The Fenwater line at work: two stations, four spindles each, engine after engine, with the faults of {@link Fault} placed
 * among them.
 *
 * <p>All chance comes from one seed, drawn apart for each engine, bolt and attempt: the same seed gives the same
 * tightenings, whatever the number of threads, and a shorter run gives the beginning of a longer one, but for the last
 * engine's second station.
 */
public final class SimulatedLine {
    /** How many engines one shift builds. */
    public static final int ENGINES_PER_SHIFT = ShiftPlan.ENGINES;

    static final OffsetDateTime START = OffsetDateTime.parse("2026-03-17T06:00:00+01:00");
    private static final Duration CYCLE = Duration.ofMinutes(7);
    private static final Duration BEFORE_FIRST_BOLT = Duration.ofSeconds(20);
    private static final Duration BETWEEN_BOLTS = Duration.ofSeconds(9);
    private static final Duration BEFORE_NEXT_ATTEMPT = Duration.ofSeconds(70);
    private static final double ABORTED_TURN_DEG = 75;
    private static final int CYCLES_AT_ONCE = 32;
    private static final Comparator<SimulatedTightening> BY_TIME = Comparator.comparing(
            tightening -> Objects.requireNonNull(tightening.trace().identity().time()));

    /** How much further than released a trial turns: well past the yield onset of every ordinary bolt. */
    private static final double TRIAL_FURTHER_DEG = 120;

    private final int engines;
    private final long seed;
    private final double furtherDeg;
    private final Map<Station, List<Spindle>> spindles = new EnumMap<>(Station.class);

    private SimulatedLine(int engines, long seed, double furtherDeg) {
        if (engines < 1) {
            throw new IllegalArgumentException("engines is " + engines + "; a line builds at least 1");
        }
        this.engines = engines;
        this.seed = seed;
        this.furtherDeg = furtherDeg;
        for (var station : Station.values()) {
            spindles.put(station, station.spindles(seed));
        }
    }

    /**
     * A line that builds some engines.
     *
     * @param engines how many, at least 1
     * @param seed where all chance comes from
     * @return the line
     * @throws IllegalArgumentException where engines is below 1
     */
    public static SimulatedLine of(int engines, long seed) {
        return new SimulatedLine(engines, seed, 0);
    }

    /**
     * A line in a qualification trial: each bolt without a fault is turned well past its yield onset.
     *
     * @param engines how many, at least 1
     * @param seed where all chance comes from
     * @return the line
     * @throws IllegalArgumentException where engines is below 1
     */
    public static SimulatedLine trial(int engines, long seed) {
        return new SimulatedLine(engines, seed, TRIAL_FURTHER_DEG);
    }

    /**
     * All tightenings in time order, worked out one cycle at a time while the stream is read.
     *
     * @return the tightenings
     */
    public Stream<SimulatedTightening> tightenings() {
        return IntStream.range(0, cycles()).boxed().flatMap(cycle -> inCycle(cycle).stream());
    }

    /**
     * Hands over all tightenings in time order, worked out on all processors, never more than some hundred ahead.
     *
     * @param taker gets each of them, on the calling thread
     */
    public void forEach(Consumer<SimulatedTightening> taker) {
        for (int from = 0; from < cycles(); from += CYCLES_AT_ONCE) {
            IntStream.range(from, Math.min(cycles(), from + CYCLES_AT_ONCE))
                    .parallel()
                    .mapToObj(this::inCycle)
                    .toList()
                    .forEach(cycle -> cycle.forEach(taker));
        }
    }

    private int cycles() {
        return engines + 1;
    }

    private List<SimulatedTightening> inCycle(int cycle) {
        var done = new ArrayList<SimulatedTightening>();
        for (var station : Station.values()) {
            int engine = cycle + 1 - station.cyclesBehind();
            if (engine < 1 || engine > engines) {
                continue;
            }
            var first = START.plus(CYCLE.multipliedBy(cycle)).plus(BEFORE_FIRST_BOLT);
            for (int step = 0; step < Station.SPINDLES; step++) {
                var start = first.plus(BETWEEN_BOLTS.multipliedBy(step));
                attempts(station, station.spindleAt(step), engine, start)
                        .forEach(attempt -> done.add(attempt.run(seed)));
            }
        }
        done.sort(BY_TIME);
        return done;
    }

    private List<Attempt> attempts(Station station, int spindle, int engine, OffsetDateTime start) {
        int bolt = station.bolt(spindle);
        var fault = ShiftPlan.ofEngine(engine, seed).at(engine, bolt);
        var tool = Objects.requireNonNull(spindles.get(station)).get(spindle);
        if (fault == Fault.TRANSDUCER_OUT_OF_SCALE) {
            tool = tool.withGain(tool.gain() * Bench.OUT_OF_SCALE);
        }
        var setup = Bench.setup(fault, engine, bolt, seed);
        var programme = Bench.programme(fault, engine, bolt, seed);
        if (fault == Fault.NONE) {
            programme = programme.withTurnDeg(programme.turnDeg() + furtherDeg);
        }
        if (fault != Fault.REPEATED_ATTEMPT) {
            return List.of(new Attempt(tool, engine, bolt, 1, start, fault, setup, programme));
        }
        var aborted = Programme.released().withTurnDeg(ABORTED_TURN_DEG);
        return List.of(
                new Attempt(tool, engine, bolt, 1, start, Fault.TURN_SHORT, setup, aborted),
                new Attempt(tool, engine, bolt, 2, start.plus(BEFORE_NEXT_ATTEMPT), fault, setup, programme));
    }
}
