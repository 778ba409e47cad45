package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.trace.Trace;

/** What several threads read is what one reads. */
class LogsOnThreadsTest {
    private static final Path CASES = Path.of("src/test/resources/intake");
    private static final Path SHIFT = Path.of("sample-logs");

    private record Read(List<Trace> traces, ReadSummary summary) {}

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 16})
    void all_oddities_and_the_sample_shift_twice_are_read_the_same_on_any_number_of_threads(int threads) {
        var alone = read(1);
        assertTrue(alone.traces().size() > 500, alone.traces().size() + " traces");
        assertTrue(alone.summary().problems().size() > 500, "the second reading is told as a repetition");
        assertTrue(alone.summary().files().rejected() > 20, "files that cannot be used are among them");
        assertEquals(alone, read(threads));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void a_taker_that_fails_ends_the_reading_with_its_own_words(int threads) {
        var options = ReadOptions.withDefaults().withThreads(threads);
        TraceSink failing = trace -> {
            throw new IllegalStateException("no room on the disk");
        };
        var thrown = assertThrows(
                IllegalStateException.class, () -> LogReader.read(List.of(SHIFT, CASES), options, failing));
        assertEquals("no room on the disk", thrown.getMessage());
    }

    private static Read read(int threads) {
        var traces = new ArrayList<Trace>();
        var options = ReadOptions.withDefaults().withThreads(threads);
        var summary = LogReader.read(List.of(CASES, SHIFT, CASES, SHIFT), options, traces::add);
        return new Read(traces, summary);
    }
}
