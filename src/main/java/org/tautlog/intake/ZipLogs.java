package org.tautlog.intake;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.tautlog.intake.file.BrokenFile;
import org.tautlog.intake.file.LogFile;
import org.tautlog.intake.file.SealedFile;
import org.tautlog.intake.file.SealedFile.Kind;
import org.tautlog.intake.file.SealedFile.Unpacked;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.intake.layout.NearestLayouts;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads the entries of a zip archive in the order of their names. Each entry counts as a file; nothing is unpacked to disk. */
final class ZipLogs {
    private final ReadBounds bounds;
    private final ReadLedger ledger;
    private final TextLogs texts;
    private long unpacked;

    ZipLogs(ReadBounds bounds, ReadLedger ledger, TextLogs texts) {
        this.bounds = bounds;
        this.ledger = ledger;
        this.texts = texts;
    }

    /** Reads an archive whose file was counted; from here on its entries count instead. */
    void read(LogFile file, SealedFile sealed, LogLayout layout) throws IOException {
        try (var zip = new ZipFile(file.path().toFile(), StandardCharsets.UTF_8)) {
            if (zip.size() > bounds.mostEntries()) {
                throw new BrokenFile.TooLarge(
                        "the archive has " + zip.size() + " entries, more than " + bounds.mostEntries());
            }
            var entries = new ArrayList<ZipEntry>();
            zip.stream().filter(entry -> !entry.isDirectory()).forEach(entries::add);
            if (entries.isEmpty()) {
                ledger.rejectFile(
                        new Problem(ProblemCode.EMPTY_FILE, Where.file(file.name()), "the archive is empty", "", ""));
                return;
            }
            entries.sort(Comparator.comparing(ZipEntry::getName));
            ledger.files.in(entries.size() - 1L);
            for (var entry : entries) {
                readEntry(zip, entry, file.name() + '!' + entry.getName(), sealed, layout);
            }
        } catch (IllegalArgumentException e) {
            throw new ZipException("a name in it is not UTF-8");
        }
    }

    private void readEntry(ZipFile zip, ZipEntry entry, String label, SealedFile sealed, LogLayout layout) {
        if (escapes(entry.getName())) {
            ledger.rejectFile(new Problem(
                    ProblemCode.ESCAPING_NAME,
                    Where.file(label),
                    "the entry's name leads out of its folder",
                    "a plain relative name",
                    "find out who made this archive"));
            return;
        }
        boolean log = LogFile.looksLikeLog(entry.getName())
                || (layout.json() != null && LogFile.looksLikeJson(entry.getName()));
        if (!log || NearestLayouts.ignores(layout, Path.of(entry.getName()))) {
            ledger.files.ignored(1);
            return;
        }
        try {
            proveChecksum(zip, entry, sealed, label);
            if (isPacked(zip, entry, sealed)) {
                ledger.rejectFile(new Problem(
                        ProblemCode.BAD_ARCHIVE,
                        Where.file(label),
                        "the entry is packed itself",
                        "plain text in an archive",
                        "unpack it first"));
                return;
            }
            try (var stream = open(zip, entry, sealed)) {
                texts.read(stream, label, sealed.sha256(), layout);
            }
        } catch (IOException e) {
            ledger.rejectFile(BrokenFile.problem(Where.file(label), e));
        }
    }

    private void proveChecksum(ZipFile zip, ZipEntry entry, SealedFile sealed, String label) throws IOException {
        var checksum = new CRC32();
        try (var stream = new CheckedInputStream(open(zip, entry, sealed), checksum)) {
            unpacked += SealedFile.drain(stream);
        }
        if (unpacked > bounds.mostUnpackedBytes()) {
            throw new BrokenFile.TooLarge("the archive unpacks to more than " + bounds.mostUnpackedBytes() + " bytes");
        }
        if (checksum.getValue() != entry.getCrc()) {
            throw new ZipException("the checksum of " + label.substring(label.indexOf('!') + 1) + " does not fit");
        }
    }

    private boolean isPacked(ZipFile zip, ZipEntry entry, SealedFile sealed) throws IOException {
        try (var stream = open(zip, entry, sealed)) {
            return SealedFile.kind(stream.readNBytes(4)) != Kind.PLAIN;
        }
    }

    private InputStream open(ZipFile zip, ZipEntry entry, SealedFile sealed) throws IOException {
        return new Unpacked(
                new BufferedInputStream(zip.getInputStream(entry)),
                sealed.bytes(),
                bounds.mostUnpackedBytes(),
                bounds.mostUnpackedRatio());
    }

    private static boolean escapes(String name) {
        var plain = name.replace('\\', '/');
        return plain.startsWith("/")
                || plain.matches("[A-Za-z]:.*")
                || plain.indexOf('\0') >= 0
                || java.util.Arrays.asList(plain.split("/", -1)).contains("..");
    }
}
