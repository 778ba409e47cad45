package org.tautlog.intake.file;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.tautlog.problem.Problem;
import org.tautlog.problem.Where;

/** Finds the files of the inputs: files as named, folders with all below them, in the order of their names. */
public final class LogFinder {
    private final Consumer<Problem> unreadable;
    private final @Nullable Path root;

    /**
     * Finds files.
     *
     * @param unreadable takes a problem for each folder or file that cannot be looked into
     * @param root the root of files named singly that lie below it; null where each one's own folder is
     */
    public LogFinder(Consumer<Problem> unreadable, @Nullable Path root) {
        this.unreadable = unreadable;
        this.root = root;
    }

    /**
     * Finds the files of the inputs.
     *
     * @param inputs files and folders
     * @return the files, in the order of the inputs and in each folder of their names
     */
    public List<LogFile> find(List<Path> inputs) {
        var found = new ArrayList<LogFile>();
        for (var input : inputs) {
            if (Files.isDirectory(input)) {
                found.addAll(below(input));
            } else {
                found.add(new LogFile(input, rootOf(input), true));
            }
        }
        return found;
    }

    private Path rootOf(Path file) {
        return root != null && file.startsWith(root)
                ? root
                : Optional.ofNullable(file.getParent()).orElse(Path.of(""));
    }

    private List<LogFile> below(Path folder) {
        var files = new ArrayList<LogFile>();
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    files.add(new LogFile(file, folder, false));
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException e) {
                    notReadable(file, e);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            notReadable(folder, e);
        }
        files.sort(Comparator.comparing(file -> file.name().replace('\\', '/')));
        return files;
    }

    private void notReadable(Path file, IOException cause) {
        unreadable.accept(BrokenFile.problem(Where.file(file.toString()), cause));
    }
}
