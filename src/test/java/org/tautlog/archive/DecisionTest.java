package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.STAMP;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.problem.ProblemCode;

/** Decisions stand in a chain: later ones supersede, none is edited, and several people may decide at once. */
class DecisionTest {
    @TempDir
    Path folder;

    @Test
    void a_later_decision_about_the_same_bolt_supersedes_and_both_stay() throws IOException {
        var archive = Archive.create(folder);
        archive.decide(decision("3", DecisionAction.QUARANTINE), STAMP);
        archive.decide(decision("4", DecisionAction.ACCEPT), STAMP);
        archive.decide(decision("3", DecisionAction.RE_TIGHTEN), STAMP);
        try (var query = archive.query()) {
            var decisions = query.decisions("FW-000017").value().orElseThrow();
            assertEquals(
                    List.of(false, true, true),
                    decisions.stream().map(KeptDecision::standing).toList());
            assertEquals(DecisionAction.RE_TIGHTEN, decisions.get(2).decision().action());
            assertEquals(decisions.get(1).sha256(), decisions.get(2).previous());
            assertEquals(STAMP.time(), decisions.get(2).time());
            assertEquals(List.of(), query.decisions("FW-000018").value().orElseThrow());
        }
    }

    @Test
    void hostile_words_stay_on_their_line_and_come_back() throws IOException {
        var archive = Archive.create(folder);
        var hostile = new Decision(
                "FW-1\n\",\"sha256\":\"0\"}",
                "'; DROP",
                DecisionAction.RELEASE,
                "<b>\u2028</b>",
                "a\r\nb\0,\"sha256\":\"");
        archive.decide(hostile, STAMP);
        try (var query = archive.query()) {
            assertEquals(
                    hostile, query.decisions("").value().orElseThrow().get(0).decision());
        }
        assertEquals(List.of(), archive.verify().problems());
    }

    @Test
    void people_who_decide_at_once_all_get_their_entry() throws Exception {
        var archive = Archive.create(folder);
        var pool = Executors.newFixedThreadPool(8);
        try {
            var decided = IntStream.range(0, 40)
                    .mapToObj(i -> pool.submit(
                            () -> archive.decide(decision(String.valueOf(i), DecisionAction.ACCEPT), STAMP)))
                    .toList();
            for (var one : decided) {
                one.get();
            }
        } finally {
            pool.shutdown();
        }
        assertEquals(40, archive.verify().entries());
        assertEquals(List.of(), archive.verify().problems());
    }

    @Test
    void an_entry_whose_writer_died_never_counted_and_the_next_writer_cuts_it_off() throws IOException {
        var archive = Archive.create(folder);
        archive.decide(decision("1", DecisionAction.ACCEPT), STAMP);
        var ledger = folder.resolve("ledger.jsonl");
        var whole = Files.readAllBytes(ledger);
        Files.writeString(ledger, "{\"number\":2,\"previous\":\"", StandardOpenOption.APPEND);
        try (var query = archive.query()) {
            var told = query.decisions("");
            assertEquals(1, told.value().orElseThrow().size());
            assertEquals(ProblemCode.LEFTOVER, told.problems().get(0).code());
        }
        assertTrue(archive.verify().isWhole());
        archive.decide(decision("2", DecisionAction.ACCEPT), STAMP);
        var now = Files.readAllBytes(ledger);
        assertArrayEquals(whole, Arrays.copyOf(now, whole.length));
        assertEquals(2, archive.verify().entries());
        assertEquals(List.of(), archive.verify().problems());
    }

    @Test
    void a_decision_without_person_or_reason_is_refused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Decision("FW-000017", "", DecisionAction.ACCEPT, " ", "because"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Decision("FW-000017", "", DecisionAction.ACCEPT, "A. Reviewer", ""));
    }

    private static Decision decision(String bolt, DecisionAction action) {
        return new Decision("FW-000017", bolt, action, "A. Reviewer", "seen on the bench");
    }
}
