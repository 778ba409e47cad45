package org.tautlog.archive.ledger;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;

/**
 * Signs seals and checks them, with Ed25519 keys in the PEM files that common tools write:
 *
 * <pre>
 * openssl genpkey -algorithm ed25519 -out seal.key
 * openssl pkey -in seal.key -pubout -out seal.pub
 * openssl pkeyutl -verify -pubin -inkey seal.pub -rawin -in seal-0001.txt -sigfile seal-0001.sig
 * </pre>
 *
 * <p>Source: RFC 8032 for Ed25519, RFC 8410 for the keys, RFC 7468 for PEM.
 */
public final class SealKeys {
    private static final String ALGORITHM = "Ed25519";

    private SealKeys() {}

    /**
     * Reads a private key.
     *
     * @param pem the text of a PEM file with a PKCS #8 private key
     * @return the key
     * @throws IllegalArgumentException where the text holds no such key
     */
    public static PrivateKey privateKey(String pem) {
        try {
            return KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(body(pem, "PRIVATE KEY")));
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("the text holds no Ed25519 private key", e);
        }
    }

    /**
     * Reads a public key.
     *
     * @param pem the text of a PEM file with a public key
     * @return the key
     * @throws IllegalArgumentException where the text holds no such key
     */
    public static PublicKey publicKey(String pem) {
        try {
            return KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(body(pem, "PUBLIC KEY")));
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("the text holds no Ed25519 public key", e);
        }
    }

    /**
     * Signs a seal.
     *
     * @param seal the seal
     * @param key an Ed25519 key
     * @return 64 bytes
     */
    public static byte[] sign(Seal seal, PrivateKey key) {
        try {
            var signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(seal.text().getBytes(StandardCharsets.UTF_8));
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("the key cannot sign", e);
        }
    }

    /**
     * Checks a seal.
     *
     * @param seal the seal
     * @param signature what came with it
     * @param key the public key of whoever should have signed it
     * @return whether the signature is that key's, over that very text
     */
    public static boolean isSignedBy(Seal seal, byte[] signature, PublicKey key) {
        try {
            var check = Signature.getInstance(ALGORITHM);
            check.initVerify(key);
            check.update(seal.text().getBytes(StandardCharsets.UTF_8));
            return check.verify(signature);
        } catch (GeneralSecurityException e) {
            return false;
        }
    }

    private static byte[] body(String pem, String kind) {
        var begin = "-----BEGIN " + kind + "-----";
        var end = "-----END " + kind + "-----";
        int from = pem.indexOf(begin);
        int to = pem.indexOf(end);
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("the text has no '" + begin + "' with its end");
        }
        return Base64.getMimeDecoder().decode(pem.substring(from + begin.length(), to));
    }
}
