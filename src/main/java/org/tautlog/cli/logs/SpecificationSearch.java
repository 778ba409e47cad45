package org.tautlog.cli.logs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.joint.window.JointSpecification;

/** Finds the joint specification that lies with the logs; where two differ it does not choose. */
public final class SpecificationSearch {
    private static final String NAME = "joint.toml";

    private SpecificationSearch() {}

    /**
     * The specification beside some logs; a {@link Refusal} where there is none or more than one.
     *
     * @param logs files and folders
     * @return the specification's file
     */
    public static Path beside(List<Path> logs) {
        var found = new LinkedHashMap<Path, Path>();
        for (var log : logs) {
            var folder = Files.isDirectory(log) ? log : log.toAbsolutePath().getParent();
            var file = folder == null ? Path.of(NAME) : folder.resolve(NAME);
            if (Files.isRegularFile(file)) {
                found.putIfAbsent(real(file), shown(log, file));
            }
        }
        if (found.isEmpty()) {
            throw Refusal.wrongUse("there is no " + NAME + " with the logs given ("
                    + logs.stream().map(Path::toString).collect(Collectors.joining(", "))
                    + "); name the joint specification with --spec FILE");
        }
        if (found.size() > 1) {
            throw Refusal.wrongUse("the logs given lie with different specifications: "
                    + found.values().stream().map(Path::toString).collect(Collectors.joining(", "))
                    + "; judge them one by one, or name one with --spec FILE");
        }
        return found.values().iterator().next();
    }

    /**
     * Reads a specification; a {@link Refusal} where it cannot be used.
     *
     * @param file the file
     * @return the specification
     */
    public static JointSpecification read(Path file) {
        return Refusal.orRefuse(SpecificationFile.read(file));
    }

    private static Path shown(Path log, Path file) {
        return Files.isDirectory(log) ? file : log.resolveSibling(NAME);
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
