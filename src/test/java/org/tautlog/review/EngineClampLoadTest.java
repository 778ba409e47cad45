package org.tautlog.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.signature.ClampLoad;
import org.tautlog.trace.TraceIdentity;

class EngineClampLoadTest {
    private static final List<Judgement> JUDGEMENTS = SimulatedLine.of(2, 3)
            .tightenings()
            .map(done -> Judge.judge(done.trace(), FenwaterEngine.specification()))
            .collect(Collectors.toList());

    @Test
    void an_engine_has_the_lowest_mean_and_spread_of_its_bolts() {
        var engine = EngineClampLoad.of(JUDGEMENTS).get(0);
        var loads = JUDGEMENTS.stream()
                .filter(judgement -> judgement.identity().serial().equals(engine.serial()))
                .filter(judgement -> judgement.signature().clampLoad().loadKN().isFound())
                .collect(Collectors.summarizingDouble(
                        judgement -> judgement.signature().clampLoad().loadKN().number()));
        assertEquals(engine.bolts(), loads.getCount());
        assertEquals(FenwaterEngine.BOLTS, engine.bolts() + engine.withoutEstimate());
        assertEquals(loads.getMin(), engine.lowestKN(), 1e-12);
        assertEquals(loads.getAverage(), engine.meanKN(), 1e-9);
        assertEquals(loads.getMax() - loads.getMin(), engine.spreadKN(), 1e-12);
    }

    @Test
    void the_last_attempt_on_a_bolt_counts_whatever_the_order() {
        var first = JUDGEMENTS.get(0);
        var identity = first.identity();
        var again = new Judgement(
                new TraceIdentity(
                        identity.serial(),
                        identity.station(),
                        identity.spindle(),
                        identity.bolt(),
                        2,
                        identity.time(),
                        identity.boltLot()),
                first.source(),
                first.specificationName(),
                first.specificationVersion(),
                JUDGEMENTS.get(1).signature(),
                first.verdict(),
                first.findings());
        double loadKN = again.signature().clampLoad().loadKN().number();
        assertEquals(loadKN, EngineClampLoad.of(List.of(again, first)).get(0).lowestKN());
        assertEquals(loadKN, EngineClampLoad.of(List.of(first, again)).get(0).lowestKN());
    }

    @Test
    void without_a_stated_joint_there_are_no_engines_to_list() {
        var first = JUDGEMENTS.get(0);
        var none = new Judgement(
                first.identity(),
                first.source(),
                first.specificationName(),
                first.specificationVersion(),
                first.signature().withClampLoad(ClampLoad.none("no joint is stated")),
                first.verdict(),
                first.findings());
        assertTrue(EngineClampLoad.of(List.of(none)).isEmpty());
    }
}
