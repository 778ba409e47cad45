package org.tautlog.intake;

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
import org.tautlog.problem.Where;

/** Finds the files of the inputs: files as named, folders with all below them, in the order of their names. */
final class LogFinder {
    private final ReadLedger ledger;

    LogFinder(ReadLedger ledger) {
        this.ledger = ledger;
    }

    List<LogFile> find(List<Path> inputs) {
        var found = new ArrayList<LogFile>();
        for (var input : inputs) {
            if (Files.isDirectory(input)) {
                found.addAll(below(input));
            } else {
                found.add(new LogFile(
                        input, Optional.ofNullable(input.getParent()).orElse(Path.of("")), true));
            }
        }
        return found;
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
                    unreadable(file, e);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            unreadable(folder, e);
        }
        files.sort(Comparator.comparing(file -> file.name().replace('\\', '/')));
        return files;
    }

    private void unreadable(Path file, IOException cause) {
        ledger.files.in(1);
        ledger.files.rejected(1);
        ledger.problem(BrokenFile.problem(Where.file(file.toString()), cause));
    }
}
