package org.tautlog.spc.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;

class ChangesPublishedTest {
    /**
     * Source: Cobb, Biometrika 65 (1978); Zeileis et al., Computational Statistics and Data Analysis 44 (2003): break after
     * 1898, the 28th year, means 1097.75 and 849.97; 95 % interval 25 to 32 by another
     * method, from memory: ours must not be wider.
     */
    @Test
    void the_nile_changed_after_1898() {
        var change = Changes.ofMean(Published.column("nile", "flow"), ChangeOptions.withDefaults())
                .orThrow();
        assertEquals(28, change.index());
        assertEquals(1097.75, change.before(), 0.005);
        assertEquals(849.972222, change.after(), 5e-7);
        assertEquals(-247.78, change.size().value(), 0.005);
        assertTrue(change.significant());
        assertTrue(change.pValue() < 1e-8, "p is " + change.pValue());
        assertTrue(change.earliest() >= 25 && change.latest() <= 32, change.earliest() + " to " + change.latest());
        assertTrue(change.size().bounds().contains(-247.78));
    }

    @Test
    void the_nile_changed_once_only() {
        assertEquals(
                1,
                Changes.allOfMean(Published.column("nile", "flow"), ChangeOptions.withDefaults())
                        .orThrow()
                        .size());
    }
}
