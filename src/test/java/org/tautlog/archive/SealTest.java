package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.STAMP;
import static org.tautlog.archive.Tightenings.take;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.archive.SealCheck.Signed;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.problem.ProblemCode;

/** A seal kept elsewhere proves that everything before it is as it was, whatever came after. */
class SealTest {
    @TempDir
    Path folder;

    private Archive archive;
    private KeyPair keys;

    @BeforeEach
    void an_archive_and_a_key() throws Exception {
        archive = Archive.create(folder.resolve("archive"));
        take(archive, "monday.csv", 1, 1);
        keys = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
    }

    @Test
    void a_seal_holds_while_the_archive_grows_and_is_tidied() throws IOException {
        var seal = archive.seal(keys.getPrivate(), "Q. Auditor", STAMP);
        take(archive, "tuesday.csv", 2, 1);
        archive.tidy(STAMP);
        var verification = archive.verify(keys.getPublic(), List.of(seal), () -> {});
        assertEquals(List.of(), verification.problems());
        assertEquals(2, verification.seals().size());
        assertTrue(verification.seals().get(0).onChain());
        assertEquals(Signed.BY_THE_KEY, verification.seals().get(0).signed());
        assertEquals(Signed.NOT_CHECKED, archive.verify().seals().get(0).signed());
    }

    @Test
    void entries_cut_off_the_end_are_found_by_a_seal_kept_elsewhere() throws IOException {
        archive.decide(new Decision("FW-000001", "", DecisionAction.QUARANTINE, "A. Reviewer", "leaks"), STAMP);
        var seal = archive.seal(keys.getPrivate(), "Q. Auditor", STAMP);
        var ledger = folder.resolve("archive/ledger.jsonl");
        Files.write(ledger, Files.readAllLines(ledger).subList(0, 1));
        var verification = archive.verify(keys.getPublic(), List.of(seal), () -> {});
        assertFalse(verification.isWhole());
        assertFalse(verification.seals().get(0).onChain());
    }

    @Test
    void only_a_seal_kept_elsewhere_shows_that_nothing_was_taken_off_before_it() throws IOException {
        var seal = archive.seal(keys.getPrivate(), "Q. Auditor", STAMP);
        archive.decide(new Decision("FW-000001", "", DecisionAction.QUARANTINE, "A. Reviewer", "leaks"), STAMP);
        var elsewhere = folder.resolve("seal-0001.txt");
        Files.copy(seal, elsewhere);
        Files.copy(seal.resolveSibling("seal-0001.sig"), folder.resolve("seal-0001.sig"));
        assertEquals(0, archive.verify().provenEntries());
        assertEquals(
                0, archive.verify(keys.getPublic(), List.of(seal), () -> {}).provenEntries());
        assertEquals(
                1,
                archive.verify(keys.getPublic(), List.of(elsewhere), () -> {}).provenEntries());
    }

    @Test
    void a_broken_chain_is_neither_sealed_nor_tidied() throws IOException {
        take(archive, "tuesday.csv", 2, 1);
        archive.decide(new Decision("FW-000001", "", DecisionAction.QUARANTINE, "A. Reviewer", "leaks"), STAMP);
        var ledger = folder.resolve("archive/ledger.jsonl");
        Files.writeString(ledger, Files.readString(ledger).replace("leaks", "leeks"));
        var refused = assertThrows(ArchiveRefusal.class, () -> archive.seal(keys.getPrivate(), "Q. Auditor", STAMP));
        assertTrue(refused.getMessage().contains("broken at ledger.jsonl:3"), refused.getMessage());
        var tidied = archive.tidy(STAMP);
        assertEquals(0, tidied.merged());
        assertEquals(ProblemCode.ALTERED, tidied.problems().get(0).code());
    }

    @Test
    void another_key_or_an_altered_text_is_found() throws Exception {
        var seal = archive.seal(keys.getPrivate(), "Q. Auditor", STAMP);
        var other = KeyPairGenerator.getInstance("Ed25519").generateKeyPair().getPublic();
        assertEquals(
                Signed.NOT_BY_THE_KEY,
                archive.verify(other, List.of(), () -> {}).seals().get(0).signed());
        Files.writeString(seal, Files.readString(seal).replace("Q. Auditor", "Q. Editor"));
        assertFalse(archive.verify(keys.getPublic(), List.of(), () -> {}).isWhole());
        Files.writeString(seal, "entries: 1\n");
        assertFalse(archive.verify().isWhole());
    }

    @ParameterizedTest
    @ValueSource(strings = {"txt", "sig"})
    void a_flipped_bit_in_a_seal_or_its_signature_is_found_wherever_it_is(String ending) throws IOException {
        var text = archive.seal(keys.getPrivate(), "Q. Auditor", STAMP);
        var file = text.resolveSibling(text.getFileName().toString().replace("txt", ending));
        var bytes = Files.readAllBytes(file);
        var missed = new ArrayList<Integer>();
        for (int place = 0; place < bytes.length; place += 5) {
            int bit = place % 2 == 0 ? 1 : 0x80;
            bytes[place] ^= (byte) bit;
            Files.write(file, bytes);
            if (archive.verify(keys.getPublic(), List.of(), () -> {}).isWhole()) {
                missed.add(place);
            }
            bytes[place] ^= (byte) bit;
        }
        assertEquals(List.of(), missed, "flips that were not found");
        Files.write(file, bytes);
        assertTrue(archive.verify(keys.getPublic(), List.of(), () -> {}).isWhole());
    }

    @Test
    void a_new_seal_takes_no_other_ones_place_and_whatever_is_gone_of_a_seal_is_missed() throws IOException {
        for (int seal = 1; seal <= 3; seal++) {
            archive.seal(keys.getPrivate(), "Q. Auditor " + seal, STAMP);
        }
        var seals = folder.resolve("archive/seals");
        Files.delete(seals.resolve("seal-0001.txt"));
        Files.delete(seals.resolve("seal-0001.sig"));
        assertEquals(
                "seal-0004.txt",
                archive.seal(keys.getPrivate(), "Q. Auditor 4", STAMP)
                        .getFileName()
                        .toString());
        assertTrue(Files.readString(seals.resolve("seal-0003.txt")).contains("Q. Auditor 3"));
        Files.delete(seals.resolve("seal-0002.sig"));
        Files.delete(seals.resolve("seal-0004.txt"));
        var verification = archive.verify();
        assertFalse(verification.isWhole());
        assertTrue(verification.problems().stream().allMatch(problem -> problem.code() == ProblemCode.MISSING));
        assertEquals(
                List.of("seal-0001.txt", "seal-0001.sig", "seal-0002.sig", "seal-0004.txt"),
                verification.problems().stream()
                        .map(problem -> problem.where().file().replace("seals/", ""))
                        .toList());
        assertEquals(
                "seal-0005.txt",
                archive.seal(keys.getPrivate(), "Q. Auditor 5", STAMP)
                        .getFileName()
                        .toString());
    }

    @Test
    void an_archive_that_lost_its_description_gets_it_again() throws IOException {
        archive.seal(keys.getPrivate(), "Q. Auditor", STAMP);
        var description = folder.resolve("archive/ARCHIVE.md");
        Files.delete(description);
        take(Archive.create(folder.resolve("archive")), "tuesday.csv", 2, 1);
        assertTrue(Files.readString(description).startsWith("# This folder is an archive"));
        assertEquals(List.of(), archive.verify().problems());
    }

    @Test
    void a_name_of_two_lines_cannot_seal() {
        assertThrows(
                IllegalArgumentException.class, () -> archive.seal(keys.getPrivate(), "Q. Auditor\nhead: 00", STAMP));
    }
}
