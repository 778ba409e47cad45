package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;
import net.jqwik.api.statistics.Statistics;
import org.tautlog.archive.Archive;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.JudgementFilter;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.Stamp;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.MadeShift;
import org.tautlog.review.stream.Stream;
import org.tautlog.signature.Feature;
import org.tautlog.signature.FinalPoint;
import org.tautlog.signature.Signature;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/** What a containment finds reading in brief, spindle by spindle, is what it finds among all whole judgements. */
class ContainmentOfArchiveLaws {
    private static final Stamp STAMP = new Stamp("0.1.0", OffsetDateTime.parse("2026-03-17T14:10:00+01:00"));
    private static final FindingCode[] CODES = {
        FindingCode.WEAK_BOLT, FindingCode.TURN_SHORT, FindingCode.FINAL_TORQUE_HIGH
    };
    private static final int ENGINES = 48;

    private Path folder = Path.of("");

    @BeforeTry
    void begin() throws IOException {
        folder = Files.createTempDirectory("containment");
    }

    @AfterTry
    void clear() throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Property(tries = 6)
    void reading_in_brief_changes_no_containment(@ForAll long seed) throws IOException {
        var random = new SplittableRandom(seed);
        var archive = made(random);
        int compared = 0;
        try (var query = archive.query()) {
            compared += compared(query, Duration.ZERO);
            compared += compared(query, Duration.ofMinutes(3));
        }
        assertTrue(compared > 10, compared + " containments were compared");
    }

    /** A file whose footer names its writer otherwise has rows that are as they were kept. */
    @Property(tries = 2)
    void an_altered_file_is_read_row_by_row_with_the_same_answer(@ForAll long seed) throws IOException {
        var archive = made(new SplittableRandom(seed));
        alterAByteOfTheFirstFile();
        try (var query = archive.query()) {
            assertTrue(compared(query, Duration.ZERO) > 5, "containments were compared");
        }
    }

    private void alterAByteOfTheFirstFile() throws IOException {
        Path file;
        try (var files = Files.walk(folder)) {
            file = files.filter(path -> path.getFileName().toString().startsWith("judgements"))
                    .findFirst()
                    .orElseThrow();
        }
        var bytes = Files.readAllBytes(file);
        var writer = new String(bytes, StandardCharsets.ISO_8859_1).lastIndexOf("DuckDB");
        assertTrue(writer > 0, "the footer names its writer");
        bytes[writer] = 'd';
        Files.write(file, bytes);
    }

    private static int compared(ArchiveQuery query, Duration clockMargin) throws IOException {
        var used = query.specifications().value().orElseThrow();
        var found = query.judgements(JudgementFilter.everything()).value().orElseThrow();
        var whole = new MadeStanding(StandingJudgements.of(found, used));
        var brief = new ArchivedStanding(query, used);
        var expected = all(whole, clockMargin);
        assertEquals(expected, all(brief, clockMargin));
        assertEquals(List.of(), brief.problems());
        Statistics.label("a level moved")
                .collect(expected.stream().anyMatch(one -> one.change().isPresent()));
        var contained = expected.stream()
                .flatMap(one -> one.contained().stream())
                .flatMap(one -> one.judgement().stream())
                .distinct()
                .toList();
        for (var one : brief.whole(contained).entrySet()) {
            assertEquals(one.getKey(), BriefJudgement.of(one.getValue()));
        }
        assertEquals(contained.size(), brief.whole(contained).size());
        return expected.size();
    }

    private static List<Containment> all(StandingSearch standing, Duration clockMargin) throws IOException {
        var bracketing = new Bracketing(standing, clockMargin);
        var lots = new BoltLots(standing, clockMargin);
        var found = new ArrayList<Containment>();
        for (var code : CODES) {
            for (var stream : standing.streamsWith(code)) {
                bracketing.around(stream, code, one -> one.shows(code)).ifPresent(found::add);
            }
            found.addAll(lots.lotsWith(code, found));
        }
        for (var suspect : standing.ofEngine("FW-24")) {
            bracketing
                    .around(Stream.of(suspect.identity()), null, suspect::equals)
                    .ifPresent(found::add);
        }
        lots.of("A17").ifPresent(found::add);
        return found;
    }

    private Archive made(SplittableRandom random) throws IOException {
        var archive = Archive.create(folder.resolve("evidence"));
        var judgements = new ArrayList<Judgement>();
        for (int engine = 0; engine < ENGINES; engine++) {
            for (int place = 0; place < 4; place++) {
                if (random.nextInt(12) > 0) {
                    judgements.add(judgement(random, engine, place, judgements.size() + 1, "1"));
                }
            }
        }
        keep(archive, "1", judgements);
        keep(
                archive,
                "2",
                judgements.stream()
                        .filter(one -> random.nextInt(3) == 0)
                        .map(one -> judged(random, one, "2"))
                        .toList());
        return archive;
    }

    private static void keep(Archive archive, String version, List<Judgement> judgements) throws IOException {
        var specification = new SpecificationUsed(
                "Fenwater head bolt", version, "name = \"Fenwater head bolt\"\nversion = \"" + version + "\"\n");
        try (var importer = archive.importer(STAMP, specification)) {
            importer.source(file());
            for (var judgement : judgements) {
                importer.judgement(judgement);
            }
            importer.commit();
        }
    }

    private static SourceFile file() {
        return new SourceFile("shift.csv", "a".repeat(64));
    }

    private static Judgement judgement(SplittableRandom random, int engine, int place, int line, String version) {
        var time = OffsetDateTime.parse("2026-03-17T06:00:00+01:00")
                .plusMinutes(engine)
                .plusSeconds(place);
        var like = MadeShift.named("FW", 360).judgement();
        var signature = like.signature();
        double torque = 80 + random.nextDouble() + (engine < ENGINES / 3 ? 0 : 4);
        var moved = new Signature(
                signature.samples(),
                signature.prevailingTorqueNm(),
                signature.snug(),
                signature.elastic(),
                signature.onset(),
                new FinalPoint(
                        signature.end().angleDeg(),
                        Feature.of(torque, 0.1),
                        Feature.of(torque, 0.1),
                        signature.end().turnDeg()),
                signature.marks());
        var identity = new TraceIdentity(
                "FW-" + engine,
                place < 2 ? "S40" : "S50",
                place % 2 == 0 ? "1" : "2",
                String.valueOf(place),
                random.nextInt(20) == 0 ? 2 : 1,
                random.nextInt(200) == 0 ? null : time,
                random.nextInt(4) == 0 ? "" : engine < ENGINES / 2 ? "A17" : "A18");
        return judged(
                random,
                new Judgement(
                        identity,
                        new Source(file().file(), line, file().sha256()),
                        like.specificationName(),
                        version,
                        moved,
                        Verdict.CONFORMING,
                        List.of()),
                version);
    }

    /** The same recording under a verdict of its own, seldom a bad one. */
    private static Judgement judged(SplittableRandom random, Judgement like, String version) {
        var code = CODES[random.nextInt(CODES.length)];
        int lot = random.nextInt(16);
        var severity = lot == 0 ? Consequence.NONCONFORMING : Consequence.NOTE;
        return new Judgement(
                like.identity(),
                like.source(),
                "Fenwater head bolt",
                version,
                like.signature(),
                lot == 0 ? Verdict.NONCONFORMING : Verdict.CONFORMING,
                lot < 4 ? List.of(new Finding(code, severity, null, null, "", code.title())) : List.of());
    }
}
