package org.tautlog.intake;

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
record SealedFile(String sha256, long bytes, Kind kind) {
    private static final int BLOCK = 1 << 16;

    /** What a file is packed as. */
    enum Kind {
        /** Not packed. */
        PLAIN,
        /** Packed with gzip. */
        GZIP,
        /** A zip archive. */
        ZIP
    }

    static SealedFile of(Path file) throws IOException {
        var digest = Sha256.digest();
        try (var stream = new DigestInputStream(Files.newInputStream(file), digest)) {
            var head = stream.readNBytes(4);
            long bytes = head.length + drain(stream);
            return new SealedFile(Sha256.hex(digest.digest()), bytes, kind(head));
        }
    }

    static long drain(InputStream stream) throws IOException {
        var block = new byte[BLOCK];
        long bytes = 0;
        for (int n = stream.read(block); n >= 0; n = stream.read(block)) {
            bytes += n;
        }
        return bytes;
    }

    static Kind kind(byte[] head) {
        if (head.length >= 2 && (head[0] & 0xFF) == 0x1F && (head[1] & 0xFF) == 0x8B) {
            return Kind.GZIP;
        }
        boolean zip = head.length >= 4 && head[0] == 'P' && head[1] == 'K';
        return zip && ((head[2] == 3 && head[3] == 4) || (head[2] == 5 && head[3] == 6)) ? Kind.ZIP : Kind.PLAIN;
    }

    /** Unpacked bytes, refused once they are too many for the packed ones. */
    static final class Unpacked extends FilterInputStream {
        private static final long HARMLESS = 1L << 24;
        private final long most;
        private long bytes;

        Unpacked(InputStream stream, long packed, ReadBounds bounds) {
            super(stream);
            this.most = Math.min(bounds.mostUnpackedBytes(), Math.max(HARMLESS, packed * bounds.mostUnpackedRatio()));
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
