package org.tautlog.intake;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.tautlog.intake.file.BrokenFile;
import org.tautlog.intake.file.LogFile;
import org.tautlog.intake.file.LogFinder;
import org.tautlog.intake.file.SealedFile;
import org.tautlog.intake.file.SealedFile.Kind;
import org.tautlog.intake.file.SealedFile.Unpacked;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * Reads exported logs into traces: files and folders with all below them, plain, gzip or zip, in the three shapes of
 * {@link org.tautlog.intake.layout.LogShape}.
 *
 * <p>What holds:
 *
 * <ul>
 *   <li>Files come in the order of their names, traces in the order of their file. One trace at a time is in memory, in a
 *       long table a few.
 *   <li>Each trace carries the SHA-256 of its file's bytes on disk. A packed file is unpacked twice, once to prove its
 *       checksum: where that fails no trace of it can be trusted and none is used. Of a packed file that is cut short the
 *       traces before the cut are used.
 *   <li>A row that cannot be read rejects its trace, with the row's place, for a curve with a hole must not be judged;
 *       the traces before and after it are used.
 *   <li>Nothing vanishes: files, lines and traces are each kept, rejected with a located problem, or ignored on purpose.
 *   <li>Whatever no layout states is told from the file and listed as assumed.
 * </ul>
 */
public final class LogReader {
    private final ReadLedger ledger;
    private final ReadOptions options;
    private final NearestLayouts layouts;
    private final TextLogs texts;

    private LogReader(ReadOptions options, TraceSink sink, LayoutWatch watch) {
        this.options = options;
        this.ledger = new ReadLedger(options.bounds().mostProblems());
        this.layouts = new NearestLayouts(options.layout(), ledger);
        this.texts = new TextLogs(options.bounds(), ledger, sink, watch);
    }

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
        return new LogReader(options, sink, LayoutWatch.NONE).readAll(inputs);
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
        var reader = new LogReader(options, trace -> {}, LayoutWatch.NONE);
        var found = new LogFile(file, folder, false);
        var nearest = reader.layouts.of(found);
        // A layout that cannot be read may be one of JSON: then the reading tells what is wrong with it.
        boolean open =
                nearest.filter(layout -> layout.layout().value().isEmpty()).isPresent();
        return !passedOver(found, nearest) || (open && LogFile.looksLikeJson(String.valueOf(file.getFileName())));
    }

    /** Reads no lines where the watch wants none. */
    static ReadSummary look(Path file, ReadOptions options, LayoutWatch watch) {
        return new LogReader(options, trace -> {}, watch).readAll(List.of(file));
    }

    private ReadSummary readAll(List<Path> inputs) {
        for (var file : new LogFinder(this::countUnreadable, options.root()).find(inputs)) {
            read(file);
        }
        return ledger.summary();
    }

    private void countUnreadable(Problem problem) {
        ledger.files.in(1);
        reject(problem);
    }

    private void read(LogFile file) {
        ledger.files.in(1);
        var nearest = layouts.of(file);
        if (passedOver(file, nearest)) {
            ledger.files.ignored(1);
            return;
        }
        if (nearest.filter(found -> found.layout().value().isEmpty()).isPresent()) {
            reject(new Problem(
                    ProblemCode.UNKNOWN_LAYOUT,
                    Where.file(file.name()),
                    "the file's layout has problems",
                    "",
                    "mend " + nearest.orElseThrow().folder().resolve(NearestLayouts.NAME)));
            return;
        }
        var layout = nearest.flatMap(found -> found.layout().value()).orElseGet(LogLayout::unstated);
        try {
            readSealed(file, layout);
        } catch (IOException e) {
            reject(BrokenFile.problem(Where.file(file.name()), e));
        }
    }

    private static boolean passedOver(LogFile file, Optional<NearestLayouts.Found> nearest) {
        return (!file.named() && !isLog(file, nearest))
                || nearest.filter(found -> found.ignores(file.path())).isPresent();
    }

    /** JSON lies beside logs for many reasons; it is a log where the layout says so. */
    private static boolean isLog(LogFile file, Optional<NearestLayouts.Found> nearest) {
        var name = file.path().getFileName().toString();
        boolean json = nearest.flatMap(found -> found.layout().value())
                .filter(layout -> layout.json() != null)
                .isPresent();
        return LogFile.looksLikeLog(name) || (json && LogFile.looksLikeJson(name));
    }

    private void readSealed(LogFile file, LogLayout layout) throws IOException {
        var modified = Files.getLastModifiedTime(file.path());
        var sealed = SealedFile.of(file.path());
        if (sealed.kind() == Kind.ZIP) {
            new ZipLogs(options.bounds(), ledger, texts).read(file, sealed, layout);
        } else {
            if (sealed.kind() == Kind.GZIP) {
                proveChecksum(file, sealed);
            }
            try (var stream = open(file, sealed)) {
                texts.read(stream, file.name(), sealed.sha256(), layout);
            }
        }
        if (Files.size(file.path()) != sealed.bytes() || !modified.equals(Files.getLastModifiedTime(file.path()))) {
            ledger.problem(new Problem(
                    ProblemCode.NOT_READABLE,
                    Where.file(file.name()),
                    "the file changed while it was read; its traces may not be what its hash stands for",
                    "",
                    "read it again when nothing writes to it"));
        }
    }

    private void proveChecksum(LogFile file, SealedFile sealed) throws IOException {
        try (var stream = open(file, sealed)) {
            SealedFile.drain(stream);
        } catch (java.io.EOFException e) {
            // Cut short: what stands before the cut is whole, and the reading meets the cut again with its line.
            return;
        } catch (ZipException e) {
            throw new ZipException(e.getMessage() + "; none of its traces is used");
        }
    }

    private InputStream open(LogFile file, SealedFile sealed) throws IOException {
        var bytes = new BufferedInputStream(Files.newInputStream(file.path()));
        return sealed.kind() == Kind.GZIP
                ? new Unpacked(
                        new GZIPInputStream(bytes, 1 << 15),
                        sealed.bytes(),
                        options.bounds().mostUnpackedBytes(),
                        options.bounds().mostUnpackedRatio())
                : bytes;
    }

    private void reject(Problem problem) {
        ledger.problem(problem);
        ledger.files.rejected(1);
    }
}
