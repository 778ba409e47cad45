package org.tautlog.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A file of a report: named safely, whatever a serial holds, and moved to its place only when it is whole. */
final class ReportFile {
    static final String FOLDER = "Folder to write to (default: ${DEFAULT-VALUE}).";

    private static final int LONGEST_NAME = 60;
    private static final int HASH_BYTES = 4;

    private ReportFile() {}

    /** Writes something. */
    interface Content {
        void write(Writer out) throws IOException;
    }

    /** Writes something that is not text. */
    interface Print {
        void write(OutputStream out) throws IOException;
    }

    /** A part of a file's name: what is not plain becomes an underscore, and a piece of hash keeps two such names apart. */
    static String name(String text) {
        var plain = text.replaceAll("[^A-Za-z0-9._-]", "_").replaceFirst("^[.-]", "_");
        plain = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
        return plain.equals(text) ? plain : plain + '-' + hash(text);
    }

    static Path write(Path folder, String name, Content content) throws IOException {
        makeFolder(folder);
        var file = folder.resolve(name);
        var part = part(file);
        try (var out = Files.newBufferedWriter(part)) {
            content.write(out);
        }
        return Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    static Path print(Path folder, String name, Print content) throws IOException {
        makeFolder(folder);
        var file = folder.resolve(name);
        var part = part(file);
        try (var out = new BufferedOutputStream(Files.newOutputStream(part))) {
            content.write(out);
        }
        return Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    static void makeFolder(Path folder) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw Refusal.wrongUse(folder + " is a file; name a folder with --out DIR");
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw Refusal.wrongUse("the folder " + folder + " cannot be made ("
                    + e.getClass().getSimpleName() + "); name one with --out DIR where files may be written");
        }
        if (!Files.isWritable(folder)) {
            throw Refusal.wrongUse("no file may be written to " + folder + "; name another folder with --out DIR");
        }
    }

    /** Where a file is written until it is whole. */
    static Path part(Path file) {
        return file.resolveSibling(file.getFileName() + ".part");
    }

    private static String hash(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, HASH_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
