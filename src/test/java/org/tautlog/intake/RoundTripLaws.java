package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

class RoundTripLaws {
    @Property(tries = 150)
    void reading_gives_back_every_trace_that_was_written(
            @ForAll("shifts") List<Trace> written, @ForAll LogShape shape, @ForAll Packing packing) throws IOException {
        var folder = Files.createTempDirectory("tautlog");
        try {
            var target = folder.resolve("shift" + (packing == Packing.ZIP ? ".zip" : ".csv"));
            try (var writer = LogWriter.open(target, shape, packing)) {
                for (var trace : written) {
                    writer.write(trace);
                }
            }
            var read = new ArrayList<Trace>();
            var summary = LogReader.read(List.of(target), ReadOptions.withDefaults(), read::add);
            assertEquals(
                    withoutSource(written),
                    withoutSource(read),
                    () -> summary.problems().toString());
            assertEquals(written.size(), summary.traces().in());
        } finally {
            delete(folder);
        }
    }

    private static List<Trace> withoutSource(List<Trace> traces) {
        return traces.stream()
                .map(trace -> new Trace(trace.identity(), new Source("", 1, ""), trace.curve()))
                .toList();
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Provide
    Arbitrary<List<Trace>> shifts() {
        return Combinators.combine(identities(), curves())
                .as((identity, curve) -> new Trace(identity, new Source("", 1, ""), curve))
                .list()
                .ofMinSize(1)
                .ofMaxSize(6)
                .filter(RoundTripLaws::noneTwice);
    }

    /** The same identity twice is, to a reader, a recording that was exported twice or a second attempt. */
    private static boolean noneTwice(List<Trace> traces) {
        var seen = new HashSet<TraceIdentity>();
        return traces.stream().allMatch(trace -> seen.add(trace.identity()));
    }

    private static Arbitrary<TraceIdentity> identities() {
        var time = Combinators.combine(
                        Arbitraries.integers().between(0, 400_000_000),
                        Arbitraries.integers().between(-18, 18))
                .as((second, hours) -> OffsetDateTime.of(
                        LocalDateTime.of(2020, 1, 1, 0, 0).plusSeconds(second), ZoneOffset.ofHours(hours)));
        return Combinators.combine(
                        texts().filter(text -> !text.isBlank()),
                        texts(),
                        texts(),
                        texts(),
                        Arbitraries.integers().between(1, 9),
                        time.injectNull(0.2),
                        texts())
                .as(TraceIdentity::new);
    }

    /** Text that a log takes; words that mean "not read" name no engine. */
    private static Arbitrary<String> texts() {
        var awkward = Arbitraries.of(
                "=1+1", "'=1", "''", "-", "+49", "@x", "a,b", "a;b", "a|b", ",", ",x", "x,", ";", "\"q\"", "0017",
                "x: y", "ü·°");
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(8).filter(RoundTripLaws::isPlainText),
                awkward.filter(text -> !text.equals("-")),
                Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(8));
    }

    private static boolean isPlainText(String text) {
        return text.equals(text.strip())
                && text.chars()
                        .noneMatch(c -> Character.isISOControl(c) || Character.isSurrogate((char) c) || c == 0xFFFD);
    }

    private static Arbitrary<Curve> curves() {
        return Arbitraries.integers().between(1, 12).flatMap(size -> {
            var numbers = Arbitraries.doubles()
                    .between(-1e6, 1e6)
                    .ofScale(4)
                    .array(double[].class)
                    .ofSize(size);
            var stages =
                    Arbitraries.integers().between(-1, 9).array(int[].class).ofSize(size);
            return Combinators.combine(numbers, numbers, numbers.injectNull(0.3), stages.injectNull(0.3))
                    .as(RoundTripLaws::curve);
        });
    }

    private static Curve curve(double[] angle, double[] torque, double[] time, int[] stage) {
        var curve = Curve.of(angle, torque);
        curve = time == null ? curve : curve.withTimeS(time);
        return stage == null ? curve : curve.withStages(stage);
    }
}
