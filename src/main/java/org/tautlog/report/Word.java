package org.tautlog.report;

import java.util.Locale;

/** The word of a constant in files: lower case with hyphens. */
final class Word {
    private Word() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
