package org.tautlog.intake.toml;

import java.util.Optional;

/** The valid word that a mistyped one most likely means. */
final class Nearest {
    private Nearest() {}

    /** The word with the fewest single-letter edits, where at most about a third of the letters must change. */
    static Optional<String> of(String word, Iterable<String> valid) {
        int fewest = Math.max(1, Math.min(word.length(), 64) / 3) + 1;
        String best = null;
        for (var candidate : valid) {
            int edits = word.length() > 64 ? fewest : edits(word, candidate);
            if (edits < fewest) {
                fewest = edits;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Levenshtein's distance: insertions, deletions and replacements of one letter. */
    static int edits(String from, String to) {
        var row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
