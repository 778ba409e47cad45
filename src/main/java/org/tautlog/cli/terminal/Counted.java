package org.tautlog.cli.terminal;

/** A number with its noun, in the singular where there is one. */
public final class Counted {
    private Counted() {}

    /**
     * So many of something.
     *
     * @param n how many
     * @param one the noun in the singular
     * @return number and noun
     */
    public static String of(long n, String one) {
        return n + " " + one + (n == 1 ? "" : one.endsWith("ch") ? "es" : "s");
    }
}
