package org.tautlog.intake;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.FilterOutputStream;
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
interface LogOutput extends Closeable {
    /** The archive format's earliest time; a fixed one keeps the bytes the same. */
    LocalDateTime FIXED_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    Writer begin(String name) throws IOException;

    @Override
    default void close() throws IOException {}

    static LogOutput folder(Path folder, Packing packing) throws IOException {
        Files.createDirectories(folder);
        return name -> packing == Packing.GZIP
                ? text(new GZIPOutputStream(create(folder.resolve(name + ".gz"))))
                : text(create(folder.resolve(name)));
    }

    static LogOutput file(Path file, Packing packing) throws IOException {
        createParent(file);
        return name -> text(packing == Packing.GZIP ? new GZIPOutputStream(create(file)) : create(file));
    }

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

    /** Closing it ends the entry, not the archive. */
    final class EntryStream extends FilterOutputStream {
        private final ZipOutputStream zip;

        EntryStream(ZipOutputStream zip) {
            super(zip);
            this.zip = zip;
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            zip.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            zip.closeEntry();
        }
    }
}
