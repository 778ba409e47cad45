package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.STAMP;
import static org.tautlog.archive.Tightenings.specification;
import static org.tautlog.archive.Tightenings.take;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.archive.ledger.FolderLock;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.problem.ProblemCode;

/** Tidying makes few batches of many, and nobody who asks can tell. */
class TidyTest {
    @TempDir
    Path folder;

    @Test
    void no_answer_changes_when_small_batches_are_merged() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 3);
        take(archive, "tuesday.csv", 4, 3);
        take(archive, "monday.csv", 1, 3, specification("4"));
        archive.decide(new Decision("FW-000002", "3", DecisionAction.REPLACE, "A. Reviewer", "short"), STAMP);
        var before = answers(archive);
        var tidied = archive.tidy(STAMP);
        assertEquals(List.of(), tidied.problems());
        assertEquals(3, tidied.merged());
        assertEquals(1, tidied.into());
        assertEquals(before, answers(archive));
        assertEquals(1, Disk.list(folder.resolve("batches")).size());
        assertEquals(List.of(), Disk.list(folder.resolve("staging")));
        assertEquals(List.of(), archive.verify().problems());
        assertTrue(take(archive, "monday.csv", 1, 3).changedNothing());
    }

    @Test
    void a_merged_batch_is_merged_again_and_still_proves_each_import() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 1);
        take(archive, "tuesday.csv", 2, 1);
        archive.tidy(STAMP);
        take(archive, "wednesday.csv", 3, 1);
        var before = answers(archive);
        assertEquals(2, archive.tidy(STAMP).merged());
        assertEquals(before, answers(archive));
        assertEquals(List.of(), archive.verify().problems());
        assertEquals(0, archive.tidy(STAMP).merged());
    }

    @Test
    void an_altered_or_missing_proof_of_a_merged_import_is_named_and_the_rest_is_still_checked() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 1);
        take(archive, "tuesday.csv", 2, 1);
        archive.tidy(STAMP);
        var merged = Disk.list(folder.resolve("batches")).get(0);
        var proof = Disk.list(merged).stream()
                .filter(file -> file.getFileName().toString().startsWith("manifest-of-"))
                .findFirst()
                .orElseThrow();
        var bytes = Files.readAllBytes(proof);
        for (int place : new int[] {0, bytes.length / 2, bytes.length - 2}) {
            var flipped = bytes.clone();
            flipped[place] ^= 1;
            Files.write(proof, flipped);
            named(archive, proof, "byte " + place);
        }
        Files.delete(proof);
        named(archive, proof, "missing");
        Files.write(proof, bytes);
        assertEquals(List.of(), archive.verify().problems());
    }

    private static void named(Archive archive, Path file, String how) throws IOException {
        var name = file.getFileName().toString();
        var problems = archive.verify().problems();
        assertTrue(problems.stream().anyMatch(problem -> problem.where().file().endsWith(name)), how + ": " + problems);
    }

    @Test
    void specifications_keep_the_order_of_their_first_use_whatever_the_clock_and_tidying_do() throws IOException {
        var archive = Archive.create(folder);
        var versions = List.of("7", "2", "9", "4", "1", "8");
        for (var version : versions) {
            take(archive, "monday.csv", 1, 1, specification(version));
        }
        assertEquals(versions, versions(archive), "all of one second");
        archive.tidy(STAMP);
        assertEquals(versions, versions(archive), "merged");
        take(archive, "monday.csv", 1, 1, specification("3"));
        archive.tidy(STAMP);
        assertEquals("3", versions(archive).get(versions.size()), "merged again");
    }

    private static List<String> versions(Archive archive) throws IOException {
        try (var query = archive.query()) {
            return query.specifications().value().orElseThrow().stream()
                    .map(SpecificationUsed::version)
                    .toList();
        }
    }

    @Test
    void what_a_dead_writer_left_is_named_and_cleared_and_a_living_one_left_alone() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 1);
        Files.createDirectories(folder.resolve("staging/20260302T060000Z-1"));
        Files.writeString(folder.resolve("staging/20260302T060000Z-1/traces-1.parquet"), "half a f");
        try (var importer = archive.importer(STAMP, specification("3"))) {
            importer.source(Tightenings.file("tuesday.csv"));
            importer.trace(Tightenings.trace(Tightenings.file("tuesday.csv"), 2, 1));
            var verification = archive.verify();
            assertTrue(verification.isWhole());
            assertTrue(verification.problems().stream().allMatch(problem -> problem.code() == ProblemCode.LEFTOVER));
            assertEquals(List.of("20260302T060000Z-1"), archive.tidy(STAMP).cleared());
            importer.commit();
        }
        assertEquals(List.of(), archive.verify().problems());
        try (var query = archive.query()) {
            assertEquals(
                    List.of("FW-000001", "FW-000002"), query.serials().value().orElseThrow());
        }
    }

    @Test
    void damaged_batches_are_not_merged() throws IOException {
        var archive = Archive.create(folder);
        var monday = take(archive, "monday.csv", 1, 1).batch();
        take(archive, "tuesday.csv", 2, 1);
        var file = folder.resolve("batches").resolve(monday).resolve("traces-1.parquet");
        var bytes = Files.readAllBytes(file);
        for (int i = 200; i < 260; i++) {
            bytes[i] ^= 0x55;
        }
        Files.write(file, bytes);
        var tidied = archive.tidy(STAMP);
        assertEquals(0, tidied.merged());
        assertEquals(1, tidied.problems().size());
        assertEquals(2, Disk.list(folder.resolve("batches")).size());
        assertEquals(List.of(), Disk.list(folder.resolve("staging")));
    }

    @Test
    void a_merge_whose_writer_died_before_the_old_batches_went_counts_once() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 2);
        take(archive, "tuesday.csv", 3, 2);
        var old = Disk.list(folder.resolve("batches"));
        var copies = folder.resolveSibling(folder.getFileName() + "-copies");
        for (var batch : old) {
            copy(batch, copies.resolve(batch.getFileName()));
        }
        archive.tidy(STAMP);
        for (var batch : old) {
            copy(copies.resolve(batch.getFileName()), batch);
        }
        Disk.delete(copies);
        try (var query = archive.query()) {
            assertEquals(8, query.traces("FW-000003").value().orElseThrow().size());
            assertEquals(32, query.counts().value().orElseThrow().traces());
        }
        assertTrue(archive.verify().isWhole());
        assertEquals(2, archive.tidy(STAMP).cleared().size());
        assertEquals(List.of(), archive.verify().problems());
    }

    @Test
    void a_merge_that_was_damaged_before_the_old_batches_went_takes_none_of_them_with_it() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 1);
        take(archive, "tuesday.csv", 2, 1);
        var old = Disk.list(folder.resolve("batches"));
        var copies = folder.resolveSibling(folder.getFileName() + "-copies");
        for (var batch : old) {
            copy(batch, copies.resolve(batch.getFileName()));
        }
        archive.tidy(STAMP);
        var traces = Disk.list(folder.resolve("batches")).get(0).resolve("traces-1.parquet");
        var bytes = Files.readAllBytes(traces);
        for (int place = 200; place < 203; place++) {
            bytes[place] ^= 0x55;
        }
        Files.write(traces, bytes);
        for (var batch : old) {
            copy(copies.resolve(batch.getFileName()), batch);
        }
        Disk.delete(copies);
        var tidied = archive.tidy(STAMP);
        assertEquals(List.of(), tidied.cleared());
        assertTrue(tidied.problems().get(0).what().contains("left where they are"), tidied.toString());
        assertEquals(3, Disk.list(folder.resolve("batches")).size());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void a_manifest_that_only_says_it_replaces_an_import_hides_and_clears_nothing(boolean itsHeadFits)
            throws IOException {
        var archive = Archive.create(folder);
        var real = take(archive, "monday.csv", 1, 1).batch();
        var forged = Files.createDirectory(folder.resolve("batches/20990101T000000Z-forged"));
        var head = itsHeadFits ? archive.verify().head() : "";
        var parts = itsHeadFits
                ? Manifest.parse(Files.readAllBytes(folder.resolve("batches/" + real + "/manifest.json")))
                        .parts()
                : List.<Manifest.Part>of();
        Files.write(
                forged.resolve("manifest.json"),
                new Manifest(2, "0.1.0", "", List.of(), List.of(), parts, List.of(), List.of(real), head).toJson());
        try (var query = archive.query()) {
            assertEquals(8, query.traces("FW-000001").value().orElseThrow().size());
        }
        if (!itsHeadFits) {
            assertFalse(archive.verify().isWhole());
        }
        assertEquals(List.of(), archive.tidy(STAMP).cleared());
        assertTrue(Files.exists(folder.resolve("batches").resolve(real)));
        assertFalse(archive.verify().isWhole());
    }

    @Test
    void the_lock_of_a_writer_in_this_process_is_not_lost_when_another_tries() throws IOException {
        var file = folder.resolve("lock");
        var held = FolderLock.take(file);
        assertTrue(FolderLock.tryTake(file).isEmpty());
        held.close();
        var again = FolderLock.tryTake(file);
        assertTrue(again.isPresent());
        again.get().close();
    }

    private static List<Object> answers(Archive archive) throws IOException {
        var answers = new ArrayList<Object>();
        try (var query = archive.query()) {
            answers.add(query.serials());
            for (var serial : query.serials().value().orElseThrow()) {
                answers.add(query.traces(serial));
                answers.add(query.judgements(serial));
                answers.add(query.decisions(serial));
            }
            answers.add(query.judgements(JudgementFilter.everything()));
            answers.add(query.traces(query.judgements("FW-000003").value().orElseThrow().stream()
                    .map(kept -> BriefJudgement.of(kept.value().judgement()))
                    .toList()));
            answers.add(query.nearestSerials("FW-00003", 3));
            answers.add(query.problems());
            answers.add(query.sources());
            var counts = query.counts().value().orElseThrow();
            answers.add(List.of(counts.sources(), counts.serials(), counts.traces(), counts.judgements()));
        }
        return answers;
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (var file : Disk.list(from)) {
            Files.copy(file, to.resolve(file.getFileName()));
        }
    }
}
