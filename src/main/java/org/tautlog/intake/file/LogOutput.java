package org.tautlog.intake.file;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Where written text goes: files of a folder, one file, or entries of an archive; the same bytes for the same text. */
public interface LogOutput extends Closeable {
    /** The archive format's earliest time; a fixed one keeps the bytes the same. */
    LocalDateTime FIXED_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    /**
     * Begins the next file or entry.
     *
     * @param name its name; a single file keeps its own
     * @return takes its text, and ends it when closed
     * @throws IOException where it cannot be written
     */
    Writer begin(String name) throws IOException;

    @Override
    default void close() throws IOException {}

    /**
     * Files of a folder.
     *
     * @param folder the folder; made where it is missing
     * @param gzip whether each file goes through gzip
     * @return the output
     * @throws IOException where the folder cannot be made
     */
    static LogOutput folder(Path folder, boolean gzip) throws IOException {
        Files.createDirectories(folder);
        return name -> gzip
                ? text(new GZIPOutputStream(create(folder.resolve(name + ".gz"))))
                : text(create(folder.resolve(name)));
    }

    /**
     * One file.
     *
     * @param file the file; its folder is made where it is missing
     * @param gzip whether it goes through gzip
     * @return the output
     * @throws IOException where the folder cannot be made
     */
    static LogOutput file(Path file, boolean gzip) throws IOException {
        createParent(file);
        return name -> text(gzip ? new GZIPOutputStream(create(file)) : create(file));
    }

    /**
     * Entries of a zip archive.
     *
     * @param file the archive; its folder is made where it is missing
     * @return the output
     * @throws IOException where it cannot be made
     */
    static LogOutput archive(Path file) throws IOException {
        createParent(file);
        var zip = new ZipOutputStream(create(file), StandardCharsets.UTF_8);
        return new LogOutput() {
            @Override
            public Writer begin(String name) throws IOException {
                var entry = new ZipEntry(name);
                entry.setTimeLocal(FIXED_TIME);
                zip.putNextEntry(entry);
                return text(new EntryStream(zip));
            }

            @Override
            public void close() throws IOException {
                zip.close();
            }
        };
    }

    private static void createParent(Path file) throws IOException {
        var parent = file.toAbsolutePath().getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
    }

    private static OutputStream create(Path file) throws IOException {
        return new BufferedOutputStream(Files.newOutputStream(file, StandardOpenOption.CREATE_NEW));
    }

    private static Writer text(OutputStream bytes) {
        return new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
    }
}
