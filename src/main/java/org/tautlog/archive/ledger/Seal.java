package org.tautlog.archive.ledger;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.HashMap;

/**
 * The state of an archive at one moment, as a text that a key holder signs: how long the chain is and the hash at its
 * end. As each entry holds the hash of the one before, and each batch's entry the hashes of all its files, these two
 * numbers stand for every byte of the record.
 *
 * @param entries how many entries the chain had
 * @param head the hash of the last of them, in lower-case hex
 * @param time when it was sealed, as the sealer's clock said
 * @param by who sealed it; one line, never blank
 */
public record Seal(int entries, String head, OffsetDateTime time, String by) {
    private static final String TITLE = "tautlog archive seal";

    public Seal {
        if (entries < 0) {
            throw new IllegalArgumentException("entries is " + entries + "; a chain has at least 0");
        }
        if (!head.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("head is '" + head + "'; a SHA-256 in lower-case hex is needed");
        }
        if (by.isBlank() || by.lines().count() != 1) {
            throw new IllegalArgumentException("by is '" + by + "'; one line with a name is needed");
        }
    }

    /** {@return the text that is signed} */
    public String text() {
        return TITLE + "\nentries: " + entries + "\nhead: " + head + "\ntime: " + time + "\nby: " + by + "\n";
    }

    /**
     * Reads a seal's text.
     *
     * @param text the text, exactly as {@link #text()} gives it
     * @return the seal
     * @throws IllegalArgumentException where the text is not that of a seal
     */
    public static Seal parse(String text) {
        var values = new HashMap<String, String>();
        text.lines().skip(1).forEach(line -> {
            int colon = line.indexOf(": ");
            if (colon > 0) {
                values.put(line.substring(0, colon), line.substring(colon + 2));
            }
        });
        try {
            var seal = new Seal(
                    Integer.parseInt(values.getOrDefault("entries", "")),
                    values.getOrDefault("head", ""),
                    OffsetDateTime.parse(values.getOrDefault("time", "")),
                    values.getOrDefault("by", ""));
            if (seal.text().equals(text)) {
                return seal;
            }
        } catch (NumberFormatException | DateTimeParseException e) {
            throw new IllegalArgumentException("this is not the text of a seal", e);
        }
        throw new IllegalArgumentException("this is not the text of a seal");
    }
}
