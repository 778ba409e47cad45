package org.tautlog.intake.file;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.util.zip.ZipOutputStream;

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
