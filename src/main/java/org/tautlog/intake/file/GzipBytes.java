package org.tautlog.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.GZIPInputStream;

/** Unpacks gzip and says whether more stands in the file than its members: the library passes over that in silence. */
public final class GzipBytes extends GZIPInputStream {
    /** Checksum and length behind each member. Source: RFC 1952, 2.3. */
    private static final int TRAILER = 8;

    private final InputStream packed;

    /**
     * Begins to unpack.
     *
     * @param packed the packed bytes, from a file
     * @throws IOException where they are no gzip
     */
    public GzipBytes(InputStream packed) throws IOException {
        super(packed, 1 << 15);
        this.packed = packed;
    }

    /**
     * Says whether bytes follow that belong to no member; to be asked at the end.
     *
     * @return whether they do
     * @throws IOException where the file cannot be read
     */
    public boolean hasBytesBehind() throws IOException {
        return inf.getRemaining() > TRAILER || packed.available() > 0;
    }
}
