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
     * @param problems every break in the chain, in order
     * @param tornBytes how many bytes of an entry whose writer died stand after the last whole entry
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
            return new Reading(List.of(), List.of(), 0);
        }
        if (!Arrays.equals(bytes, known.bytes)) {
            known = new Known(bytes, read(bytes));
        }
        return known.reading;
    }

    private Reading read(byte[] bytes) {
        int whole = wholeLength(bytes);
        var entries = new ArrayList<LedgerEntry>();
        var problems = new ArrayList<Problem>();
        int line = 0;
        boolean afterBreak = false;
        for (var text : (Iterable<String>) new String(bytes, 0, whole, StandardCharsets.UTF_8).lines()::iterator) {
            line++;
            try {
                var entry = EntryText.read(text);
                if (!afterBreak) {
                    checkLink(entry, entries, line, problems);
                }
                entries.add(entry);
                afterBreak = false;
            } catch (IllegalArgumentException e) {
                problems.add(broken(line, e.getMessage() + ": it was altered"));
                afterBreak = true;
            }
        }
        return new Reading(entries, problems, bytes.length - whole);
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
        var text = new StringBuilder();
        var written = new ArrayList<LedgerEntry>();
        for (var event : events) {
            var line = EntryText.write(++number, previous, time, event);
            var entry = EntryText.read(line);
            written.add(entry);
            previous = entry.sha256();
            text.append(line).append('\n');
        }
        write(text.toString().getBytes(StandardCharsets.UTF_8), before.tornBytes());
        return written;
    }

    private void write(byte[] bytes, int torn) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            long end = channel.size() - torn;
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

    private static int wholeLength(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return end;
    }
}
