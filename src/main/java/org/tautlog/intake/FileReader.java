package org.tautlog.intake;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.tautlog.intake.file.BrokenFile;
import org.tautlog.intake.file.GzipBytes;
import org.tautlog.intake.file.LogFile;
import org.tautlog.intake.file.SealedFile;
import org.tautlog.intake.file.SealedFile.Kind;
import org.tautlog.intake.file.SealedFile.Unpacked;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.intake.layout.NearestLayouts;
import org.tautlog.intake.layout.NearestLayouts.Found;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads one file: passes over what is no log, hashes, unpacks, and leaves its text to those who read texts. */
final class FileReader {
    private final ReadBounds bounds;
    private final ReadLedger ledger;
    private final TextLogs texts;

    FileReader(ReadBounds bounds, ReadLedger ledger, TraceGate gate, LayoutWatch watch) {
        this.bounds = bounds;
        this.ledger = ledger;
        this.texts = new TextLogs(bounds, ledger, gate, watch);
    }

    /** Reads a file and settles it: kept, rejected or ignored. */
    void read(LogFile file, Optional<Found> nearest) {
        if (passesOver(file, nearest)) {
            passOver();
            return;
        }
        ledger.files.in(1);
        if (nearest.filter(found -> found.layout().value().isEmpty()).isPresent()) {
            ledger.rejectFile(new Problem(
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
            ledger.rejectFile(BrokenFile.problem(Where.file(file.name()), e));
        }
    }

    /** Counts a file that is no log. */
    void passOver() {
        ledger.files.in(1);
        ledger.files.ignored(1);
    }

    /** Whether a file that was found in a folder is no log. */
    static boolean passesOver(LogFile file, Optional<Found> nearest) {
        return (!file.named() && !isLog(file, nearest))
                || nearest.filter(found -> found.ignores(file.path())).isPresent();
    }

    /** JSON lies beside logs for many reasons; it is a log where the layout says so. */
    private static boolean isLog(LogFile file, Optional<Found> nearest) {
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
            new ZipLogs(bounds, ledger, texts).read(file, sealed, layout);
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
        try (var bytes = new BufferedInputStream(Files.newInputStream(file.path()));
                var packed = new GzipBytes(bytes);
                var stream = watched(packed, sealed)) {
            SealedFile.drain(stream);
            if (packed.hasBytesBehind()) {
                ledger.problem(new Problem(
                        ProblemCode.BAD_ARCHIVE,
                        Where.file(file.name()),
                        "bytes stand behind the end of the packed text and are not read",
                        "nothing behind it",
                        "find out what was written to the file after it was packed"));
            }
        } catch (java.io.EOFException e) {
            // Cut short: what stands before the cut is whole, and the reading meets the cut again with its line.
            return;
        } catch (ZipException e) {
            throw new ZipException(e.getMessage() + "; none of its traces is used");
        }
    }

    private InputStream open(LogFile file, SealedFile sealed) throws IOException {
        var bytes = new BufferedInputStream(Files.newInputStream(file.path()));
        return sealed.kind() == Kind.GZIP ? watched(new GZIPInputStream(bytes, 1 << 15), sealed) : bytes;
    }

    private Unpacked watched(InputStream unpacked, SealedFile sealed) {
        return new Unpacked(unpacked, sealed.bytes(), bounds.mostUnpackedBytes(), bounds.mostUnpackedRatio());
    }
}
