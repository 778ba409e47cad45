package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The reader is no worse than when the accuracy study was last written: on the same curves no error may grow by more than half of
 * the study's 95 % interval. The same reader gives the same errors, so chance plays no part.
 */
class AccuracyAimsTest {
    private static final Map<String, Cell> RUN = new ConcurrentHashMap<>();

    static Stream<Arguments> aims() throws IOException {
        return Aim.stored().stream().map(aim -> Arguments.of(aim.words(), aim));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("aims")
    void is_no_worse_than_the_study(String name, Aim aim) {
        var cell = RUN.computeIfAbsent(
                aim.condition() + aim.generator(),
                key -> Cell.run(aim.condition(), aim.of(), Cells.ALL.get(aim.condition()), Aim.N));
        var errors = cell.errors(aim.quality());
        assertEquals(Aim.N, errors.found().hits(), "found");
        assertEquals("", aim.worse(errors));
        assertEquals(0, cell.failuresWithoutReason());
    }

    @ParameterizedTest
    @EnumSource(Generator.class)
    void no_onset_is_claimed_where_there_is_none(Generator generator) {
        var cell = Cell.run(Cells.NEVER, generator, Cells.ALL.get(Cells.NEVER), 2 * Aim.N);
        assertEquals(0, cell.onsetClaimed().hits());
    }

    /** A tenth more noise makes the errors of the snug angle about a tenth larger; the guard is narrower than that. */
    @Test
    void a_reader_worse_by_a_tenth_is_noticed() throws IOException {
        var aim = Aim.stored().stream()
                .filter(one -> one.quality() == Quality.SNUG_ANGLE && one.of() == Generator.FORMULA)
                .findFirst()
                .orElseThrow();
        var worse = Cell.run(Cells.AIMS, Generator.FORMULA, Conditions.with(c -> c.noiseShare *= 1.1), Aim.N);
        assertFalse(aim.worse(worse.errors(Quality.SNUG_ANGLE)).isEmpty());
    }
}
