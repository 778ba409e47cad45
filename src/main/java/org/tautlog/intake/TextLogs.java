package org.tautlog.intake;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.util.Optional;
import org.tautlog.intake.file.BreakingStream;
import org.tautlog.intake.file.SealedFile;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.LayoutSniffer;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.intake.text.Encoding;
import org.tautlog.intake.text.LineSource;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads one unpacked log: tells its encoding, completes its layout, and has its lines read in its shape. */
final class TextLogs {
    private static final int HEAD_LINES = 200;
    /** Some machines write their whole parameter set above the table; looked through only where the usual head has no table. */
    private static final int LONGEST_HEAD_LINES = 20_000;

    private static final int HEAD_CHARACTERS = 1 << 20;

    private final ReadBounds bounds;
    private final ReadLedger ledger;
    private final TraceGate gate;

    private final LayoutWatch watch;

    TextLogs(ReadBounds bounds, ReadLedger ledger, TraceGate gate, LayoutWatch watch) {
        this.watch = watch;
        this.bounds = bounds;
        this.ledger = ledger;
        this.gate = gate;
    }

    /** Reads a log and settles its file: kept where it gave a trace, else rejected. */
    void read(InputStream stream, String file, String sha256, LogLayout stated) throws IOException {
        var breaking = new BreakingStream(stream);
        var bytes = new BufferedInputStream(breaking, Encoding.HEAD_BYTES);
        var head = head(bytes);
        if (head.length == 0 && breaking.broken().isPresent()) {
            throw breaking.broken().get();
        }
        if (head.length == 0) {
            ledger.rejectFile(new Problem(ProblemCode.EMPTY_FILE, Where.file(file), "the file is empty", "", ""));
            return;
        }
        if (SealedFile.kind(head) != SealedFile.Kind.PLAIN) {
            ledger.rejectFile(new Problem(
                    ProblemCode.BAD_ARCHIVE,
                    Where.file(file),
                    "the file is packed twice",
                    "plain text in a packed file",
                    "unpack it first"));
            return;
        }
        var charset = charset(head, file, stated);
        if (charset.isEmpty()) {
            ledger.rejectFile(new Problem(
                    ProblemCode.NOT_TEXT, Where.file(file), "the file is no text", "an exported table", ""));
            return;
        }
        skipMark(bytes, head);
        if (stated.json() != null) {
            var text = new InputStreamReader(bytes, charset.get());
            if (watch.takes(file, charset.get(), text)) {
                ledger.files.ignored(1);
            } else {
                new JsonLogs(file, sha256, stated, bounds, ledger, gate).read(text);
            }
            return;
        }
        var lines = new LineSource(new InputStreamReader(bytes, charset.get()), bounds.longestLine());
        var layout = LayoutSniffer.complete(stated, file, lines.peek(HEAD_LINES, HEAD_CHARACTERS));
        if (layout.value().isEmpty()) {
            layout = LayoutSniffer.complete(stated, file, lines.peek(LONGEST_HEAD_LINES, HEAD_CHARACTERS));
        }
        boolean wanted = watch.sees(file, charset.get(), layout, lines.peek(watch.mostLines(), HEAD_CHARACTERS));
        if (layout.value().isPresent() && !wanted) {
            ledger.files.ignored(1);
            return;
        }
        if (layout.value().isEmpty()) {
            layout.problems().forEach(ledger::problem);
            ledger.files.rejected(1);
            return;
        }
        layout.problems().forEach(ledger::assume);
        readLines(lines, breaking, layout.value().get(), file, sha256);
    }

    private void readLines(LineSource lines, BreakingStream bytes, FileLayout layout, String file, String sha256)
            throws IOException {
        var text = new LogText(file, layout);
        var table = switch (layout.shape()) {
            case FILE_PER_TRACE -> new FilePerTrace(text, ledger, bounds.mostSamples(), gate, sha256);
            case LONG_TABLE -> new LongTable(text, ledger, bounds, gate, sha256);
            case ROW_PER_TRACE -> new RowPerTrace(text, ledger, bounds.mostSamples(), gate, sha256);
        };
        ledger.settleFile(
                () -> table.read(lines, bytes),
                new Problem(
                        ProblemCode.EMPTY_FILE,
                        Where.line(file, layout.headerLine()),
                        "no row stands under the header",
                        "",
                        ""));
    }

    private static byte[] head(BufferedInputStream bytes) throws IOException {
        bytes.mark(Encoding.HEAD_BYTES);
        var head = bytes.readNBytes(Encoding.HEAD_BYTES - 1);
        bytes.reset();
        return head;
    }

    private Optional<Charset> charset(byte[] head, String file, LogLayout stated) {
        if (stated.text().encoding() != null) {
            return Optional.of(stated.text().encoding());
        }
        var encoding = Encoding.sniff(head, head.length);
        if (encoding.isPresent() && !encoding.get().certain()) {
            int line = Encoding.lineOfMalformed(head, head.length);
            ledger.assume(new Problem(
                    ProblemCode.ASSUMED,
                    (line > 0 ? Where.line(file, line) : Where.file(file)).at("encoding"),
                    "the encoding is taken to be " + encoding.get().charset()
                            + (line > 0 ? ", as line " + line + " holds bytes that are no UTF-8" : ""),
                    "",
                    "state it in layout.toml under [text] encoding"));
        }
        return encoding.map(Encoding::charset);
    }

    /** A byte-order mark is no part of the first cell. */
    private static void skipMark(BufferedInputStream bytes, byte[] head) throws IOException {
        var marked = Encoding.sniff(head, Math.min(4, head.length));
        bytes.skipNBytes(marked.map(Encoding::markBytes).orElse(0));
    }
}
