package org.tautlog.intake.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The encoding of a text, told from its first bytes.
 *
 * @param charset the encoding
 * @param markBytes length of the byte-order mark before the text; 0 where there is none
 * @param certain whether the bytes leave no doubt: a byte-order mark, or well-formed UTF-8
 */
public record Encoding(Charset charset, int markBytes, boolean certain) {
    /** How many bytes are enough to tell. */
    public static final int HEAD_BYTES = 1 << 16;

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    /**
     * Tells the encoding: a byte-order mark decides; zero bytes in every other place are UTF-16; what is well-formed
     * UTF-8 is UTF-8; anything else is windows-1252 where a byte stands that ISO-8859-1 has no sign for, else
     * ISO-8859-1.
     *
     * @param head the first bytes of the file
     * @param length how many of them are filled
     * @return the encoding, or empty where the bytes are no text
     */
    public static Optional<Encoding> sniff(byte[] head, int length) {
        if (begins(head, length, 0xEF, 0xBB, 0xBF)) {
            return Optional.of(new Encoding(StandardCharsets.UTF_8, 3, true));
        }
        if (begins(head, length, 0xFF, 0xFE)) {
            return Optional.of(new Encoding(StandardCharsets.UTF_16LE, 2, true));
        }
        if (begins(head, length, 0xFE, 0xFF)) {
            return Optional.of(new Encoding(StandardCharsets.UTF_16BE, 2, true));
        }
        if (mostlyZero(head, length, 1)) {
            return Optional.of(new Encoding(StandardCharsets.UTF_16LE, 0, false));
        }
        if (mostlyZero(head, length, 0)) {
            return Optional.of(new Encoding(StandardCharsets.UTF_16BE, 0, false));
        }
        if (isBinary(head, length)) {
            return Optional.empty();
        }
        boolean ascii = true;
        for (int i = 0; i < length; i++) {
            ascii &= head[i] >= 0;
        }
        if (ascii || isUtf8(head, length)) {
            return Optional.of(new Encoding(StandardCharsets.UTF_8, 0, true));
        }
        return Optional.of(
                new Encoding(holdsWindowsSigns(head, length) ? WINDOWS : StandardCharsets.ISO_8859_1, 0, false));
    }

    /** From 0x80 to 0x9F ISO-8859-1 has control characters, which no export writes; there Windows has quotes and dashes. */
    private static boolean holdsWindowsSigns(byte[] head, int length) {
        for (int i = 0; i < length; i++) {
            int b = head[i] & 0xFF;
            if (b >= 0x80 && b <= 0x9F) {
                return true;
            }
        }
        return false;
    }

    private static boolean begins(byte[] head, int length, int... mark) {
        if (length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** Text of our trade in UTF-16 is nearly all ASCII: a zero in one half of each pair and none in the other. */
    private static boolean mostlyZero(byte[] head, int length, int half) {
        int pairs = length / 2;
        int zeros = 0;
        for (int i = 0; i < pairs; i++) {
            if (head[2 * i + half] == 0 && head[2 * i + 1 - half] != 0) {
                zeros++;
            }
        }
        return pairs > 1 && zeros > 0.8 * pairs;
    }

    /** A text may hold a few stray control characters, where a disk filled up or a cable was pulled. */
    private static boolean isBinary(byte[] head, int length) {
        int control = 0;
        for (int i = 0; i < length; i++) {
            int b = head[i];
            if (b >= 0 && b < 0x20 && b != '\t' && b != '\n' && b != '\r' && b != '\f' && b != 0x1A) {
                control++;
            }
        }
        return control > 0.3 * length;
    }

    private static boolean isUtf8(byte[] head, int length) {
        return firstMalformed(head, length) < 0;
    }

    /**
     * The line on which the first bytes stand that are no UTF-8.
     *
     * @param head the first bytes of the file
     * @param length how many of them are filled
     * @return the 1-based line; 0 where there are none
     */
    public static int lineOfMalformed(byte[] head, int length) {
        int at = firstMalformed(head, length);
        int line = at < 0 ? 0 : 1;
        for (int i = 0; i < at; i++) {
            line += head[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    private static int firstMalformed(byte[] head, int length) {
        var bytes = ByteBuffer.wrap(head, 0, length);
        // The last character may be cut by the end of the head: that is no fault yet.
        var result = StandardCharsets.UTF_8.newDecoder().decode(bytes, CharBuffer.allocate(length + 1), false);
        return result.isError() ? bytes.position() : -1;
    }
}
