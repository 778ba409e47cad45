package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.trace.Trace;

class JudgesInOrderTest {
    private static final List<Trace> TRACES = SimulatedLine.of(8, 3)
            .tightenings()
            .map(tightening -> tightening.trace())
            .toList();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void on_any_number_of_threads_the_judgements_are_those_of_one_in_the_order_of_the_traces(int threads) {
        var specification = FenwaterEngine.specification();
        var alone =
                TRACES.stream().map(trace -> Judge.judge(trace, specification)).toList();
        var together = new ArrayList<Judgement>();
        var takers = new HashSet<Thread>();
        try (var judges = new JudgesInOrder(specification, threads, (judgement, curve) -> {
            assertEquals(TRACES.get(together.size()).curve(), curve);
            together.add(judgement);
            takers.add(Thread.currentThread());
        })) {
            TRACES.forEach(judges::judge);
            judges.finish();
        }
        assertTrue(alone.size() > 60, "enough traces to be under way together");
        assertEquals(alone, together);
        assertEquals(Set.of(Thread.currentThread()), takers);
    }

    @Test
    void two_traces_are_judged_at_once() {
        var both = new CountDownLatch(2);
        var met = new ArrayList<Judgement>();
        try (var judges = new JudgesInOrder(
                trace -> {
                    both.countDown();
                    assertTrue(waited(both), "nobody else judges");
                    return Judge.judge(trace, FenwaterEngine.specification());
                },
                3,
                (judgement, curve) -> met.add(judgement))) {
            TRACES.forEach(judges::judge);
            judges.finish();
        }
        assertEquals(TRACES.size(), met.size());
    }

    @Test
    void while_one_trace_takes_long_both_threads_are_at_work() {
        var others = new CountDownLatch(20);
        var met = new ArrayList<Judgement>();
        try (var judges = new JudgesInOrder(
                trace -> {
                    if (trace.identity().equals(TRACES.get(0).identity())) {
                        assertTrue(waited(others), "nobody judges what stands behind it");
                    } else {
                        others.countDown();
                    }
                    return Judge.judge(trace, FenwaterEngine.specification());
                },
                2,
                (judgement, curve) -> met.add(judgement))) {
            TRACES.forEach(judges::judge);
            judges.finish();
        }
        assertEquals(TRACES.size(), met.size());
    }

    private static boolean waited(CountDownLatch latch) {
        try {
            return latch.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void a_trace_whose_judging_fails_throws_behind_those_before_it(int threads) {
        var taken = new ArrayList<Judgement>();
        try (var judges = new JudgesInOrder(
                trace -> {
                    if (trace.identity().equals(TRACES.get(5).identity())) {
                        throw new IllegalStateException("the sixth");
                    }
                    return Judge.judge(trace, FenwaterEngine.specification());
                },
                threads,
                (judgement, curve) -> taken.add(judgement))) {
            var failed = assertThrows(IllegalStateException.class, () -> {
                TRACES.forEach(judges::judge);
                judges.finish();
            });
            assertEquals("the sixth", failed.getMessage());
        }
        assertEquals(5, taken.size());
    }

    @Test
    void no_more_traces_are_under_way_than_are_allowed() {
        var taken = new ArrayList<Judgement>();
        int brought = 0;
        int most = 0;
        try (var judges =
                new JudgesInOrder(FenwaterEngine.specification(), 2, (judgement, curve) -> taken.add(judgement))) {
            for (var trace : TRACES) {
                judges.judge(trace);
                brought++;
                most = Math.max(most, brought - taken.size());
            }
            judges.finish();
        }
        assertEquals(TRACES.size(), taken.size());
        assertTrue(TRACES.size() > 2 * JudgesInOrder.TRACES_A_THREAD && most <= 2 * JudgesInOrder.TRACES_A_THREAD);
    }

    @Test
    void no_thread_at_all_is_refused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new JudgesInOrder(FenwaterEngine.specification(), 0, (judgement, curve) -> {}));
    }
}
