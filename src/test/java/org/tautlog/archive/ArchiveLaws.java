package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.SPECIFICATION;
import static org.tautlog.archive.Tightenings.STAMP;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.table.Kept;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/** What is read is what was written, whatever a serial looks like and however many digits a sample has. */
class ArchiveLaws {
    private static final SourceFile FILE = Tightenings.file("any.csv");

    @Property(tries = 8)
    void a_trace_comes_back_as_it_went_in(@ForAll("traces") @Size(min = 1, max = 12) List<Trace> traces)
            throws IOException {
        var folder = Files.createTempDirectory("archive");
        try {
            var archive = Archive.create(folder);
            try (var importer = archive.importer(STAMP, SPECIFICATION)) {
                importer.source(FILE);
                for (var trace : traces) {
                    importer.trace(trace);
                }
                importer.commit();
            }
            var back = new ArrayList<Trace>();
            try (var query = archive.query()) {
                assertEquals(List.of(), query.everyTrace(kept -> back.add(kept.value())));
                assertEquals(new HashSet<>(traces), new HashSet<>(back));
                var serial = traces.get(0).identity().serial();
                var found = query.traces(serial).value().orElseThrow().stream()
                        .map(Kept::value)
                        .toList();
                assertTrue(found.contains(traces.get(0)), () -> "serial '" + serial + "' is not found");
            }
        } finally {
            Disk.delete(folder);
        }
    }

    /** Batches overlap in time and in serials here, and some tightenings have no time. */
    @Property(tries = 8)
    void the_traces_of_judgements_are_those_that_a_plain_look_at_every_trace_finds(
            @ForAll("traces") @Size(min = 3, max = 24) List<Trace> traces, @ForAll long choice) throws IOException {
        var folder = Files.createTempDirectory("archive");
        try {
            var archive = Archive.create(folder);
            var chosen = new ArrayList<Judgement>();
            for (int batch = 0; batch < 3; batch++) {
                try (var importer = archive.importer(STAMP, SPECIFICATION)) {
                    var file = Tightenings.file("file-" + batch);
                    importer.source(file);
                    for (int i = batch; i < traces.size(); i += 3) {
                        var source = new Source(file.file(), 1 + i, file.sha256());
                        var trace = new Trace(
                                traces.get(i).identity(), source, traces.get(i).curve());
                        importer.trace(trace);
                        if ((choice >> i & 1) == 1) {
                            chosen.add(Tightenings.judgement(trace, SPECIFICATION));
                        }
                    }
                    importer.commit();
                }
            }
            var expected = new HashSet<Trace>();
            try (var query = archive.query()) {
                query.everyTrace(kept -> {
                    if (chosen.stream()
                            .anyMatch(one -> one.source().equals(kept.value().source()))) {
                        expected.add(kept.value());
                    }
                });
                var found = query.traces(chosen.stream().map(BriefJudgement::of).toList())
                        .value()
                        .orElseThrow();
                assertEquals(chosen.size(), found.size());
                assertEquals(
                        expected, new HashSet<>(found.stream().map(Kept::value).toList()));
            }
        } finally {
            Disk.delete(folder);
        }
    }

    @Property(tries = 8)
    void a_judgement_comes_back_as_it_went_in(@ForAll("judgements") @Size(min = 1, max = 12) List<Judgement> judgements)
            throws IOException {
        var folder = Files.createTempDirectory("archive");
        try {
            var archive = Archive.create(folder);
            try (var importer = archive.importer(STAMP, SPECIFICATION)) {
                importer.source(FILE);
                for (var judgement : judgements) {
                    importer.judgement(judgement);
                }
                importer.commit();
            }
            try (var query = archive.query()) {
                var found = query.judgements(JudgementFilter.everything());
                assertEquals(List.of(), found.problems());
                var back = new HashSet<Judgement>();
                found.value()
                        .orElseThrow()
                        .forEach(kept -> back.add(kept.value().judgement()));
                assertEquals(new HashSet<>(judgements), back);
            }
        } finally {
            Disk.delete(folder);
        }
    }

    @Provide
    Arbitrary<List<Trace>> traces() {
        return Combinators.combine(identities(), curves())
                .as((identity, curve) -> new Trace(identity, source(), curve))
                .list();
    }

    @Provide
    Arbitrary<List<Judgement>> judgements() {
        var texts = texts();
        return Combinators.combine(
                        identities(),
                        signatures(),
                        Arbitraries.of(Verdict.values()),
                        findings().list().ofMaxSize(4),
                        texts,
                        texts)
                .as((identity, signature, verdict, findings, name, version) ->
                        new Judgement(identity, source(), name, version, signature, verdict, findings))
                .list();
    }

    private static Source source() {
        return new Source(FILE.file(), 7, FILE.sha256());
    }

    /** Whole characters only: half of a surrogate pair cannot come out of a file that is text. */
    private static Arbitrary<String> texts() {
        var hostile = Arbitraries.of(
                "",
                "'",
                "\"",
                "'; DROP TABLE traces; --",
                "../../etc/passwd",
                "<script>alert(1)</script>",
                "a\nb",
                "a\0b",
                "%_*?[",
                "\\",
                "NULL",
                "0001",
                " 1",
                "ä\u00a0→\uD83D\uDD29",
                "\u202Eoneerf",
                "?",
                "$1");
        var any = Arbitraries.strings().all().ofMaxLength(12).filter(ArchiveLaws::isWhole);
        return Arbitraries.oneOf(
                hostile, any, Arbitraries.strings().alpha().numeric().ofMaxLength(8));
    }

    private static boolean isWhole(String text) {
        return text.codePoints().noneMatch(point -> point >= 0xD800 && point <= 0xDFFF);
    }

    private static Arbitrary<TraceIdentity> identities() {
        var texts = texts();
        return Combinators.combine(
                        texts.filter(text -> !text.isBlank()),
                        texts,
                        texts,
                        texts,
                        Arbitraries.integers().between(1, Integer.MAX_VALUE),
                        times().injectNull(0.2),
                        texts)
                .as(TraceIdentity::new);
    }

    private static Arbitrary<OffsetDateTime> times() {
        return Combinators.combine(
                        Arbitraries.longs().between(-62_167_219_200L, 253_402_300_799L),
                        Arbitraries.integers().between(0, 999_999_999),
                        Arbitraries.integers().between(-18 * 3600, 18 * 3600))
                .as((second, nano, offset) -> OffsetDateTime.ofInstant(
                        Instant.ofEpochSecond(second, nano), ZoneOffset.ofTotalSeconds(offset)));
    }

    private static Arbitrary<Double> numbers() {
        return Arbitraries.oneOf(
                        Arbitraries.doubles().ofScale(6),
                        Arbitraries.doubles().between(-1000, 1000).ofScale(3),
                        Arbitraries.of(Double.MIN_VALUE, Double.MAX_VALUE, 0.1 + 0.2, 1 / 3.0, 0.0))
                .map(number -> number == 0 ? 0.0 : number);
    }

    private static Arbitrary<Curve> curves() {
        var samples = numbers().array(double[].class).ofMinSize(1).ofMaxSize(30);
        return Combinators.combine(samples, Arbitraries.integers().between(0, 3), Arbitraries.integers())
                .as((values, extras, stage) -> {
                    var reversed = values.clone();
                    for (int i = 0; i < values.length; i++) {
                        reversed[i] = values[values.length - 1 - i];
                    }
                    var curve = Curve.of(values, reversed);
                    curve = extras % 2 == 1 ? curve.withTimeS(values) : curve;
                    var stages = new int[values.length];
                    Arrays.fill(stages, stage);
                    return extras >= 2 ? curve.withStages(stages) : curve;
                });
    }

    private static Arbitrary<Feature> features() {
        return Arbitraries.oneOf(
                Combinators.combine(numbers(), numbers().map(Math::abs)).as(Feature::of),
                texts().filter(text -> !text.isBlank()).map(Feature::missing));
    }

    /** Made part by part of whatever parts a signature has, so that none can be forgotten by the columns. */
    private static Arbitrary<Signature> signatures() {
        return Combinators.combine(
                        features().list().ofSize(80),
                        Arbitraries.integers().between(1, 99_000),
                        Arbitraries.of(0, 1, 2))
                .as((features, count, choice) ->
                        new Parts(new ArrayDeque<>(features), count, choice).record(Signature.class));
    }

    /** Makes records of numbered parts; the bounds of an estimate lie about it, as it asks for. */
    private static final class Parts {
        private final ArrayDeque<Feature> features;
        private final int choice;
        private int count;

        Parts(ArrayDeque<Feature> features, int count, int choice) {
            this.features = features;
            this.count = count;
            this.choice = choice;
        }

        <T> T record(Class<T> type) {
            var parts = Stream.of(type.getRecordComponents()).map(this::part).toArray();
            var types = Stream.of(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            try {
                return type.getDeclaredConstructor(types).newInstance(parts);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("a new kind of part in " + type, e);
            }
        }

        private Object part(RecordComponent component) {
            var type = component.getType();
            count++;
            if (type == Feature.class) {
                var name = component.getName();
                return name.startsWith("low")
                        ? Feature.of(-count, 1)
                        : name.startsWith("load") || name.startsWith("high") ? Feature.of(count, 0) : features.remove();
            }
            if (type.isEnum()) {
                return type.getEnumConstants()[(count + choice) % type.getEnumConstants().length];
            }
            if (type == boolean.class) {
                return (count + choice) % 2 == 0;
            }
            return type == int.class ? (Object) count : record(type);
        }
    }

    private static Arbitrary<Finding> findings() {
        Arbitrary<@Nullable Double> perhaps = numbers().injectNull(0.3);
        return Combinators.combine(
                        Arbitraries.of(FindingCode.values()),
                        Arbitraries.of(Consequence.values()),
                        perhaps,
                        perhaps,
                        texts(),
                        texts().filter(text -> !text.isBlank()))
                .as(Finding::new);
    }
}
