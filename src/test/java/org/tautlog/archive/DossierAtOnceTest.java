package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.judge.Judge;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.report.evidence.DossierJson;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.evidence.DossierReader;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

class DossierAtOnceTest {
    /** Enough of them that each bolt position learns its envelope. */
    private static final int ENGINES = 32;

    @TempDir
    private Path folder;

    @Test
    void a_dossier_read_at_once_is_that_read_one_after_the_other() throws Exception {
        var serial = fill();

        var oneAfterTheOther = dossier(serial, 1, false);

        assertTrue(oneAfterTheOther.contains("\"peers\":"), "no envelope was learned: " + oneAfterTheOther);
        assertEquals(oneAfterTheOther, dossier(serial, 4, true));
    }

    private String fill() throws IOException {
        var specification = FenwaterEngine.specification();
        var used = new SpecificationUsed(
                specification.name(), specification.version(), SpecificationFile.write(specification));
        var tightenings = SimulatedLine.of(ENGINES, 2).tightenings().toList();
        try (var importer = Archive.create(folder).importer(Tightenings.STAMP, used)) {
            var file = Tightenings.file("made.csv");
            importer.source(file);
            int line = 0;
            for (var tightening : tightenings) {
                var made = tightening.trace();
                var trace = new Trace(made.identity(), new Source(file.file(), ++line, file.sha256()), made.curve());
                importer.trace(trace);
                importer.judgement(Judge.judge(trace, specification));
            }
            importer.commit();
        }
        return tightenings.get(tightenings.size() / 2).trace().identity().serial();
    }

    /** Streams that are called parallel run in the pool that calls them. */
    private String dossier(String serial, int threads, boolean engineMeanwhile)
            throws ExecutionException, InterruptedException {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> {
                        try (var query = Archive.open(folder).query()) {
                            if (engineMeanwhile) {
                                query.startMeanwhile();
                            }
                            var used = query.specifications().value().orElseThrow();
                            var one = used.get(0);
                            var readable = Map.of(
                                    one.sha256(),
                                    SpecificationFile.read(one.text(), one.name())
                                            .value()
                                            .orElseThrow());
                            var dossier = DossierReader.read(query, used, readable, List.of(), serial)
                                    .orElseThrow();
                            return DossierJson.of(dossier, new Provenance("test", Tightenings.SHIFT_START, ""));
                        }
                    })
                    .get();
        } finally {
            pool.shutdown();
        }
    }
}
