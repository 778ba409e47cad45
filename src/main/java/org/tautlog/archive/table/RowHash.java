package org.tautlog.archive.table;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The hash that each kept row carries: SHA-256 over the columns that hold something, in the order of their names.
 *
 * <pre>
 * row     = for each column, sorted by name, that is not NULL: text(name) value
 * text    = whole(length in bytes) bytes in UTF-8
 * whole   = 8 bytes, highest first
 * number  = 8 bytes of IEEE 754, highest first
 * flag    = whole(1) or whole(0)
 * moment  = text in ISO 8601, without zone
 * list    = whole(length) items; a list whose items may be absent has whole(1) before an item that is there,
 *           whole(0) and number(0) for one that is not
 * </pre>
 *
 * <p>As empty columns do not count, a column that comes later leaves the hashes of older rows as they are. The columns
 * {@code batch} and {@code row_sha256} do not count either.
 *
 * <p>Source: FIPS 180-4 for the hash; the form is ours.
 */
public final class RowHash {
    private final MessageDigest digest = sha256();
    private final ByteBuffer pending = ByteBuffer.allocate(1024);

    RowHash() {}

    /**
     * The digest of many rows, whatever their order: SHA-256 of their hashes, sorted, one a line.
     *
     * @param rowHashes hashes of rows in lower-case hex
     * @return the digest in lower-case hex
     */
    public static String ofRows(List<String> rowHashes) {
        var sorted = String.join("\n", rowHashes.stream().sorted().toList());
        return hex(sha256().digest(sorted.getBytes(StandardCharsets.UTF_8)));
    }

    void text(String value) {
        text(value.getBytes(StandardCharsets.UTF_8));
    }

    void text(byte[] bytes) {
        whole(bytes.length);
        if (bytes.length > pending.remaining()) {
            drain();
        }
        if (bytes.length > pending.remaining()) {
            digest.update(bytes);
        } else {
            pending.put(bytes);
        }
    }

    void whole(long value) {
        if (pending.remaining() < Long.BYTES) {
            drain();
        }
        pending.putLong(value);
    }

    void number(double value) {
        whole(Double.doubleToLongBits(value));
    }

    String hex() {
        drain();
        return hex(digest.digest());
    }

    private void drain() {
        digest.update(pending.flip());
        pending.clear();
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
