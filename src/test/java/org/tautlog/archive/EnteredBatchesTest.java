package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.STAMP;
import static org.tautlog.archive.Tightenings.take;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.ledger.LedgerEvent;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.Decided;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;

/** A batch says which entry it follows: a foreign one, a chain cut short and one written anew are told from a killed import. */
class EnteredBatchesTest {
    @TempDir
    Path folder;

    private Archive archive;
    private Path ledger;

    @BeforeEach
    void an_import_a_decision_and_an_import() throws IOException {
        archive = Archive.create(folder.resolve("archive"));
        ledger = folder.resolve("archive/ledger.jsonl");
        take(archive, "monday.csv", 1, 1);
        archive.decide(decision(DecisionAction.QUARANTINE), STAMP);
        take(archive, "tuesday.csv", 2, 1);
    }

    @Test
    void a_ledger_that_was_taken_away_is_missed_by_check_and_queries_and_no_later_entry_heals_it() throws IOException {
        Files.delete(ledger);
        assertEquals(ProblemCode.MISSING, codes(archive.verify()).get(0));
        assertFalse(archive.verify().isWhole());
        try (var query = archive.query()) {
            var answer = query.traces("FW-000001");
            assertEquals(8, answer.value().orElseThrow().size());
            assertEquals(ProblemCode.MISSING, answer.problems().get(0).code());
        }
        archive.decide(decision(DecisionAction.RELEASE), STAMP);
        archive.tidy(STAMP);
        assertFalse(archive.verify().isWhole());
    }

    @Test
    void an_emptied_ledger_beside_a_single_import_is_not_whole() throws IOException {
        var single = Archive.create(folder.resolve("single"));
        take(single, "monday.csv", 1, 1);
        Files.writeString(folder.resolve("single/ledger.jsonl"), "");
        assertFalse(single.verify().isWhole());
    }

    @Test
    void a_batch_copied_from_another_archive_is_named_and_no_writer_enters_it() throws IOException {
        var other = Archive.create(folder.resolve("other"));
        take(other, "friday.csv", 9, 1);
        var foreign = Disk.list(folder.resolve("other/batches")).get(0);
        copy(foreign, folder.resolve("archive/batches").resolve(foreign.getFileName()));
        assertEquals(List.of(ProblemCode.UNEXPECTED), codes(archive.verify()));
        try (var query = archive.query()) {
            assertEquals(
                    ProblemCode.UNEXPECTED, query.serials().problems().get(0).code());
        }
        archive.decide(decision(DecisionAction.RELEASE), STAMP);
        var tidied = archive.tidy(STAMP);
        assertEquals(0, tidied.entered());
        assertEquals(List.of(ProblemCode.UNEXPECTED), codes(archive.verify()));
        assertFalse(Files.readString(ledger).contains(foreign.getFileName().toString()));
    }

    @Test
    void a_chain_cut_before_the_last_import_does_not_fit_it() throws IOException {
        var lines = Files.readAllLines(ledger);
        Files.writeString(ledger, lines.get(0) + "\n");
        assertEquals(List.of(ProblemCode.UNEXPECTED), codes(archive.verify()));
    }

    @Test
    void a_chain_written_anew_without_a_decision_does_not_fit_the_imports_after_it() throws IOException {
        write(entries().stream().filter(event -> !(event instanceof Decided)).toList());
        assertEquals(List.of(ProblemCode.ALTERED), codes(archive.verify()));
    }

    @Test
    void an_import_killed_before_its_entry_is_whole_and_the_next_writer_enters_it() throws IOException {
        var lines = Files.readAllLines(ledger);
        Files.writeString(ledger, lines.get(0) + "\n" + lines.get(1) + "\n");
        var verification = archive.verify();
        assertEquals(List.of(ProblemCode.LEFTOVER), codes(verification));
        assertTrue(verification.isWhole());
        archive.decide(decision(DecisionAction.RELEASE), STAMP);
        assertEquals(List.of(), archive.verify().problems());
        assertEquals(4, archive.verify().entries());
    }

    @Test
    void of_two_batches_that_claim_the_same_place_one_is_entered() throws IOException {
        var lines = Files.readAllLines(ledger);
        Files.writeString(ledger, lines.get(0) + "\n" + lines.get(1) + "\n");
        var last = Disk.list(folder.resolve("archive/batches")).stream()
                .filter(batch -> lines.get(2).contains(batch.getFileName().toString()))
                .findFirst()
                .orElseThrow();
        copy(last, last.resolveSibling("20990101T000000Z-copy"));
        archive.decide(decision(DecisionAction.RELEASE), STAMP);
        assertEquals(4, archive.verify().entries());
        assertFalse(archive.verify().isWhole());
    }

    /** Batches of earlier programs do not name an entry: on the chain they are whole, off it nobody can tell. */
    @Test
    void a_batch_of_an_older_program_is_whole_on_the_chain_and_named_off_it() throws IOException {
        var events = entries().stream().map(this::asAnOlderProgramWouldHave).toList();
        write(events);
        assertEquals(List.of(), archive.verify().problems());
        write(events.subList(0, 2));
        assertEquals(List.of(ProblemCode.UNEXPECTED), codes(archive.verify()));
        archive.decide(decision(DecisionAction.RELEASE), STAMP);
        assertEquals(List.of(ProblemCode.UNEXPECTED), codes(archive.verify()));
    }

    private LedgerEvent asAnOlderProgramWouldHave(LedgerEvent event) {
        if (!(event instanceof BatchKept kept)) {
            return event;
        }
        try {
            var file = folder.resolve("archive/batches").resolve(kept.batch()).resolve(Manifest.FILE_NAME);
            Files.writeString(file, Files.readString(file).replaceFirst(",\\s*\"ledgerHead\" : \"[0-9a-f]{64}\"", ""));
            assertEquals("", Manifest.parse(Files.readAllBytes(file)).ledgerHead());
            return new BatchKept(kept.batch(), Disk.sha256(file));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<LedgerEvent> entries() throws IOException {
        return new Ledger(ledger)
                .read().entries().stream().map(entry -> entry.event()).toList();
    }

    private void write(List<LedgerEvent> events) throws IOException {
        Files.delete(ledger);
        new Ledger(ledger).append(events, STAMP.time());
    }

    private static Decision decision(DecisionAction action) {
        return new Decision("FW-000001", "", action, "A. Reviewer", "seen on the bench");
    }

    private static List<ProblemCode> codes(Verification verification) {
        return verification.problems().stream().map(Problem::code).toList();
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (var file : Disk.list(from)) {
            Files.copy(file, to.resolve(file.getFileName()));
        }
    }
}
