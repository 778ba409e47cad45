package org.tautlog.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.tautlog.intake.file.FilesAhead;
import org.tautlog.intake.file.LogFile;
import org.tautlog.intake.file.LogFinder;
import org.tautlog.intake.layout.NearestLayouts;
import org.tautlog.problem.Problem;
import org.tautlog.problem.Where;

/**
 * Reads exported logs into traces: files and folders with all below them, plain, gzip or zip, in the three shapes of
 * {@link org.tautlog.intake.layout.LogShape}.
 *
 * <p>What holds:
 *
 * <ul>
 *   <li>Files come in the order of their names, traces in the order of their file. One trace at a time is in memory, in a
 *       long table a few; where several threads read, as many more as {@link FilesAhead} lets wait.
 *   <li>Each trace carries the SHA-256 of its file's bytes on disk. A packed file is unpacked twice, once to prove its
 *       checksum: where that fails no trace of it can be trusted and none is used. Of a packed file that is cut short the
 *       traces before the cut are used.
 *   <li>A row that cannot be read rejects its trace, with the row's place, for a curve with a hole must not be judged;
 *       the traces before and after it are used.
 *   <li>A file on which the program itself fails is rejected from there on, and the others are read.
 *   <li>Nothing vanishes: files, lines and traces are each kept, rejected with a located problem, or ignored on purpose.
 *   <li>Whatever no layout states is told from the file and listed as assumed.
 * </ul>
 */
public final class LogReader {
    private LogReader() {}

    /**
     * Reads logs.
     *
     * @param inputs files and folders; a folder stands for the logs in it and below it, except what its
     *     {@code layout.toml} ignores
     * @param options layout and bounds
     * @param sink takes each trace, in reading order
     * @return what was met and what became of it
     */
    public static ReadSummary read(List<Path> inputs, ReadOptions options, TraceSink sink) {
        return read(inputs, options, sink, LayoutWatch.NONE);
    }

    /**
     * Says whether a file is a log: whether reading the folder would not pass over it.
     *
     * @param file the file
     * @param folder the folder that it lies in or below
     * @param options layout and bounds
     * @return false where its name is none that logs have, or its layout ignores it; true for JSON whose layout has
     *     problems
     */
    public static boolean isLog(Path file, Path folder, ReadOptions options) {
        var found = new LogFile(file, folder, false);
        var nearest = new NearestLayouts(options.layout()).of(found, problem -> {});
        // A layout that cannot be read may be one of JSON: then the reading tells what is wrong with it.
        boolean open =
                nearest.filter(layout -> layout.layout().value().isEmpty()).isPresent();
        return !FileReader.passesOver(found, nearest)
                || (open && LogFile.looksLikeJson(String.valueOf(file.getFileName())));
    }

    /** Reads no lines where the watch wants none. */
    static ReadSummary look(Path file, ReadOptions options, LayoutWatch watch) {
        return read(List.of(file), options, trace -> {}, watch);
    }

    static ReadSummary read(List<Path> inputs, ReadOptions options, TraceSink sink, LayoutWatch watch) {
        var bounds = options.bounds();
        var whole = new ReadLedger(bounds.mostProblems());
        var gate = new TraceGate(whole, new KnownTraces(bounds.mostRemembered()), sink);
        var layouts = new NearestLayouts(options.layout());
        var finder = new LogFinder(
                problem -> {
                    whole.files.in(1);
                    whole.rejectFile(problem);
                },
                options.root());
        var work = new ArrayList<FilesAhead.Work>();
        for (var file : finder.find(inputs)) {
            var ofLayout = new ArrayList<Problem>();
            var nearest = layouts.of(file, ofLayout::add);
            work.add(turn -> {
                var ledger = whole.ofFile(turn);
                ofLayout.forEach(ledger::problem);
                try {
                    var reader = new FileReader(bounds, ledger, gate, watch);
                    if (options.leavesOut(file.path())) {
                        reader.passOver();
                    } else {
                        reader.read(file, nearest);
                    }
                } catch (SinkFailed | CancellationException e) {
                    throw e;
                } catch (RuntimeException failed) {
                    ledger.breakOff(ReadingFailed.problem(Where.file(file.name()), "file", failed));
                } finally {
                    ledger.close();
                }
            });
        }
        try {
            FilesAhead.run(work, options.threads());
        } catch (SinkFailed e) {
            throw e.failure();
        }
        return whole.summary();
    }
}
