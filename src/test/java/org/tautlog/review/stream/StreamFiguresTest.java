package org.tautlog.review.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.capability.Stability;

/** The word on control of a simulated shift's streams. */
class StreamFiguresTest {
    private static final long SEED = 20260317;

    @Test
    void a_stream_whose_level_moved_is_not_in_control() {
        var review = SimulatedShifts.whole(SEED).review();
        var moved = studied(review).stream().filter(one -> moved(review, one)).toList();
        assertFalse(moved.isEmpty());
        moved.forEach(one -> assertEquals(
                Stability.Word.OUT_OF_CONTROL, word(one), one.stream().words() + ' ' + one.feature()));
    }

    @Test
    void most_streams_of_a_faultless_shift_are_in_control() {
        var studied = studied(SimulatedShifts.faultless(11).review());
        long calm = studied.stream()
                .filter(one -> word(one) == Stability.Word.IN_CONTROL)
                .count();
        assertTrue(calm >= 0.8 * studied.size(), calm + " of " + studied.size());
    }

    private static List<StreamFigures> studied(StreamReview review) {
        return review.figures().stream()
                .filter(one -> one.capability().found().isPresent())
                .toList();
    }

    private static boolean moved(StreamReview review, StreamFigures one) {
        return review.moved(one.stream(), one.feature())
                || review.changes().stream()
                        .anyMatch(change -> change.stream().equals(one.stream()) && change.feature() == one.feature());
    }

    private static Stability.Word word(StreamFigures one) {
        return one.capability().orThrow().stability().word();
    }
}
