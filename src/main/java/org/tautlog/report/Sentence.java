package org.tautlog.report;

/** Words as sentences: a capital first, a full stop last. */
final class Sentence {
    private Sentence() {}

    /** A message as a sentence: capital first, full stop last. */
    static String of(String message) {
        return capital(message) + (message.endsWith(".") ? "" : ".");
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
