package org.tautlog.intake.file;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Tells which files in and below a folder nobody writes to any more: those whose size and time are the same at two looks.
 * Names that neither logs nor JSON have are passed over, so that a writer may also write under another name and rename.
 * Links are not followed: they may lead out of the folder, or round in it.
 */
public final class SettledFiles {
    /** Folders within folders that are looked into. */
    public static final int DEEPEST = 16;

    private final Path folder;
    private final List<Path> others;
    private Map<Path, Shape> before = Map.of();

    /**
     * What is seen of a file from outside.
     *
     * @param bytes its size
     * @param modified when it was last written to
     */
    public record Shape(long bytes, FileTime modified) {}

    /**
     * Watches a folder and those below it.
     *
     * @param folder the folder
     * @param others folders that may lie below it and hold something else
     */
    public SettledFiles(Path folder, List<Path> others) {
        this.folder = folder;
        this.others =
                others.stream().map(other -> other.toAbsolutePath().normalize()).toList();
    }

    /**
     * Looks once more.
     *
     * @return the files that are as they were at the look before, by name; empty ones, which somebody is about to fill, are
     *     not among them
     * @throws IOException where the folder cannot be looked into
     */
    public Map<Path, Shape> look() throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new IOException(folder + " is no folder");
        }
        var now = new TreeMap<Path, Shape>();
        for (var file : found()) {
            try {
                // Asked anew: what a folder says of a file that is being written may be old.
                var attributes = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
                if (attributes.isRegularFile() && attributes.size() > 0) {
                    now.put(file, new Shape(attributes.size(), attributes.lastModifiedTime()));
                }
            } catch (NoSuchFileException gone) {
                // Moved away between the list and the look: then it is not ours to read.
            }
        }
        var settled = new TreeMap<>(now);
        settled.entrySet().removeIf(entry -> !entry.getValue().equals(before.get(entry.getKey())));
        before = now;
        return settled;
    }

    private List<Path> found() throws IOException {
        var found = new ArrayList<Path>();
        Files.walkFileTree(folder, EnumSet.noneOf(FileVisitOption.class), DEEPEST, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path below, BasicFileAttributes attributes) {
                boolean other = others.contains(below.toAbsolutePath().normalize());
                return other && !below.equals(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                var name = String.valueOf(file.getFileName());
                if (LogFile.looksLikeLog(name) || LogFile.looksLikeJson(name)) {
                    found.add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
                return orThrow(file, e);
            }

            @Override
            public FileVisitResult postVisitDirectory(Path below, @Nullable IOException e) throws IOException {
                return e == null ? FileVisitResult.CONTINUE : orThrow(below, e);
            }
        });
        return found;
    }

    /** A folder below may come and go; the folder itself may not. */
    private FileVisitResult orThrow(Path path, IOException e) throws IOException {
        if (path.equals(folder)) {
            throw e;
        }
        return FileVisitResult.CONTINUE;
    }
}
