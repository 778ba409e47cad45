package org.tautlog.joint.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Decimals beside a limit. */
class BandTest {
    private final Band atLeast = new Band(0.15, Double.POSITIVE_INFINITY);

    @Test
    void a_value_that_misses_its_limit_never_reads_as_the_limit() {
        assertEquals(3, atLeast.decimals(0.146, 2));
        assertEquals(4, atLeast.decimals(0.1499, 2));
    }

    @Test
    void a_value_that_keeps_its_limit_or_is_far_from_it_needs_no_more_decimals() {
        assertEquals(2, atLeast.decimals(0.151, 2));
        assertEquals(2, atLeast.decimals(0.07, 2));
        assertEquals(1, Band.open().decimals(60, 1));
    }
}
