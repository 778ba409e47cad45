package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The reader is no worse than when the accuracy study was last written. Each feature may err, 95 of 100 times, by what the
 * study found; a smaller study of the same seeds fails where even the lower end of its interval lies above that.
 */
class AccuracyAimsTest {
    private static final int N = 250;
    private static final Map<String, Cell> RUN = new ConcurrentHashMap<>();

    @ParameterizedTest(name = "{0}, {1}: {2} within {3}")
    @CsvFileSource(resources = "/accuracy/aims.csv", numLinesToSkip = 3)
    void is_no_worse_than_the_study(String condition, String generator, String feature, double usualHigh) {
        var cell = RUN.computeIfAbsent(
                condition + generator,
                key -> Cell.run(
                        condition, Generator.valueOf(generator.toUpperCase(Locale.ROOT)), Cells.ALL.get(condition), N));
        var quality = Arrays.stream(Quality.values())
                .filter(q -> q.word().equals(feature))
                .findFirst()
                .orElseThrow();
        var errors = cell.errors(quality);
        assertEquals(N, errors.found().hits(), "found");
        assertTrue(
                errors.usualLow() <= usualHigh,
                () -> String.format(
                        Locale.ROOT,
                        "95 %% error is %.3f (%.3f to %.3f) %s, the study had at most %.3f",
                        errors.usual(),
                        errors.usualLow(),
                        errors.usualHigh(),
                        quality.unit,
                        usualHigh));
        assertEquals(0, cell.failuresWithoutReason());
    }

    @ParameterizedTest
    @EnumSource(Generator.class)
    void no_onset_is_claimed_where_there_is_none(Generator generator) {
        var cell = Cell.run(Cells.NEVER, generator, Cells.ALL.get(Cells.NEVER), 2 * N);
        assertEquals(0, cell.onsetClaimed().hits());
    }

    @Test
    void a_worse_reader_would_be_noticed() {
        var twice = Cell.run(Cells.AIMS, Generator.FORMULA, Conditions.with(c -> c.noiseShare = 0.02), N)
                .errors(Quality.SNUG_ANGLE);
        assertTrue(twice.usualLow() > 1, "the test can tell four times the noise: " + twice.usualLow());
    }
}
