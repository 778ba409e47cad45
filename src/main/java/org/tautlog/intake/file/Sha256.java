package org.tautlog.intake.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), which every Java has. */
public final class Sha256 {
    private Sha256() {}

    /** {@return a fresh digest} */
    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * A hash as text.
     *
     * @param hash its bytes
     * @return lower-case hex
     */
    public static String hex(byte[] hash) {
        return HexFormat.of().formatHex(hash);
    }
}
