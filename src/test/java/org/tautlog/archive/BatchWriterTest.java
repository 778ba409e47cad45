package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.SPECIFICATION;
import static org.tautlog.archive.Tightenings.STAMP;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.table.TraceTable;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/** What is more than the engine can sort at once goes into several files. */
class BatchWriterTest {
    @TempDir
    Path folder;

    @Test
    void a_shift_of_thousands_of_tightenings_fits_into_the_engines_memory() throws IOException {
        var archive = Archive.create(folder);
        var curve = curveOf(700);
        int tightenings = 4_500;
        try (var importer = archive.importer(STAMP, SPECIFICATION)) {
            var file = Tightenings.file("monday.csv");
            importer.source(file);
            for (int i = 0; i < tightenings; i++) {
                var small = Tightenings.trace(file, i / 8, 1 + i % 8);
                importer.trace(new Trace(small.identity(), small.source(), curve));
                importer.judgement(Tightenings.judgement(small, SPECIFICATION));
            }
            importer.commit();
        }
        var batch = Snapshot.of(ArchiveFolder.open(folder)).batches().get(0);
        assertEquals(
                2,
                batch.manifest().files().stream()
                        .filter(file -> file.table().equals("traces"))
                        .count());
        assertEquals(tightenings, batch.manifest().rows("traces"));
        assertEquals(tightenings, batch.manifest().rows("judgements"));
        try (var query = archive.query()) {
            assertEquals(8, query.traces("FW-000001").value().orElseThrow().size());
        }
    }

    @Test
    void a_merge_splits_between_engines_whatever_their_serials_look_like() throws IOException {
        var archive = Archive.create(folder.resolve("archive"));
        var serials = List.of("'; DROP TABLE traces; --", "0\0001", "\uD83D\uDD29", "FW-000001", "it's");
        for (int i = 0; i < serials.size(); i++) {
            try (var importer = archive.importer(STAMP, SPECIFICATION)) {
                var file = Tightenings.file("file-" + i);
                importer.source(file);
                importer.trace(Tightenings.trace(file, serials.get(i), i, 1));
                importer.trace(Tightenings.trace(file, serials.get(i), i, 2));
                importer.commit();
            }
        }
        var batches = Snapshot.of(ArchiveFolder.open(archive.folder())).batches();
        var into = Files.createDirectory(folder.resolve("merged"));
        try (var writer = new BatchWriter(into, "merged", 300)) {
            writer.copy(TraceTable.table(), batches);
            assertEquals(serials.size(), writer.files().size());
            assertTrue(
                    writer.files().stream().allMatch(file -> file.rows() == 2 && serials.contains(file.lastSerial())));
        }
    }

    private static Curve curveOf(int samples) {
        var angles = new double[samples];
        var torques = new double[samples];
        for (int i = 0; i < samples; i++) {
            angles[i] = i / 4.0;
            torques[i] = i / 8.0;
        }
        return Curve.of(angles, torques);
    }
}
