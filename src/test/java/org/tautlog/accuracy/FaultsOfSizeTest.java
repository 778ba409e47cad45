package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fault is found by its own code, at the size that matters and just past its limit, and good tightenings pass. */
class FaultsOfSizeTest {
    private static final int N = 50;
    private static final int N_GOOD = 500;

    static Stream<Arguments> faults() {
        return Faults.all().stream().map(fault -> Arguments.of(fault.name(), fault));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void is_found_and_called_so_at_the_size_that_matters(String name, FaultCase fault) {
        var graded = FaultStudy.grade(fault, fault.matters(), N);
        assertTrue(
                graded.found().value() >= FaultCase.WANTED, () -> graded.found().words() + " called " + graded.first());
        assertTrue(
                graded.called().value() >= fault.leastCalled(),
                () -> graded.called().words() + " called " + graded.first());
    }

    /** A limit twice as wide would no longer find it. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void is_found_just_past_its_limit(String name, FaultCase fault) {
        var graded = FaultStudy.grade(fault, fault.past(), N);
        assertTrue(
                graded.found().value() >= FaultCase.WANTED, () -> graded.found().words() + " called " + graded.first());
    }

    @Test
    void good_tightenings_pass() {
        var good = FaultStudy.made(N_GOOD);
        assertEquals(0, good.alarms().hits(), good.codes().toString());
    }

    /** Source: Clopper and Pearson; with no hit in n the upper end is 1 - 0.025^(1/n), for 3,000 it is 0.12 %. */
    @Test
    void the_interval_of_no_hit_is_the_exact_one() {
        assertEquals(1 - Math.pow(0.025, 1.0 / 3000), new Share(0, 3000).high(), 1e-12);
        assertEquals(0, new Share(0, 3000).low());
    }
}
