package org.tautlog.intake.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Tells which files of a folder nobody writes to any more: those whose size and time are the same at two looks. Names
 * that no log has are passed over, so that a writer may also write under another name and rename.
 */
public final class SettledFiles {
    private final Path folder;
    private Map<Path, Shape> before = Map.of();

    /**
     * What is seen of a file from outside.
     *
     * @param bytes its size
     * @param modified when it was last written to
     */
    public record Shape(long bytes, FileTime modified) {}

    /**
     * Watches a folder, not those below it.
     *
     * @param folder the folder
     */
    public SettledFiles(Path folder) {
        this.folder = folder;
    }

    /**
     * Looks once more.
     *
     * @return the files that are as they were at the look before, by name; empty ones, which somebody is about to fill, are
     *     not among them
     * @throws IOException where the folder cannot be looked into
     */
    public Map<Path, Shape> look() throws IOException {
        var now = new TreeMap<Path, Shape>();
        List<Path> found;
        try (var files = Files.list(folder)) {
            found = files.filter(file -> LogFile.looksLikeLog(file.getFileName().toString()))
                    .toList();
        } catch (NotDirectoryException e) {
            throw new IOException(folder + " is no folder", e);
        }
        for (var file : found) {
            try {
                var attributes = Files.readAttributes(file, BasicFileAttributes.class);
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
}
