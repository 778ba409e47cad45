package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.archive.Archive;
import org.tautlog.archive.Imported;
import org.tautlog.archive.Importer;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.Stamp;
import org.tautlog.archive.table.Kept;
import org.tautlog.cli.logs.Judging;
import org.tautlog.cli.logs.JudgingRequest;
import org.tautlog.intake.ReadSummary;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

/** One pass over logs: judged and kept. Files that change meanwhile keep the whole import from counting. */
public final class ImportRun {
    /**
     * What a run leaves behind.
     *
     * @param imported what the archive kept
     * @param read what was read and rejected
     */
    public record Result(Imported imported, ReadSummary read) {}

    private final Importer importer;
    private final Map<String, Path> read = new LinkedHashMap<>();

    private ImportRun(Importer importer) {
        this.importer = importer;
    }

    /**
     * Judges some logs and keeps all of it as one batch.
     *
     * @param request the logs and the specification
     * @param archive the archive
     * @param stamp who writes, and when
     * @param err the error output
     * @return what was kept and read; where no trace could be read, what was rejected is kept
     * @throws IOException if it cannot be kept, or a log changed meanwhile; nothing of the run is kept then
     */
    public static Result run(JudgingRequest request, Archive archive, Stamp stamp, PrintWriter err) throws IOException {
        try (var importer = archive.importer(stamp, specification(request))) {
            var run = new ImportRun(importer);
            var summary = Judging.look(request, err, run::keep);
            if (summary.traces().kept() > 0) {
                summary.problems().forEach(importer::problem);
            } else {
                run.keepRejections(summary, archive);
            }
            summary.assumptions().forEach(importer::problem);
            run.refuseChanged();
            return new Result(importer.commit(), summary);
        }
    }

    /** Where no trace came of it, the archive is all that remembers; once is enough. */
    private void keepRejections(ReadSummary summary, Archive archive) throws IOException {
        try (var query = archive.query()) {
            var known = query.problems().value().orElse(List.of()).stream()
                    .map(Kept::value)
                    .collect(Collectors.toSet());
            for (var problem : summary.problems()) {
                if (!known.contains(problem)) {
                    importer.rejection(problem);
                }
            }
        }
    }

    private static SpecificationUsed specification(JudgingRequest request) throws IOException {
        var stated = request.specification();
        return new SpecificationUsed(stated.name(), stated.version(), Files.readString(request.specificationFile()));
    }

    private void keep(Judgement judgement, Curve curve) {
        try {
            var source = judgement.source();
            if (!read.containsKey(source.sha256())) {
                var file = fileOf(source);
                read.put(source.sha256(), file);
                importer.source(new SourceFile(file.toString(), source.sha256()));
            }
            importer.trace(new Trace(judgement.identity(), source, curve));
            importer.judgement(judgement);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A log that its station still writes would be kept cut off, under the hash of something else. */
    private void refuseChanged() throws IOException {
        for (var one : read.entrySet()) {
            if (!Archive.sha256(one.getValue()).equals(one.getKey())) {
                throw new IOException(one.getValue() + " changed while it was read; nothing was kept:"
                        + " import again when nothing writes to it");
            }
        }
    }

    /** The file on the disk: without the entry's name where the trace came out of a packed file. */
    private static Path fileOf(Source source) {
        var name = source.file();
        for (int mark = name.indexOf('!'); mark > 0; mark = name.indexOf('!', mark + 1)) {
            if (Files.isRegularFile(Path.of(name.substring(0, mark)))) {
                return Path.of(name.substring(0, mark));
            }
        }
        return Path.of(name);
    }
}
