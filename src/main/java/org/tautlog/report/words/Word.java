package org.tautlog.report.words;

import java.util.Locale;

/** The word of a constant in files: lower case with hyphens. */
public final class Word {
    private Word() {}

    /**
     * {@return the word of a constant: {@code too-few-samples} of {@code TOO_FEW_SAMPLES}}
     *
     * @param constant the constant
     */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
