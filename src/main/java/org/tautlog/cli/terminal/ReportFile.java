package org.tautlog.cli.terminal;

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
public final class ReportFile {
    /** What help says of the folder. */
    public static final String FOLDER = "Folder to write to (default: ${DEFAULT-VALUE}).";

    private static final int LONGEST_NAME = 60;
    private static final int HASH_BYTES = 4;

    private ReportFile() {}

    /** Writes something. */
    public interface Content {
        /**
         * Writes it.
         *
         * @param out where to
         * @throws IOException if it cannot be written
         */
        void write(Writer out) throws IOException;
    }

    /** Writes something that is not text. */
    public interface Print {
        /**
         * Writes it.
         *
         * @param out where to
         * @throws IOException if it cannot be written
         */
        void write(OutputStream out) throws IOException;
    }

    /**
     * A part of a file's name: what is not plain becomes an underscore, and a piece of hash keeps two such names apart.
     *
     * @param text any text, a serial say
     * @return letters, digits, dot, underscore and hyphen only
     */
    public static String name(String text) {
        var plain = text.replaceAll("[^A-Za-z0-9._-]", "_").replaceFirst("^[.-]", "_");
        plain = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
        return plain.equals(text) ? plain : plain + '-' + hash(text);
    }

    /**
     * Writes a file of text.
     *
     * @param folder made where it is not there
     * @param name the file's name
     * @param content what is written
     * @return the file
     * @throws IOException if it cannot be written
     */
    public static Path write(Path folder, String name, Content content) throws IOException {
        makeFolder(folder);
        var file = folder.resolve(name);
        var part = part(file);
        try (var out = Files.newBufferedWriter(part)) {
            content.write(out);
        }
        return Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Writes a file that is not text.
     *
     * @param folder made where it is not there
     * @param name the file's name
     * @param content what is written
     * @return the file
     * @throws IOException if it cannot be written
     */
    public static Path print(Path folder, String name, Print content) throws IOException {
        makeFolder(folder);
        var file = folder.resolve(name);
        var part = part(file);
        try (var out = new BufferedOutputStream(Files.newOutputStream(part))) {
            content.write(out);
        }
        return Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Makes sure of a folder that files may be written to, before the work begins.
     *
     * @param folder the folder
     * @throws IOException if the file system fails
     */
    public static void makeFolder(Path folder) throws IOException {
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

    /**
     * Where a file is written until it is whole.
     *
     * @param file the file it becomes
     * @return a file beside it
     */
    public static Path part(Path file) {
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
