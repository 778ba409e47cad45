package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.tautlog.cli.terminal.Refusal;

/** A key in a file of its user's. */
final class KeyFile {
    private KeyFile() {}

    static <K> K read(Path file, Function<String, K> key) throws IOException {
        try {
            return key.apply(Files.readString(file));
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(file + " cannot be used as a key: " + e.getMessage());
        }
    }
}
