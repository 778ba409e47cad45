package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.Manifest.JudgedSource;
import org.tautlog.archive.table.JudgementTable;
import org.tautlog.archive.table.KeptJudgement;
import org.tautlog.archive.table.ProblemTable;
import org.tautlog.archive.table.Table;
import org.tautlog.archive.table.TraceTable;
import org.tautlog.judge.Judgement;
import org.tautlog.problem.Problem;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

/**
 * Takes traces and judgements into an archive, as one batch. Nothing counts before {@link #commit}, and then everything
 * does; closing without it leaves nothing. What is there already, byte by byte, is passed over.
 */
public final class Importer implements AutoCloseable {
    private final ArchiveFolder archive;
    private final Stamp stamp;
    private final SpecificationUsed specification;
    private final String specificationSha256;
    private final Set<String> knownSources;
    private final Set<JudgedSource> knownJudged;
    private final Map<String, SourceFile> announced = new LinkedHashMap<>();
    private final Set<String> brought = new HashSet<>();
    private final Set<JudgedSource> judged = new LinkedHashSet<>();
    private final List<Problem> problems = new ArrayList<>();
    private @Nullable Staging staging;
    private @Nullable BatchWriter writer;
    private int traces;
    private int judgements;

    Importer(ArchiveFolder archive, Stamp stamp, SpecificationUsed specification) throws IOException {
        this.archive = archive;
        this.stamp = stamp;
        this.specification = specification;
        this.specificationSha256 = specification.sha256();
        var snapshot = Snapshot.of(archive);
        this.knownSources = snapshot.sources();
        this.knownJudged = snapshot.judged();
        checkVersion();
    }

    /**
     * Announces a file whose traces or judgements follow.
     *
     * @param source the file
     * @return whether its traces are new to the archive
     */
    public boolean source(SourceFile source) {
        announced.putIfAbsent(source.sha256(), source);
        return !knownSources.contains(source.sha256());
    }

    /**
     * Keeps a trace, unless the archive has its source already.
     *
     * @param trace the trace, of a source that was announced
     * @throws IOException where it cannot be written
     */
    public void trace(Trace trace) throws IOException {
        var source = announced(trace.source());
        if (knownSources.contains(source)) {
            return;
        }
        writer().append(TraceTable.table(), trace, trace.curve().size());
        brought.add(source);
        traces++;
    }

    /**
     * Keeps a judgement, unless the archive has one of the same source by the same specification and program.
     *
     * @param judgement the judgement, of a source that was announced
     * @throws IOException where it cannot be written
     */
    public void judgement(Judgement judgement) throws IOException {
        var by = new JudgedSource(
                announced(judgement.source()),
                judgement.specificationName(),
                judgement.specificationVersion(),
                specificationSha256,
                stamp.program());
        if (knownJudged.contains(by)) {
            return;
        }
        writer().append(JudgementTable.table(), new KeptJudgement(judgement, stamp.program(), specificationSha256));
        judged.add(by);
        judgements++;
    }

    /**
     * Keeps a problem that the import met, if it brings anything new.
     *
     * @param problem the problem
     */
    public void problem(Problem problem) {
        problems.add(problem);
    }

    /**
     * Keeps a problem though the import brings nothing else.
     *
     * @param problem the problem
     * @throws IOException where it cannot be written
     */
    public void rejection(Problem problem) throws IOException {
        problem(problem);
        writer();
    }

    /**
     * Makes everything count, in one step.
     *
     * @return what was kept
     * @throws IOException where it cannot be written, or where another import took in a part of the same files meanwhile;
     *     nothing was kept then
     */
    public Imported commit() throws IOException {
        if (staging == null || writer == null) {
            return result("", List.of());
        }
        for (var problem : problems) {
            writer.append(ProblemTable.table(), problem);
        }
        for (var table : Table.all()) {
            writer.flush(table);
        }
        var parts = writer.parts();
        var files = new ArrayList<>(writer.files());
        writer.close();
        writer = null;
        if (!judged.isEmpty() && !specification.text().isEmpty()) {
            files.add(keepSpecification(staging));
        }
        var news = announced.values().stream()
                .filter(source -> brought.contains(source.sha256()))
                .toList();
        var manifest = new Manifest(
                Table.SCHEMA_VERSION,
                stamp.program(),
                stamp.time().toString(),
                news,
                List.copyOf(judged),
                parts,
                files,
                List.of(),
                "");
        staging.force(manifest);
        var staged = staging;
        return archive.inTurn(() -> {
            if (takenMeanwhile(news)) {
                return new Imported("", 0, 0, List.of(), List.copyOf(announced.values()));
            }
            staged.commit(manifest);
            return result(staged.batch(), news);
        });
    }

    @Override
    public void close() throws IOException {
        try {
            if (writer != null) {
                writer.close();
            }
        } finally {
            if (staging != null) {
                staging.close();
            }
        }
    }

    private Imported result(String batch, List<SourceFile> news) {
        var known = announced.values().stream()
                .filter(source -> knownSources.contains(source.sha256()))
                .toList();
        return new Imported(batch, traces, judgements, news, known);
    }

    private boolean takenMeanwhile(List<SourceFile> news) throws IOException {
        var now = Snapshot.of(archive);
        var sources = now.sources();
        var judgedNow = now.judged();
        long taken = news.stream()
                        .filter(source -> sources.contains(source.sha256()))
                        .count()
                + judged.stream().filter(judgedNow::contains).count();
        if (taken > 0 && taken < news.size() + judged.size()) {
            throw new IOException("another import took in a part of the same files meanwhile;"
                    + " nothing was kept by this one: run it again");
        }
        return taken > 0;
    }

    private Manifest.DataFile keepSpecification(Staging into) throws IOException {
        var bytes = specification.text().getBytes(StandardCharsets.UTF_8);
        var name = "specification-" + specificationSha256.substring(0, 16) + ".toml";
        Disk.write(into.folder().resolve(name), bytes);
        return new Manifest.DataFile(name, "", 0, bytes.length, specificationSha256, "", "", "", "");
    }

    private void checkVersion() throws IOException {
        for (var other : knownJudged) {
            if (other.specification().equals(specification.name())
                    && other.version().equals(specification.version())
                    && !other.specificationSha256().equals(specificationSha256)) {
                throw new ArchiveRefusal("specification " + specification.name() + " version " + specification.version()
                        + " judged before with other contents; give the changed file a new version");
            }
        }
    }

    private String announced(Source source) {
        if (!announced.containsKey(source.sha256())) {
            throw new IllegalArgumentException(
                    "source " + source.file() + " (" + source.sha256() + ") was not announced to the import");
        }
        return source.sha256();
    }

    private BatchWriter writer() throws IOException {
        if (staging == null) {
            staging = Staging.begin(archive, stamp);
        }
        if (writer == null) {
            writer = new BatchWriter(staging.folder(), staging.batch());
        }
        return writer;
    }
}
