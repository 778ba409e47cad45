package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;

/** Source: the models of ISO 22514-2, each made as its description says. */
class TimeModelTest {
    private static final int SUBGROUPS = 40;
    private static final int SIZE = 10;

    @ParameterizedTest
    @EnumSource(TimeModel.Type.class)
    void a_process_made_by_a_model_is_told_as_that_model(TimeModel.Type type) {
        int right = 0;
        for (int run = 0; run < 20; run++)
            if (TimeModel.of(made(type, 2_000_000L + 100L * run), 0.01)
                            .orThrow()
                            .type()
                    == type) right++;
        assertTrue(right >= 17, right + " of 20 told as " + type);
    }

    @Test
    void subgroups_that_cannot_be_classified_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY), TimeModel.of(new double[0][], 0.01).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                TimeModel.of(new double[][] {{1, 2, 3}}, 0.01).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                TimeModel.of(new double[][] {{1, 2, 3}, {1}}, 0.01).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                TimeModel.of(new double[][] {{1, 1, 1}, {1, 1, 1}}, 0.01).missingFor());
    }

    private static double[][] made(TimeModel.Type type, long seed) {
        var sampler = Simulated.normal(seed);
        var groups = new double[SUBGROUPS][SIZE];
        for (int g = 0; g < SUBGROUPS; g++) {
            double random = sampler.sample();
            double level = switch (type) {
                case A1, A2, B -> 0;
                case C1 -> 0.8 * random;
                case C2 -> Math.exp(1.2 * random);
                case C3 -> 0.1 * g;
                case C4 -> g < 22 ? 0 : 3;
                case D -> 2 * random;
            };
            double spread = switch (type) {
                case B, D -> Math.exp(0.8 * sampler.sample());
                case A1, A2, C1, C2, C3, C4 -> 1;
            };
            for (int i = 0; i < SIZE; i++) {
                double z = sampler.sample();
                groups[g][i] = level + spread * (type == TimeModel.Type.A2 ? Math.exp(0.6 * z) : z);
            }
        }
        return groups;
    }
}
