package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.Archive;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.Stamp;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.shape.Landmarks;
import org.tautlog.review.stream.Levels;
import org.tautlog.signature.ElasticLine;
import org.tautlog.signature.EndState;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SnugPoint;
import org.tautlog.trace.Source;

/** What a few columns say of a tightening is what its whole judgement says. */
class NeighboursOfArchiveTest {
    private static final Stamp STAMP = new Stamp("0.1.0", OffsetDateTime.parse("2026-03-17T14:10:00+01:00"));
    private static final SourceFile FILE = new SourceFile("shift.csv", "a".repeat(64));
    private static final SpecificationUsed SPECIFICATION =
            new SpecificationUsed("Fenwater head bolt", "1", "name = \"Fenwater head bolt\"\nversion = \"1\"\n");

    @TempDir
    private Path folder = Path.of("");

    private final List<Judgement> kept = new ArrayList<>();

    @BeforeEach
    void keep() throws IOException {
        for (int engine = 1; engine <= 3; engine++) {
            var like = EvidenceMade.judgement(engine, "1", 1, Verdict.CONFORMING, EndState.PLASTIC);
            kept.add(new Judgement(
                    like.identity(),
                    new Source(FILE.file(), engine, FILE.sha256()),
                    SPECIFICATION.name(),
                    SPECIFICATION.version(),
                    engine == 2 ? withoutLine(like.signature()) : like.signature(),
                    like.verdict(),
                    like.findings()));
        }
        try (var importer = Archive.create(folder).importer(STAMP, SPECIFICATION)) {
            importer.source(FILE);
            for (var judgement : kept) {
                importer.judgement(judgement);
            }
            importer.commit();
        }
    }

    @Test
    void neighbours_are_what_whole_judgements_say_missing_features_too() throws IOException {
        assertEquals(kept.stream().map(NeighboursOfArchiveTest::whole).toList(), between(null, null));
    }

    @Test
    void a_range_of_time_takes_its_beginning_and_leaves_out_its_end() throws IOException {
        var second = kept.get(1).identity().time();
        assertEquals(
                List.of(whole(kept.get(1))),
                between(second, kept.get(2).identity().time()));
        assertEquals(List.of(whole(kept.get(0))), between(null, second));
    }

    private List<Neighbour> between(OffsetDateTime from, OffsetDateTime before) throws IOException {
        try (var query = Archive.open(folder).query()) {
            return new ArchivedStanding(query, query.specifications().value().orElseThrow()).between(from, before);
        }
    }

    private static Neighbour whole(Judgement judgement) {
        return new Neighbour(BriefJudgement.of(judgement), Levels.of(judgement), Landmarks.of(judgement.signature()));
    }

    private static Signature withoutLine(Signature like) {
        var missing = Feature.missing("too few samples");
        return new Signature(
                like.samples(),
                missing,
                new SnugPoint(missing, like.snug().torqueNm()),
                new ElasticLine(missing, missing, missing),
                like.onset(),
                like.end(),
                like.marks());
    }
}
