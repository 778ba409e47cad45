package org.tautlog.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.tautlog.intake.file.SettledFiles.Shape;

/**
 * The list of files that were read, kept in a file so that it outlives the program: one line each with hash, size, time
 * and name below the watched folder, added behind what is there. A line that was cut when the power failed is passed over; its file is then told by
 * its hash where it is kept, and read again where it is not.
 */
public final class FilesRead {
    private static final int BLOCK = 1 << 16;

    private final Path list;
    private final Path folder;
    private final Map<String, Entry> byName = new HashMap<>();
    private final Set<String> hashes = new HashSet<>();
    private boolean cutShort;

    /** What is to be done with a file. */
    public enum News {
        /** It is as it was when it was read, or another of the same content was read. */
        NONE,
        /** It was not read yet. */
        UNREAD,
        /** It was read and something of it kept, and then more was written behind what was read. */
        GROWN
    }

    /** Behind the name of a file of which nothing was kept. */
    private static final String NOTHING = "nothing kept";

    private record Entry(String sha256, Shape shape, boolean kept) {}

    private FilesRead(Path list, Path folder) {
        this.list = list;
        this.folder = folder;
    }

    /**
     * Opens a list, or begins one.
     *
     * @param list the file
     * @param folder the folder in and below which the listed files lie
     * @return what it holds
     * @throws IOException where it is there and cannot be read
     */
    public static FilesRead in(Path list, Path folder) throws IOException {
        var read = new FilesRead(list, folder);
        if (Files.exists(list)) {
            var text = new String(Files.readAllBytes(list), StandardCharsets.UTF_8);
            text.lines().forEach(read::take);
            read.cutShort = !text.isEmpty() && !text.endsWith("\n");
        }
        return read;
    }

    private void take(String line) {
        var parts = line.split("\t", 5);
        if (parts.length < 4 || parts[0].length() != 64) {
            return;
        }
        try {
            var shape = new Shape(Long.parseLong(parts[1]), FileTime.from(Instant.parse(parts[2])));
            byName.put(parts[3], new Entry(parts[0], shape, parts.length < 5 || !parts[4].equals(NOTHING)));
            hashes.add(parts[0]);
        } catch (NumberFormatException | DateTimeException damaged) {
            // A damaged line says nothing.
        }
    }

    /**
     * Says whether a file is to be read.
     *
     * @param file the file
     * @param shape what is seen of it
     * @return what is new about it
     * @throws IOException where it cannot be hashed
     */
    public News news(Path file, Shape shape) throws IOException {
        var known = byName.get(name(file));
        if (known != null && known.shape().equals(shape)) {
            return News.NONE;
        }
        if (hashes.contains(hash(file, Long.MAX_VALUE))) {
            return News.NONE;
        }
        boolean grown = known != null
                && known.kept()
                && shape.bytes() > known.shape().bytes()
                && hash(file, known.shape().bytes()).equals(known.sha256());
        return grown ? News.GROWN : News.UNREAD;
    }

    /**
     * Notes that a file was read.
     *
     * @param file the file
     * @param shape what was seen of it before it was read
     * @param kept whether anything of it was kept; where not, it is read again once it has grown
     * @throws IOException where it cannot be noted
     */
    public void note(Path file, Shape shape, boolean kept) throws IOException {
        var entry = new Entry(hash(file, Long.MAX_VALUE), shape, kept);
        byName.put(name(file), entry);
        hashes.add(entry.sha256());
        var line = entry.sha256()
                + '\t'
                + shape.bytes()
                + '\t'
                + shape.modified()
                + '\t'
                + name(file)
                + (kept ? "" : '\t' + NOTHING)
                + '\n';
        Files.write(
                list,
                ((cutShort ? "\n" : "") + line).getBytes(StandardCharsets.UTF_8),
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
        cutShort = false;
    }

    private String name(Path file) {
        return folder.relativize(file).toString().replace('\\', '/').replaceAll("\\p{Cntrl}", "?");
    }

    private static String hash(Path file, long most) throws IOException {
        var digest = Sha256.digest();
        try (InputStream bytes = Files.newInputStream(file)) {
            var block = new byte[BLOCK];
            long left = most;
            int n = bytes.read(block, 0, (int) Math.min(BLOCK, left));
            while (n > 0) {
                digest.update(block, 0, n);
                left -= n;
                n = bytes.read(block, 0, (int) Math.min(BLOCK, left));
            }
        }
        return Sha256.hex(digest.digest());
    }
}
