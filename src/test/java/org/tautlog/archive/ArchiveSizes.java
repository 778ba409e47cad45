package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Predicate;
import org.tautlog.intake.LogWriter;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.judge.Judge;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

/**
 * How large an archive's files are beside the same traces as tables, plain and through gzip; no test, run by hand.
 *
 * <pre> java -cp target/test-classes:target/tautlog.jar org.tautlog.archive.ArchiveSizes DIR ENGINES </pre>
 */
final class ArchiveSizes {
    private ArchiveSizes() {}

    public static void main(String[] args) throws IOException {
        var folder = Files.createDirectories(Path.of(args[0]));
        var plain = folder.resolve("traces.csv");
        var packed = folder.resolve("traces.csv.gz");
        var tightest = folder.resolve("rows.csv.gz");
        var file = Tightenings.file("traces.csv");
        var specification = FenwaterEngine.specification();
        var archive = Archive.create(folder.resolve("archive"));
        long samples = 0;
        try (var importer = archive.importer(Tightenings.STAMP, Tightenings.specification("1"));
                var plainly = LogWriter.open(plain, LogShape.LONG_TABLE, Packing.PLAIN);
                var inGzip = LogWriter.open(packed, LogShape.LONG_TABLE, Packing.GZIP);
                var rowEach = LogWriter.open(tightest, LogShape.ROW_PER_TRACE, Packing.GZIP)) {
            importer.source(file);
            for (var one : (Iterable<SimulatedTightening>)
                    SimulatedLine.of(Integer.parseInt(args[1]), 2).tightenings()::iterator) {
                var trace = new Trace(
                        one.trace().identity(),
                        new Source(file.file(), (int) (1 + samples), file.sha256()),
                        one.trace().curve());
                plainly.write(trace);
                inGzip.write(trace);
                rowEach.write(trace);
                importer.trace(trace);
                importer.judgement(Judge.judge(trace, specification));
                samples += trace.curve().size();
            }
            System.out.printf(Locale.ROOT, "%d traces, %d samples%n", plainly.written(), samples);
            importer.commit();
        }
        say("long table", Files.size(plain), samples);
        say("the same through gzip", Files.size(packed), samples);
        say("a row a trace, gzip", Files.size(tightest), samples);
        say("traces in the archive", bytes(archive, name -> name.startsWith("traces")), samples);
        say("whole archive", bytes(archive, name -> true), samples);
    }

    private static long bytes(Archive archive, Predicate<String> counts) throws IOException {
        long bytes = 0;
        try (var paths = Files.walk(archive.folder())) {
            for (var path : paths.filter(Files::isRegularFile).toList()) {
                bytes += counts.test(path.getFileName().toString()) ? Files.size(path) : 0;
            }
        }
        return bytes;
    }

    private static void say(String what, long bytes, long samples) {
        System.out.printf(Locale.ROOT, "%-24s %12d bytes, %5.2f a sample%n", what, bytes, (double) bytes / samples);
    }
}
