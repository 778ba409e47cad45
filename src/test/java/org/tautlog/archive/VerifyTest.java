package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.STAMP;
import static org.tautlog.archive.Tightenings.take;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Whatever is altered, taken away or added is found, and named. */
class VerifyTest {
    @TempDir
    static Path kept;

    @TempDir
    Path folder;

    private static String batchName;
    private Archive archive;
    private Path batch;

    @BeforeAll
    static void an_archive_of_two_imports_and_a_decision() throws IOException {
        var archive = Archive.create(kept);
        try (var importer = archive.importer(STAMP, Tightenings.SPECIFICATION)) {
            var file = Tightenings.file("monday.csv");
            importer.source(file);
            for (int engine = 1; engine <= 3; engine++) {
                var trace = Tightenings.trace(file, engine, 1);
                importer.trace(trace);
                importer.judgement(Tightenings.judgement(trace, Tightenings.SPECIFICATION));
            }
            importer.problem(new Problem(ProblemCode.BAD_ROW, Where.line("monday.csv", 9), "no row", "", ""));
            batchName = importer.commit().batch();
        }
        take(archive, "tuesday.csv", 4, 1);
        archive.decide(new Decision("FW-000002", "1", DecisionAction.ACCEPT, "A. Reviewer", "within reason"), STAMP);
    }

    @BeforeEach
    void a_copy_of_it() throws IOException {
        try (var paths = Files.walk(kept)) {
            for (var path : paths.skip(1).toList()) {
                Files.copy(path, folder.resolve(kept.relativize(path)));
            }
        }
        archive = Archive.open(folder);
        batch = folder.resolve("batches").resolve(batchName);
    }

    @Test
    void an_archive_as_it_was_kept_is_whole() throws IOException {
        var verification = archive.verify();
        assertEquals(List.of(), verification.problems());
        assertEquals(3, verification.entries());
        assertEquals(2, verification.batches());
        assertEquals(3 + 3 + 1 + 8 + 8, verification.rows());
        assertEquals(64, verification.head().length());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "traces-1.parquet",
                "judgements-1.parquet",
                "problems-1.parquet",
                "manifest.json",
                "specification"
            })
    void a_flipped_bit_in_any_file_of_a_batch_is_found(String name) throws IOException {
        var file = Disk.list(batch).stream()
                .filter(path -> path.getFileName().toString().startsWith(name))
                .findFirst()
                .orElseThrow();
        var bytes = Files.readAllBytes(file);
        int missed = 0;
        for (byte bit : new byte[] {1, (byte) 0x80}) {
            for (int place = 0; place < bytes.length; place += Math.max(1, bytes.length / 4)) {
                bytes[place] ^= bit;
                Files.write(file, bytes);
                var verification = archive.verify();
                missed += verification.isWhole()
                                || !names(verification, batch.getFileName().toString())
                        ? 1
                        : 0;
                bytes[place] ^= bit;
            }
        }
        assertEquals(0, missed, "flips that were not found");
        Files.write(file, bytes);
        assertTrue(archive.verify().isWhole());
    }

    @Test
    void a_flipped_bit_in_the_ledger_is_found_wherever_it_is() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        var bytes = Files.readAllBytes(file);
        int missed = 0;
        for (int place = 0; place < bytes.length - 1; place += 41) {
            byte bit = (byte) (place % 2 == 0 ? 1 : 0x80);
            bytes[place] ^= bit;
            Files.write(file, bytes);
            missed += archive.verify().isWhole() ? 1 : 0;
            bytes[place] ^= bit;
        }
        assertEquals(0, missed, "flips that were not found");
    }

    @Test
    void a_batch_that_is_taken_away_is_missed_by_queries_and_by_the_check() throws IOException {
        Disk.delete(batch);
        var verification = archive.verify();
        assertEquals(List.of(ProblemCode.MISSING), codes(verification));
        assertTrue(names(verification, batch.getFileName().toString()));
        try (var query = archive.query()) {
            var answer = query.traces("FW-000004");
            assertEquals(8, answer.value().orElseThrow().size());
            assertEquals(ProblemCode.MISSING, answer.problems().get(0).code());
        }
    }

    @Test
    void a_decision_that_is_taken_away_from_the_middle_breaks_the_chain() throws IOException {
        take(archive, "wednesday.csv", 5, 1);
        var file = folder.resolve("ledger.jsonl");
        var lines = Files.readAllLines(file);
        lines.removeIf(line -> line.contains("within reason"));
        Files.write(file, lines);
        var verification = archive.verify();
        assertEquals(List.of(ProblemCode.ALTERED), codes(verification));
        assertEquals("ledger.jsonl:3", verification.problems().get(0).where().toString());
    }

    @Test
    void a_row_that_is_put_in_with_a_fitting_hash_and_manifest_is_found_by_the_ledger() throws IOException {
        var manifest = batch.resolve("manifest.json");
        Files.writeString(manifest, Files.readString(manifest).replace("\"0.1.0\"", "\"0.1.1\""));
        assertTrue(names(archive.verify(), batch.getFileName() + "/manifest.json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"notes.txt", "batches/notes.txt", "seals/notes.txt"})
    void a_file_that_was_added_is_found(String name) throws IOException {
        Files.createDirectories(folder.resolve("seals"));
        Files.writeString(folder.resolve(name), "not ours");
        var verification = archive.verify();
        assertEquals(List.of(ProblemCode.UNEXPECTED), codes(verification));
        assertEquals(name, verification.problems().get(0).where().file());
    }

    @Test
    void a_flipped_bit_in_the_description_is_found_and_mended_by_tidying() throws IOException {
        var file = folder.resolve("ARCHIVE.md");
        var bytes = Files.readAllBytes(file);
        for (int place : new int[] {0, bytes.length / 2, bytes.length - 1}) {
            bytes[place] ^= 1;
            Files.write(file, bytes);
            var verification = archive.verify();
            assertEquals(List.of(ProblemCode.ALTERED), codes(verification));
            assertTrue(names(verification, "ARCHIVE.md"));
            bytes[place] ^= 1;
        }
        Files.delete(file);
        assertTrue(names(archive.verify(), "ARCHIVE.md"));
        archive.tidy(STAMP);
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertTrue(archive.verify().isWhole());
    }

    @Test
    void a_description_by_another_version_is_whole_where_its_own_hash_fits() throws IOException {
        var text = "# An archive of another version\n";
        var hash = "\nSHA-256 of all above this line and the blank one: "
                + Disk.sha256(text.getBytes(StandardCharsets.UTF_8)) + "\n";
        Files.writeString(folder.resolve("ARCHIVE.md"), text + hash);
        assertTrue(archive.verify().isWhole());
    }

    @Test
    void a_file_that_was_added_to_a_batch_is_found() throws IOException {
        Files.writeString(batch.resolve("extra.parquet"), "not ours");
        assertTrue(names(archive.verify(), "extra.parquet"));
    }

    @Test
    void a_half_copied_folder_answers_for_what_is_there_and_says_what_is_not() throws IOException {
        var file = batch.resolve("traces-1.parquet");
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), 100));
        try (var query = archive.query()) {
            var there = query.traces("FW-000004");
            assertEquals(8, there.value().orElseThrow().size());
            assertEquals(ProblemCode.ALTERED, there.problems().get(0).code());
            assertTrue(there.problems().get(0).sentence().contains("instead of"));
        }
        assertTrue(take(archive, "tuesday.csv", 4, 1).changedNothing());
        assertFalse(archive.verify().isWhole());
    }

    @Test
    void an_altered_row_is_left_out_of_answers_and_named() throws Exception {
        var file = batch.resolve("judgements-1.parquet");
        try (var duck = Duck.open(folder.resolveSibling("spill"))) {
            Duck.run(
                    duck,
                    "COPY (SELECT * REPLACE (CASE serial WHEN 'FW-000002' THEN 'conforming' ELSE verdict END AS verdict)"
                            + " FROM '" + file + "') TO '" + file + "' (FORMAT parquet)");
        }
        var manifest = batch.resolve("manifest.json");
        var json = Manifest.parse(Files.readAllBytes(manifest));
        var old = json.files().stream()
                .filter(one -> one.name().equals("judgements-1.parquet"))
                .findFirst()
                .orElseThrow();
        Files.writeString(
                manifest,
                Files.readString(manifest)
                        .replace("\"bytes\" : " + old.bytes(), "\"bytes\" : " + Files.size(file))
                        .replace(old.sha256(), Disk.sha256(file)),
                StandardCharsets.UTF_8);
        try (var query = archive.query()) {
            var answer = query.judgements("FW-000002");
            assertEquals(List.of(), answer.value().orElseThrow());
            assertEquals(ProblemCode.ALTERED, answer.problems().get(0).code());
        }
        assertTrue(archive.verify().problems().stream()
                .anyMatch(problem -> problem.what().contains("a row of serial 'FW-000002', bolt '1' was altered")));
    }

    private static List<ProblemCode> codes(Verification verification) {
        return verification.problems().stream().map(Problem::code).toList();
    }

    private static boolean names(Verification verification, String file) {
        return verification.problems().stream()
                .anyMatch(problem -> problem.where().file().contains(file));
    }
}
