package org.tautlog.cli;

/** A number with its noun, in the singular where there is one. */
final class Counted {
    private Counted() {}

    static String of(long n, String one) {
        return n + " " + one + (n == 1 ? "" : one.endsWith("ch") ? "es" : "s");
    }
}
