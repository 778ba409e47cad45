package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.judge.Judge;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/**
 * Fills an archive with as many tightenings as asked for, to measure how it bears them; no test, run by hand. A simulated
 * shift is repeated under new serials and times; each trace's angle starts elsewhere and each
 * sample's torque is moved by up to two hundredths of a newton metre,
 * so that no two traces are alike and the files pack no better than real ones. Every trace is judged.
 *
 * <pre> java -cp target/test-classes:target/tautlog.jar org.tautlog.archive.MillionTightenings DIR TIGHTENINGS </pre>
 */
final class MillionTightenings {
    private static final int SAMPLES = 1000;
    private static final int A_BATCH = 4000;

    private MillionTightenings() {}

    public static void main(String[] args) throws IOException {
        var archive = Archive.create(Path.of(args[0]));
        int wanted = Integer.parseInt(args[1]);
        var shift = SimulatedLine.of(64, 2).tightenings().toList();
        var specification = FenwaterEngine.specification();
        var used = new SpecificationUsed(
                specification.name(), specification.version(), SpecificationFile.write(specification));
        long start = System.nanoTime();
        for (int done = 0; done < wanted; ) {
            var file = "made-" + done + ".csv";
            var source = new SourceFile(file, Disk.sha256(file.getBytes(StandardCharsets.UTF_8)));
            var stamp = new Stamp("measured", OffsetDateTime.parse("2026-03-02T14:10:00+01:00"));
            try (var importer = archive.importer(stamp, used)) {
                importer.source(source);
                for (int i = 0; i < A_BATCH && done < wanted; i++, done++) {
                    var trace = trace(shift, done, source);
                    importer.trace(trace);
                    importer.judgement(Judge.judge(trace, specification));
                }
                importer.commit();
            }
            System.out.printf(
                    Locale.ROOT, "%d kept, %.0f a second%n", done, done / ((System.nanoTime() - start) / 1e9));
        }
    }

    private static Trace trace(List<SimulatedTightening> shift, int number, SourceFile source) {
        var base = shift.get(number % shift.size()).trace();
        int round = number / shift.size();
        var identity = base.identity();
        int engine = Integer.parseInt(identity.serial().substring(3)) + 64 * round;
        var time = identity.time();
        return new Trace(
                new TraceIdentity(
                        String.format(Locale.ROOT, "FW-%07d", engine),
                        identity.station(),
                        identity.spindle(),
                        identity.bolt(),
                        identity.attempt(),
                        time == null ? null : time.plusHours(8L * round),
                        identity.boltLot()),
                new Source(source.file(), 1 + number % A_BATCH, source.sha256()),
                moved(base.curve(), number));
    }

    private static Curve moved(Curve curve, long number) {
        int n = Math.min(SAMPLES, curve.size());
        var angle = new double[n];
        var torque = new double[n];
        var time = new double[n];
        long state = number * 0x9E3779B97F4A7C15L + 1;
        for (int k = 0; k < n; k++) {
            int i = (int) Math.round(k * (curve.size() - 1.0) / (n - 1));
            state = state * 6364136223846793005L + 1442695040888963407L;
            angle[k] = curve.angleDeg(i) + number % 977 / 10.0;
            torque[k] = Math.round(100 * curve.torqueNm(i) + (int) (state >>> 62) - 1.5) / 100.0;
            time[k] = curve.hasTime() ? curve.timeS(i) : 0;
        }
        var moved = Curve.of(angle, torque);
        return curve.hasTime() ? moved.withTimeS(time) : moved;
    }
}
