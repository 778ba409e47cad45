package org.tautlog.intake.file;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;

/**
 * A file with the hash of its bytes, taken before anything of it is used, so that every trace can carry it.
 *
 * @param sha256 hash of the bytes on disk, lower-case hex
 * @param bytes how many there are
 * @param kind what the first bytes say that the file is
 */
public record SealedFile(String sha256, long bytes, Kind kind) {
    private static final int BLOCK = 1 << 16;

    /** What a file is packed as. */
    public enum Kind {
        /** Not packed. */
        PLAIN,
        /** Packed with gzip. */
        GZIP,
        /** A zip archive. */
        ZIP
    }

    /**
     * Hashes a file.
     *
     * @param file the file
     * @return the file with its hash
     * @throws IOException where it cannot be read
     */
    public static SealedFile of(Path file) throws IOException {
        var digest = Sha256.digest();
        try (var stream = new DigestInputStream(Files.newInputStream(file), digest)) {
            var head = stream.readNBytes(4);
            long bytes = head.length + drain(stream);
            return new SealedFile(Sha256.hex(digest.digest()), bytes, kind(head));
        }
    }

    /**
     * Reads bytes to their end.
     *
     * @param stream the bytes; not closed
     * @return how many there were
     * @throws IOException where they break off
     */
    public static long drain(InputStream stream) throws IOException {
        var block = new byte[BLOCK];
        long bytes = 0;
        for (int n = stream.read(block); n >= 0; n = stream.read(block)) {
            bytes += n;
        }
        return bytes;
    }

    /**
     * What the first bytes say that a file is.
     *
     * @param head the first four bytes, or fewer
     * @return what it is packed as
     */
    public static Kind kind(byte[] head) {
        if (head.length >= 2 && (head[0] & 0xFF) == 0x1F && (head[1] & 0xFF) == 0x8B) {
            return Kind.GZIP;
        }
        boolean zip = head.length >= 4 && head[0] == 'P' && head[1] == 'K';
        return zip && ((head[2] == 3 && head[3] == 4) || (head[2] == 5 && head[3] == 6)) ? Kind.ZIP : Kind.PLAIN;
    }

    /** Unpacked bytes, refused once they are too many for the packed ones. */
    public static final class Unpacked extends FilterInputStream {
        private static final long HARMLESS = 1L << 24;
        private final long most;
        private long bytes;

        /**
         * Watches bytes while they are unpacked.
         *
         * @param stream the unpacked bytes
         * @param packed how many packed bytes they come from
         * @param mostBytes most unpacked bytes
         * @param mostRatio most unpacked bytes for each packed one, where there are more than 16 MiB
         */
        public Unpacked(InputStream stream, long packed, long mostBytes, int mostRatio) {
            super(stream);
            this.most = Math.min(mostBytes, Math.max(HARMLESS, packed * mostRatio));
        }

        @Override
        public int read() throws IOException {
            int value = super.read();
            count(value < 0 ? 0 : 1);
            return value;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int n = super.read(into, from, length);
            count(Math.max(0, n));
            return n;
        }

        private void count(int more) throws IOException {
            bytes += more;
            if (bytes > most) {
                throw new BrokenFile.TooLarge("the packed file unpacks to more than " + most + " bytes");
            }
        }
    }
}
