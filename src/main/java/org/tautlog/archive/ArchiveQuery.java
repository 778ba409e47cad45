package org.tautlog.archive;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.Decided;
import org.tautlog.archive.table.BriefRow;
import org.tautlog.archive.table.JudgementTable;
import org.tautlog.archive.table.Kept;
import org.tautlog.archive.table.KeptJudgement;
import org.tautlog.archive.table.ProblemTable;
import org.tautlog.archive.table.TraceTable;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.trace.Trace;

/**
 * Questions to an archive. Each is answered from what the archive holds at that moment, waits for no writer, and comes
 * with the problems that kept something out of the answer: a batch cut short, a row that does not fit its hash. Every row
 * that is read whole is held against its hash.
 */
public final class ArchiveQuery implements AutoCloseable {
    private static final String IN_TIME = "time_utc, serial, bolt, attempt, row_sha256";
    private static final String OF_ONE_ENGINE = "time_utc, station, spindle, bolt, attempt, row_sha256";

    private final RowReader rows;
    private final BriefRow.Reader brief = new BriefRow.Reader();

    ArchiveQuery(ArchiveFolder archive) {
        this.rows = new RowReader(archive);
    }

    /** Lets the embedded engine start while the caller reads something else; without this the first question waits for it. */
    public void startMeanwhile() {
        rows.startMeanwhile();
    }

    /**
     * Every trace of an engine, samples and all.
     *
     * @param serial the engine
     * @return its traces in order of time; none where the archive does not know it
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<Kept<Trace>>> traces(String serial) throws IOException {
        return rows.all(TraceTable.table(), new Condition().is("serial", serial), OF_ONE_ENGINE);
    }

    /**
     * Every judgement of an engine, by every specification version and program that judged it.
     *
     * @param serial the engine
     * @return its judgements in order of time
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<Kept<KeptJudgement>>> judgements(String serial) throws IOException {
        return rows.all(
                JudgementTable.table(),
                new Condition().is("serial", serial),
                "time_utc, station, spindle, bolt, attempt, specification_name, specification_version, row_sha256");
    }

    /**
     * Judgements of a shift, a stream or everything: no samples.
     *
     * @param filter which are wanted
     * @return the judgements in order of time
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<Kept<KeptJudgement>>> judgements(JudgementFilter filter) throws IOException {
        var condition = new Condition()
                .isIfGiven("station", filter.station())
                .isIfGiven("spindle", filter.spindle())
                .isIfGiven("bolt", filter.bolt())
                .isIfGiven("specification_version", filter.specificationVersion())
                .from(filter.from())
                .before(filter.before());
        return rows.all(JudgementTable.table(), condition, IN_TIME);
    }

    /**
     * Judgements in brief, one after the other: for a search among more than memory holds. Their files are held against the
     * hashes of the manifests; where one does not fit, each row is read whole and held against its own.
     *
     * @param <A> what they are taken into
     * @param filter which are wanted
     * @param numbers columns of numbers that are wanted besides
     * @param start an empty result; asked for again where the search must begin anew
     * @param step takes one into the result, in order of time
     * @return the result
     * @throws IOException where the archive cannot be read
     */
    public <A> Outcome<A> brief(
            BriefFilter filter, List<String> numbers, Supplier<A> start, BiConsumer<A, BriefRow> step)
            throws IOException {
        var columns = new ArrayList<>(BriefRow.COLUMNS);
        columns.addAll(numbers);
        return rows.fold(
                JudgementTable.table(),
                columns,
                filter.condition(),
                IN_TIME,
                start,
                (result, row) -> step.accept(result, brief.read(row)));
    }

    /**
     * Whole judgements of recordings that are known in brief.
     *
     * @param recordings the recordings; the judgements of all of them are held in memory
     * @return their judgements, by every specification, in order of time
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<Kept<KeptJudgement>>> judgements(Collection<BriefJudgement> recordings) throws IOException {
        return recordings.isEmpty()
                ? Outcome.of(List.of(), List.of())
                : rows.all(JudgementTable.table(), new Condition().ofRecordings(recordings), IN_TIME);
    }

    /**
     * The traces that judgements are of, in one search: those of an engine with its peers, or a part of a shift.
     *
     * @param judgements the judgements; the traces of all of them are held in memory
     * @return their traces in order of time, each once; one that was lost is not among them
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<Kept<Trace>>> traces(Collection<BriefJudgement> judgements) throws IOException {
        return judgements.isEmpty()
                ? Outcome.of(List.of(), List.of())
                : rows.all(TraceTable.table(), new Condition().ofRecordings(judgements), IN_TIME);
    }

    /**
     * Hands out every trace, without holding them all in memory: to judge them again.
     *
     * @param consumer takes them, in no particular order
     * @return what could not be read
     * @throws IOException where the archive cannot be read
     */
    public List<Problem> everyTrace(Consumer<Kept<Trace>> consumer) throws IOException {
        return rows.each(TraceTable.table(), consumer);
    }

    /**
     * What the imports met and could not keep as a trace.
     *
     * @return the problems by file and line
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<Kept<Problem>>> problems() throws IOException {
        return rows.all(ProblemTable.table(), new Condition(), "batch, file, line, row_sha256");
    }

    /**
     * Every serial that the archive knows.
     *
     * @return the serials in order
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<String>> serials() throws IOException {
        return rows.texts("SELECT DISTINCT serial", " ORDER BY serial", List.of());
    }

    /**
     * Serials that are written like one that the archive does not know: fewest changed, added and missing characters first.
     *
     * @param serial the serial asked for
     * @param most how many are wanted
     * @return the nearest ones
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<String>> nearestSerials(String serial, int most) throws IOException {
        return rows.texts(
                "SELECT serial",
                " GROUP BY serial ORDER BY levenshtein(serial, ?), serial LIMIT " + most,
                List.of(serial));
    }

    /**
     * The bolt positions that an engine may have: its own, and those of every engine that passed one of its stations.
     *
     * @param serial the engine
     * @return the positions that have a name, shortest names first
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<String>> boltPositions(String serial) throws IOException {
        return rows.texts(
                "WITH kept AS (SELECT DISTINCT serial, station, bolt",
                ") SELECT DISTINCT bolt FROM kept WHERE bolt <> '' AND serial IN (SELECT serial FROM kept"
                        + " WHERE station IN (SELECT station FROM kept WHERE serial = ?)) ORDER BY length(bolt), bolt",
                List.of(serial));
    }

    /**
     * The decisions about an engine.
     *
     * @param serial the engine; empty for all engines
     * @return its decisions in the order in which they were taken, superseded ones too
     * @throws IOException where the ledger cannot be read
     */
    public Outcome<List<KeptDecision>> decisions(String serial) throws IOException {
        return KeptDecisions.of(rows.ledger(), serial);
    }

    /**
     * When each batch came in, by the ledger's order: an entry after it was made with the batch in the archive.
     *
     * @return the number of each batch's entry, by the batch's name
     * @throws IOException where the ledger cannot be read
     */
    public Map<String, Integer> importEntries() throws IOException {
        var entries = new HashMap<String, Integer>();
        for (var entry : rows.ledger().entries()) {
            if (entry.event() instanceof BatchKept kept) {
                entries.put(kept.batch(), entry.number());
            }
        }
        return entries;
    }

    /**
     * How much the archive holds.
     *
     * @return the counts
     * @throws IOException where the archive cannot be read
     */
    public Outcome<Counts> counts() throws IOException {
        var serials = serials();
        var snapshot = rows.snapshot();
        var batches = snapshot.batches();
        var counts = new Counts(
                batches.size(),
                snapshot.sources().size(),
                serials.value().orElse(List.of()).size(),
                rows(batches, TraceTable.table().name()),
                rows(batches, JudgementTable.table().name()),
                rows(batches, ProblemTable.table().name()),
                (int) snapshot.ledger().entries().stream()
                        .filter(entry -> entry.event() instanceof Decided)
                        .count());
        return Outcome.of(counts, serials.problems());
    }

    /**
     * The specifications that judged, with the texts of their files.
     *
     * @return the specifications in the order in which they were first used; a text is empty where its file was altered
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<SpecificationUsed>> specifications() throws IOException {
        return KeptSpecifications.of(rows.snapshot());
    }

    /**
     * The files that were imported.
     *
     * @return the files by name
     * @throws IOException where the archive cannot be read
     */
    public Outcome<List<SourceFile>> sources() throws IOException {
        var snapshot = rows.snapshot();
        var sources = snapshot.batches().stream()
                .flatMap(batch -> batch.manifest().sources().stream())
                .sorted((a, b) -> a.file().compareTo(b.file()))
                .toList();
        return Outcome.of(sources, snapshot.problems());
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }

    private static int rows(List<Snapshot.Batch> batches, String table) {
        return batches.stream().mapToInt(batch -> batch.manifest().rows(table)).sum();
    }
}
