package org.tautlog.archive.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.Decided;
import org.tautlog.problem.ProblemCode;

class LedgerTest {
    private static final OffsetDateTime TIME = OffsetDateTime.parse("2026-03-02T14:10:00+01:00");

    @TempDir
    private Path folder;

    @Test
    void an_entry_of_another_writer_is_seen_by_one_who_has_read_before() throws IOException {
        var reader = new Ledger(folder.resolve("ledger.jsonl"));
        append("first");
        assertEquals(1, reader.read().entries().size());

        append("second");

        assertEquals(2, reader.read().entries().size());
        assertEquals(List.of(), reader.read().problems());
    }

    @Test
    void an_altered_character_is_seen_by_one_who_has_read_before() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        var reader = new Ledger(file);
        append("first");
        assertEquals(List.of(), reader.read().problems());

        Files.writeString(file, Files.readString(file).replace("first", "firsT"));

        assertEquals(1, reader.read().problems().size());
    }

    @Test
    void a_word_put_in_behind_the_hash_of_a_decision_is_seen_and_does_not_count() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        var decision = new Decision("FW-000012", "", DecisionAction.QUARANTINE, "A. Reviewer", "short");
        new Ledger(file).append(List.of(new Decided(decision)), TIME);
        var line = Files.readString(file).strip();
        for (var more : List.of(
                line.replaceFirst("}$", ",\"action\":\"release\",\"reason\":\"all fine\"}"),
                line.replaceFirst("}$", ",\"batch\":\"other\",\"manifest\":\"00\"}"),
                line.replaceFirst("}$", " }"),
                line + " ",
                line + "{\"kind\":\"batch\"}",
                line + "\r")) {
            Files.writeString(file, more + "\n");

            var reading = new Ledger(file).read();

            assertEquals(List.of(), reading.entries(), more);
            assertEquals(ProblemCode.ALTERED, reading.problems().get(0).code(), more);
        }
    }

    @Test
    void a_last_line_without_its_end_counts_and_no_writer_takes_it_away() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        append("first");
        append("second");
        var whole = Files.readString(file);
        Files.writeString(file, whole.strip());

        var reading = new Ledger(file).read();
        append("third");

        assertEquals(2, reading.entries().size());
        assertEquals(List.of(), reading.problems());
        assertEquals(3, new Ledger(file).read().entries().size());
        assertTrue(Files.readString(file).startsWith(whole));
    }

    @Test
    void a_last_line_without_its_end_that_does_not_follow_the_chain_is_an_alteration() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        append("first");
        append("second");
        append("third");
        var lines = Files.readAllLines(file);
        Files.writeString(file, lines.get(0) + "\n" + lines.get(2));

        assertEquals(
                ProblemCode.ALTERED, new Ledger(file).read().problems().get(0).code());
    }

    @Test
    void a_last_line_that_was_altered_is_not_taken_for_a_dead_writers_whether_or_not_it_has_its_end()
            throws IOException {
        var file = folder.resolve("ledger.jsonl");
        append("first");
        append("second");
        var altered = Files.readString(file).replace("second", "secund").strip();
        Files.writeString(file, altered);

        assertEquals(
                ProblemCode.ALTERED, new Ledger(file).read().problems().get(0).code());
        append("third");
        assertTrue(Files.readString(file).startsWith(altered + "\n"));
    }

    @Test
    void a_last_line_that_is_cut_short_is_told_to_readers() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        append("first");
        append("second");
        var whole = Files.readString(file);
        Files.writeString(file, whole.substring(0, whole.length() - 2));

        var reading = new Ledger(file).read();

        assertEquals(1, reading.entries().size());
        assertEquals(ProblemCode.LEFTOVER, reading.problems().get(0).code());
        assertEquals(2, reading.problems().get(0).where().line());
    }

    private void append(String batch) throws IOException {
        new Ledger(folder.resolve("ledger.jsonl")).append(List.of(new BatchKept(batch, "0".repeat(64))), TIME);
    }
}
