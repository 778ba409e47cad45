package org.tautlog.review.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.judge.Judge;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.spc.Proportion;
import org.tautlog.trace.TraceIdentity;

/** How often good curves leave the envelope of their peers, against the rate that it states. */
class FalseDepartureTest {
    private static final double STATED = 1.0 / Envelope.ONE_IN;
    private static final double CONFIDENCE = 0.99;

    /** Several envelopes each, as one that came out narrow is left more often than stated and a wide one less. */
    @ParameterizedTest(name = "{0} peers")
    @ValueSource(ints = {24, 40, 64})
    void good_made_curves_leave_it_no_more_often_than_stated(int peers) {
        int leaving = 0;
        int curves = 0;
        for (int group = 0; group < 60; group++) {
            var good = new GoodCurves(1000L * peers + group);
            var envelope = good.envelope(peers);
            for (var shape : good.shapes(50)) {
                leaving += envelope.departure(shape).orThrow().leaves() ? 1 : 0;
                curves++;
            }
        }
        assertWithinChance(leaving, curves);
    }

    @Test
    void good_curves_of_the_simulated_line_leave_it_no_more_often_than_stated_and_faults_do() {
        var specification = FenwaterEngine.specification();
        var watch = new ShapeWatch(specification.method());
        var truth = new HashMap<TraceIdentity, Fault>();
        SimulatedLine.of(256, 51).forEach(tightening -> {
            truth.put(tightening.trace().identity(), tightening.truth().fault());
            watch.accept(
                    Judge.judge(tightening.trace(), specification),
                    tightening.trace().curve());
        });
        var compared = new EnumMap<Fault, Integer>(Fault.class);
        Map<Fault, Integer> leaving = new EnumMap<>(Fault.class);
        for (var one : watch.review().compared()) {
            var fault = truth.get(one.tightening());
            compared.merge(fault, 1, Integer::sum);
            leaving.merge(fault, one.departure().leaves() ? 1 : 0, Integer::sum);
        }
        assertWithinChance(
                leaving.get(Fault.NONE) + leaving.get(Fault.TRANSDUCER_OUT_OF_SCALE),
                compared.get(Fault.NONE) + compared.get(Fault.TRANSDUCER_OUT_OF_SCALE));
        for (var fault : List.of(Fault.WEAK_BOLT, Fault.STRIPPED_THREAD, Fault.SOFT_LAYER, Fault.ANGLE_SLIP)) {
            assertEquals(compared.get(fault), leaving.get(fault), fault.word());
        }
    }

    private static void assertWithinChance(int leaving, int curves) {
        var share = Proportion.of(leaving, curves, CONFIDENCE, Proportion.Method.CLOPPER_PEARSON)
                .orThrow();
        assertTrue(curves >= 1500, "only " + curves + " curves");
        assertTrue(share.bounds().lower() <= STATED, leaving + " of " + curves + " left the envelope");
    }
}
