package org.tautlog.archive.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** The file of the chain. */
public final class Ledger {
    private final Path file;
    private Known known = new Known(new byte[0], new Reading(List.of(), List.of(), 0));

    /** What was read last, and of what: the chain is walked again where a byte of it differs. */
    private static final class Known {
        private final byte[] bytes;
        private final Reading reading;

        Known(byte[] bytes, Reading reading) {
            this.bytes = bytes;
            this.reading = reading;
        }
    }

    /**
     * The ledger in a file, which need not be there yet.
     *
     * @param file the file
     */
    public Ledger(Path file) {
        this.file = file;
    }

    /**
     * What a ledger says.
     *
     * @param entries the entries that can be read, in order
     * @param problems every break in the chain, in order, and a last line that is not whole
     * @param tornBytes how many bytes that are no entry stand after the last line that has an end; a problem names them
     */
    public record Reading(List<LedgerEntry> entries, List<Problem> problems, int tornBytes) {
        public Reading {
            entries = List.copyOf(entries);
            problems = List.copyOf(problems);
        }

        /** {@return the hash that the next entry names as the one before it} */
        public String head() {
            return entries.isEmpty()
                    ? LedgerEntry.NOTHING_BEFORE
                    : entries.get(entries.size() - 1).sha256();
        }
    }

    /**
     * Reads and checks the whole chain; waits for nobody.
     *
     * @return what it says
     * @throws IOException where the file is there and cannot be read
     */
    public Reading read() throws IOException {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (NoSuchFileException none) {
            bytes = new byte[0];
        }
        if (!Arrays.equals(bytes, known.bytes)) {
            known = new Known(bytes, read(bytes));
        }
        return known.reading;
    }

    private Reading read(byte[] bytes) {
        var entries = new ArrayList<LedgerEntry>();
        var problems = new ArrayList<Problem>();
        var lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
        int torn = 0;
        boolean afterBreak = false;
        for (int line = 1; line <= lines.length; line++) {
            boolean ended = line < lines.length;
            var text = lines[line - 1];
            if (text.isEmpty() && !ended) {
                break;
            }
            try {
                var entry = EntryText.read(text);
                if (!afterBreak) {
                    checkLink(entry, entries, line, problems);
                }
                entries.add(entry);
                afterBreak = false;
            } catch (IllegalArgumentException e) {
                if (ended || !EntryText.isBegun(text)) {
                    problems.add(broken(line, e.getMessage() + ": it was altered"));
                    afterBreak = true;
                } else {
                    torn = bytes.length - endOfLines(bytes);
                    problems.add(torn(line));
                }
            }
        }
        return new Reading(entries, problems, torn);
    }

    /**
     * Appends entries and forces them to the disk. The caller holds the archive's lock.
     *
     * @param events what to record, in order
     * @param time when, as the caller's clock says
     * @return the entries as written
     * @throws IOException where they cannot be written; none of them counts then
     */
    public List<LedgerEntry> append(List<? extends LedgerEvent> events, OffsetDateTime time) throws IOException {
        var before = read();
        int number =
                before.entries().stream().mapToInt(LedgerEntry::number).max().orElse(0);
        var previous = before.head();
        int end = known.bytes.length - before.tornBytes();
        var text = new StringBuilder(end == endOfLines(known.bytes) ? "" : "\n");
        var written = new ArrayList<LedgerEntry>();
        for (var event : events) {
            var line = EntryText.write(++number, previous, time, event);
            var entry = EntryText.read(line);
            written.add(entry);
            previous = entry.sha256();
            text.append(line).append('\n');
        }
        write(text.toString().getBytes(StandardCharsets.UTF_8), end);
        return written;
    }

    private void write(byte[] bytes, int end) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            channel.truncate(end).position(end);
            try {
                var left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            } catch (IOException e) {
                channel.truncate(end);
                throw e;
            }
        }
    }

    private void checkLink(LedgerEntry entry, List<LedgerEntry> before, int line, List<Problem> problems) {
        var last = before.isEmpty() ? null : before.get(before.size() - 1);
        var previous = last == null ? LedgerEntry.NOTHING_BEFORE : last.sha256();
        int number = last == null ? 1 : last.number() + 1;
        if (!entry.previous().equals(previous) || entry.number() != number) {
            problems.add(broken(
                    line,
                    "entry " + entry.number() + " does not follow the entry before it: "
                            + (entry.number() > number ? "entries between were removed" : "the chain was altered")));
        }
    }

    private Problem broken(int line, String what) {
        return new Problem(
                ProblemCode.ALTERED,
                Where.line(file.getFileName().toString(), line),
                what,
                "",
                "compare with a copy or a seal kept elsewhere");
    }

    private Problem torn(int line) {
        return new Problem(
                ProblemCode.LEFTOVER,
                Where.line(file.getFileName().toString(), line),
                "the last line is not whole and does not count: its writer is at it or was killed, or it was cut",
                "",
                "compare with a copy or a seal kept elsewhere; the next writer cuts it off");
    }

    /** Where the last line that has an end ends. */
    private static int endOfLines(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return end;
    }
}
