package org.tautlog.report.words;

/** Words as sentences: a capital first, a full stop last. */
public final class Sentence {
    private Sentence() {}

    /**
     * {@return a message as a sentence: capital first, full stop last}
     *
     * @param message the message; may end in a full stop already
     */
    public static String of(String message) {
        return capital(message) + (message.endsWith(".") ? "" : ".");
    }

    /**
     * {@return the words with a capital first}
     *
     * @param words the words; may be empty
     */
    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
