package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.ArchiveChild.ENGINES_A_FILE;
import static org.tautlog.archive.Tightenings.take;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several readers and writers work at once, in one process and in several. */
class ManyAtOnceTest {
    private static final int FILES = 3;
    private static final int READERS = 10;

    @TempDir
    Path folder;

    @Test
    void two_processes_that_import_the_same_files_leave_each_once_while_a_reader_reads() throws Exception {
        var command = ArchiveChild.command("import", folder.toString(), "0", String.valueOf(FILES));
        Archive.create(folder);
        var children = List.of(
                new ProcessBuilder(command).redirectErrorStream(true).start(),
                new ProcessBuilder(command).redirectErrorStream(true).start());
        int looks = 0;
        int before = 0;
        try (var query = Archive.open(folder).query()) {
            while (children.stream().anyMatch(Process::isAlive)) {
                var counts = query.counts();
                assertEquals(List.of(), counts.problems());
                int now = counts.value().orElseThrow().traces();
                assertTrue(now >= before, "a reader saw fewer traces than before");
                assertEquals(0, now % (ENGINES_A_FILE * 8), "a reader saw half an import");
                before = now;
                looks++;
            }
        }
        for (var child : children) {
            var said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(0, child.waitFor(), said);
        }
        assertTrue(looks > 1, "the reader looked " + looks + " times");
        try (var query = Archive.open(folder).query()) {
            var counts = query.counts().value().orElseThrow();
            assertEquals(FILES, counts.sources());
            assertEquals(FILES * ENGINES_A_FILE * 8, counts.traces());
            assertEquals(2 * FILES, counts.decisions());
        }
        assertEquals(List.of(), Archive.open(folder).verify().problems());
    }

    @Test
    void imports_of_the_same_bytes_in_one_process_keep_them_once() throws Exception {
        var archive = Archive.create(folder);
        Callable<Imported> job = () -> take(archive, "monday.csv", 1, 2);
        var pool = Executors.newFixedThreadPool(4);
        try {
            var done = pool.invokeAll(IntStream.range(0, 4).mapToObj(i -> job).toList());
            int changed = 0;
            for (var one : done) {
                changed += one.get().changedNothing() ? 0 : 1;
            }
            assertEquals(1, changed, "imports that kept something");
        } finally {
            pool.shutdown();
        }
        assertEquals(List.of(), archive.verify().problems());
        assertEquals(List.of(), Disk.list(folder.resolve("staging")));
    }

    @Test
    void ten_readers_beside_a_writer_see_whole_imports_and_never_fewer() throws Exception {
        var archive = Archive.create(folder);
        take(archive, "file-0", 0, 1);
        var writing = new AtomicBoolean(true);
        var pool = Executors.newFixedThreadPool(READERS);
        Callable<Integer> reader = () -> {
            int looks = 0;
            int before = 0;
            do {
                try (var query = Archive.open(folder).query()) {
                    var found = query.judgements(JudgementFilter.everything());
                    int now = found.value().orElseThrow().size();
                    assertEquals(List.of(), found.problems());
                    assertEquals(
                            8, query.traces("FW-000000").value().orElseThrow().size());
                    assertTrue(now >= before && now % 8 == 0, now + " judgements after " + before);
                    before = now;
                    looks++;
                }
            } while (writing.get());
            return looks;
        };
        try {
            var readers = IntStream.range(0, READERS)
                    .mapToObj(i -> pool.submit(reader))
                    .toList();
            for (int file = 1; file <= FILES; file++) {
                take(archive, "file-" + file, file, 1);
            }
            archive.tidy(Tightenings.STAMP);
            writing.set(false);
            for (var one : readers) {
                assertTrue(one.get() > 0, "a reader that never looked");
            }
        } finally {
            writing.set(false);
            pool.shutdown();
        }
        assertEquals(List.of(), archive.verify().problems());
    }

    @Test
    void answers_stay_the_same_while_batches_are_merged_beneath_them() throws Exception {
        var archive = Archive.create(folder);
        for (int file = 0; file < 5; file++) {
            take(archive, "file-" + file, file, 1);
        }
        var pool = Executors.newFixedThreadPool(2);
        try (var query = archive.query()) {
            var expected = query.judgements(JudgementFilter.everything());
            var tidying = pool.submit(() -> archive.tidy(Tightenings.STAMP));
            while (!tidying.isDone()) {
                assertEquals(expected, query.judgements(JudgementFilter.everything()));
            }
            assertEquals(5, tidying.get().merged());
            assertEquals(expected, query.judgements(JudgementFilter.everything()));
        } finally {
            pool.shutdown();
        }
    }
}
