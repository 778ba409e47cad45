package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.tautlog.archive.Tightenings.SHIFT_START;
import static org.tautlog.archive.Tightenings.SPECIFICATION;
import static org.tautlog.archive.Tightenings.STAMP;
import static org.tautlog.archive.Tightenings.file;
import static org.tautlog.archive.Tightenings.specification;
import static org.tautlog.archive.Tightenings.take;
import static org.tautlog.archive.Tightenings.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.table.Kept;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.trace.Trace;

/** What goes into an archive comes out of it, once, and is found by serial, stream and time. */
class ArchiveTest {
    @TempDir
    Path folder;

    @Test
    void an_engine_is_found_by_its_serial_with_every_bolt_and_verdict() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 5);
        try (var query = archive.query()) {
            var traces = query.traces("FW-000003");
            assertEquals(List.of(), traces.problems());
            assertEquals(
                    List.of("1", "2", "3", "4", "5", "6", "7", "8"),
                    values(traces.value().orElseThrow()).stream()
                            .map(trace -> trace.identity().bolt())
                            .toList());
            assertEquals(
                    trace(file("monday.csv"), 3, 1),
                    traces.value().orElseThrow().get(0).value());
            var judgements = query.judgements("FW-000003").value().orElseThrow();
            assertEquals(8, judgements.size());
            assertEquals(
                    Tightenings.judgement(trace(file("monday.csv"), 3, 1), SPECIFICATION),
                    judgements.get(0).value().judgement());
        }
    }

    @Test
    void the_same_bytes_again_change_nothing_and_say_so() throws IOException {
        var archive = Archive.create(folder);
        assertEquals(40, take(archive, "monday.csv", 1, 5).traces());
        var again = take(archive, "monday.csv", 1, 5);
        assertTrue(again.changedNothing());
        assertEquals(List.of(file("monday.csv")), again.knownSources());
        try (var query = archive.query()) {
            assertEquals(
                    new Counts(1, 1, 5, 40, 40, 0, 0), query.counts().value().orElseThrow());
        }
    }

    @Test
    void another_version_of_the_specification_adds_verdicts_and_overwrites_none() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 2);
        var again = take(archive, "monday.csv", 1, 2, specification("4"));
        assertEquals(0, again.traces());
        assertEquals(16, again.judgements());
        try (var query = archive.query()) {
            var versions = query.judgements("FW-000001").value().orElseThrow().stream()
                    .map(kept -> kept.value().judgement().specificationVersion())
                    .toList();
            assertEquals(16, versions.size());
            assertEquals(List.of("3", "4"), versions.subList(0, 2));
            var newest = query.judgements(JudgementFilter.everything().judgedBy("4"));
            assertEquals(16, newest.value().orElseThrow().size());
        }
    }

    @Test
    void a_changed_specification_under_an_old_version_is_refused() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 1);
        var changed = new SpecificationUsed(SPECIFICATION.name(), SPECIFICATION.version(), "changed");
        var refusal = assertThrows(IOException.class, () -> archive.importer(STAMP, changed));
        assertEquals(
                "specification Fenwater head bolt version 3 judged before with other contents;"
                        + " give the changed file a new version",
                refusal.getMessage());
    }

    @Test
    void a_stream_is_found_by_station_spindle_and_time() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 0, 10);
        try (var query = archive.query()) {
            var filter = JudgementFilter.everything().stream("S40", "2", "5")
                    .between(SHIFT_START.plusMinutes(3), SHIFT_START.plusMinutes(6));
            var found = query.judgements(filter).value().orElseThrow();
            assertEquals(
                    List.of("FW-000003", "FW-000004", "FW-000005"),
                    found.stream()
                            .map(kept -> kept.value().judgement().identity().serial())
                            .toList());
        }
    }

    @Test
    void the_traces_of_judgements_come_in_one_search_wherever_their_batches_lie() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 0, 10);
        take(archive, "tuesday.csv", 10, 10);
        try (var query = archive.query()) {
            var wanted = values(query.judgements(JudgementFilter.everything())
                            .value()
                            .orElseThrow())
                    .stream()
                    .map(kept -> BriefJudgement.of(kept.judgement()))
                    .filter(one -> one.identity().bolt().equals("3")
                            && !one.identity().serial().equals("FW-000012"))
                    .toList();
            var found = values(query.traces(wanted).value().orElseThrow());
            assertEquals(
                    wanted.stream().map(BriefJudgement::identity).toList(),
                    found.stream().map(Trace::identity).toList());
            assertEquals(List.of(), query.traces(List.of()).value().orElseThrow());
        }
    }

    @Test
    void an_unknown_serial_is_answered_with_those_written_like_it() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 8, 4);
        try (var query = archive.query()) {
            assertEquals(List.of(), query.traces("FW-00001O").value().orElseThrow());
            assertEquals(
                    List.of("FW-000010", "FW-000011"),
                    query.nearestSerials("FW-00001O", 2).value().orElseThrow());
        }
    }

    @Test
    void an_empty_archive_answers_every_question_with_nothing() throws IOException {
        try (var query = Archive.create(folder).query()) {
            assertEquals(List.of(), query.traces("FW-000001").value().orElseThrow());
            assertEquals(List.of(), query.serials().value().orElseThrow());
            assertEquals(new Counts(0, 0, 0, 0, 0, 0, 0), query.counts().value().orElseThrow());
        }
    }

    @Test
    void what_an_import_rejected_is_kept_beside_what_it_took() throws IOException {
        var archive = Archive.create(folder);
        var rejected = new Problem(
                ProblemCode.NOT_A_NUMBER,
                new Where("monday.csv", 12, 4, "torque"),
                "'12,3,4' is no number",
                "a number",
                "export it again");
        try (var importer = archive.importer(STAMP, SPECIFICATION)) {
            var file = file("monday.csv");
            importer.source(file);
            importer.trace(trace(file, 1, 1));
            importer.problem(rejected);
            importer.commit();
        }
        try (var query = archive.query()) {
            assertEquals(
                    List.of(rejected),
                    query.problems().value().orElseThrow().stream()
                            .map(Kept::value)
                            .toList());
        }
    }

    @Test
    void a_folder_of_other_things_is_not_taken_for_an_archive() throws IOException {
        Files.writeString(folder.resolve("holiday.txt"), "not ours");
        assertThrows(IOException.class, () -> Archive.create(folder));
        assertThrows(IOException.class, () -> Archive.open(folder));
        assertThrows(IOException.class, () -> Archive.open(folder.resolve("nowhere")));
    }

    @Test
    void an_import_that_is_given_up_leaves_nothing() throws IOException {
        var archive = Archive.create(folder);
        try (var importer = archive.importer(STAMP, SPECIFICATION)) {
            var file = file("monday.csv");
            importer.source(file);
            importer.trace(trace(file, 1, 1));
        }
        assertEquals(List.of(), Disk.list(folder.resolve("staging")));
        assertEquals(List.of(), Disk.list(folder.resolve("batches")));
    }

    @Test
    void a_batch_may_be_read_by_whoever_may_read_any_other_folder() throws IOException {
        var archive = Archive.create(folder.resolve("archive"));
        var batch = archive.folder()
                .resolve("batches")
                .resolve(take(archive, "monday.csv", 1, 1).batch());
        var usual = Files.createDirectory(folder.resolve("usual"));
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "skipped: no POSIX permissions here");
        assertEquals(Files.getPosixFilePermissions(usual), Files.getPosixFilePermissions(batch));
    }

    private static <T> List<T> values(List<Kept<T>> kept) {
        return kept.stream().map(Kept::value).toList();
    }
}
