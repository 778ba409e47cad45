package org.tautlog.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;

/**
 * Which faults one shift sees and where: the same number of each kind every shift, on bolts that chance picks.
 *
 * @param faults the fault of each tightening that has one, by engine and bolt
 * @param driftedBolt the bolt position whose spindle shows too much torque in this shift
 * @param driftedFrom the first engine for which it does
 */
record ShiftPlan(Map<Place, Fault> faults, int driftedBolt, int driftedFrom) {
    /** Engines of one shift. */
    static final int ENGINES = 64;

    /**
     * One bolt of one engine.
     *
     * @param engine 1 for the first engine
     * @param bolt 1 to 8
     */
    record Place(int engine, int bolt) {}

    private static final List<Fault> EACH_SHIFT = List.of(
            Fault.UNREADABLE_ROWS,
            Fault.WEAK_BOLT,
            Fault.WEAK_BOLT,
            Fault.TURN_SHORT,
            Fault.TURN_SHORT,
            Fault.TURN_LONG,
            Fault.NOT_SEATED,
            Fault.NOT_SEATED,
            Fault.STRIPPED_THREAD,
            Fault.CROSS_THREADED,
            Fault.ALREADY_TIGHT,
            Fault.WASHER_MISSING,
            Fault.WASHER_MISSING,
            Fault.SOFT_LAYER,
            Fault.ANGLE_SLIP,
            Fault.DRY_BOLT,
            Fault.DRY_BOLT,
            Fault.STICK_SLIP,
            Fault.TRUNCATED,
            Fault.REPEATED_ATTEMPT,
            Fault.REPEATED_ATTEMPT);

    ShiftPlan {
        faults = Map.copyOf(faults);
    }

    static ShiftPlan ofEngine(int engine, long seed) {
        int shift = (engine - 1) / ENGINES;
        var random = Seeds.stream(seed, Seeds.Use.PLAN, shift);
        int first = shift * ENGINES + 1;
        int driftedBolt = 1 + random.nextInt(FenwaterEngine.BOLTS);
        int driftedFrom = first + ENGINES / 2 - 2 + random.nextInt(4);
        var faults = new HashMap<Place, Fault>();
        var free = places(first, driftedBolt, driftedFrom, random);
        for (var fault : EACH_SHIFT) {
            var place = free.removeFirst();
            while (!fits(fault, place)) {
                free.addLast(place);
                place = free.removeFirst();
            }
            faults.put(place, fault);
        }
        return new ShiftPlan(faults, driftedBolt, driftedFrom);
    }

    Fault at(int engine, int bolt) {
        var placed = faults.get(new Place(engine, bolt));
        if (placed != null) {
            return placed;
        }
        return bolt == driftedBolt && engine >= driftedFrom ? Fault.TRANSDUCER_OUT_OF_SCALE : Fault.NONE;
    }

    /** Rows are spoilt in the first station's files only. */
    private static boolean fits(Fault fault, Place place) {
        return fault != Fault.UNREADABLE_ROWS || place.bolt() <= FenwaterEngine.BOLTS / 2;
    }

    private static ArrayDeque<Place> places(int first, int driftedBolt, int driftedFrom, UniformRandomProvider random) {
        var places = new ArrayList<Place>();
        int all = ENGINES * FenwaterEngine.BOLTS;
        for (int index : new PermutationSampler(random, all, all).sample()) {
            var place = new Place(first + index / FenwaterEngine.BOLTS, 1 + index % FenwaterEngine.BOLTS);
            if (place.bolt() != driftedBolt || place.engine() < driftedFrom) {
                places.add(place);
            }
        }
        return new ArrayDeque<>(places);
    }
}
