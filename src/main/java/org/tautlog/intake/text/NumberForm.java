package org.tautlog.intake.text;

import java.util.OptionalDouble;

/**
 * How numbers are written. A mark between thousands is taken where it stands right (before each three digits) and
 * cannot be the decimal mark: a blank or an apostrophe always, {@code .} and {@code ,} where the file says so or where
 * the number has its decimal mark too. Whatever else is no number: {@code NaN}, {@code 0x1F}, {@code 1.5d}, {@code ---}.
 *
 * @param decimalMark {@code .} or {@code ,}
 * @param thousandsStated whether the file's layout says that the other mark stands between thousands
 */
public record NumberForm(char decimalMark, boolean thousandsStated) {
    /** Longer digits than any export writes; what is longer is no number but damage. */
    private static final int LONGEST = 64;

    private static final int MOST_DIGITS = 15;
    private static final double[] POWERS_OF_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    public NumberForm {
        if (decimalMark != '.' && decimalMark != ',') {
            throw new IllegalArgumentException("decimalMark is '" + decimalMark + "'; it must be '.' or ','");
        }
    }

    /**
     * Reads a number.
     *
     * @param cell the stripped cell
     * @return the number; empty where the cell is none, or not a finite one
     */
    public OptionalDouble parse(String cell) {
        if (cell.isEmpty() || cell.length() > LONGEST) {
            return OptionalDouble.empty();
        }
        double quick = shortDecimal(cell, decimalMark);
        if (!Double.isNaN(quick)) {
            return OptionalDouble.of(quick);
        }
        boolean plain = true;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            plain &= (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == 'e' || c == 'E';
        }
        if (plain && decimalMark == '.') {
            return toDouble(cell);
        }
        var rewritten = rewritten(cell);
        return rewritten.isEmpty() ? OptionalDouble.empty() : toDouble(rewritten);
    }

    /**
     * A number of at most 15 digits and no more than a sign and a mark beside them; NaN where it is another. Digits below
     * 2^53 and powers of ten up to 10^22 are exact in a double, so that one division rounds once, as the long way does.
     *
     * Source: W. D. Clinger, "How to read floating point numbers accurately", PLDI 1990, the fast path.
     */
    private static double shortDecimal(String cell, char mark) {
        int length = cell.length();
        int at = cell.charAt(0) == '-' ? 1 : 0;
        if (length - at > MOST_DIGITS + 1 || length == at) {
            return Double.NaN;
        }
        long digits = 0;
        int count = 0;
        int behind = -1;
        for (int i = at; i < length; i++) {
            char c = cell.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                count++;
                behind = behind < 0 ? behind : behind + 1;
            } else if (c == mark && behind < 0 && count > 0) {
                behind = 0;
            } else {
                return Double.NaN;
            }
        }
        if (count > MOST_DIGITS || behind == 0) {
            return Double.NaN;
        }
        double value = behind < 0 ? digits : digits / POWERS_OF_TEN[behind];
        return at == 0 ? value : -value;
    }

    /** {@return the mark that may stand between thousands beside blank and apostrophe} */
    public char thousandsMark() {
        return decimalMark == '.' ? ',' : '.';
    }

    /** The number with a decimal point and without marks between thousands; empty where it is no number. */
    private String rewritten(String cell) {
        int exponent = Math.max(cell.indexOf('e'), cell.indexOf('E'));
        var mantissa = exponent < 0 ? cell : cell.substring(0, exponent);
        var tail = exponent < 0 ? "" : cell.substring(exponent);
        int mark = mantissa.lastIndexOf(decimalMark);
        var whole = mark < 0 ? mantissa : mantissa.substring(0, mark);
        var fraction = mark < 0 ? "" : '.' + mantissa.substring(mark + 1);
        var digits = new StringBuilder();
        int sinceMark = -1;
        for (int i = 0; i < whole.length(); i++) {
            char c = whole.charAt(i);
            if (isGroupMark(c, mark >= 0)) {
                if (sinceMark >= 0 ? sinceMark != 3 : !isFirstGroup(digits)) {
                    return "";
                }
                sinceMark = 0;
            } else if (c >= '0' && c <= '9') {
                digits.append(c);
                sinceMark = sinceMark < 0 ? sinceMark : sinceMark + 1;
            } else if (i == 0 && (c == '-' || c == '+' || c == '\u2212')) {
                digits.append(c == '+' ? "" : "-");
            } else {
                return "";
            }
        }
        boolean grouped = sinceMark < 0 || sinceMark == 3;
        return grouped && isAscii(fraction + tail) ? digits + fraction + tail : "";
    }

    private static boolean isFirstGroup(StringBuilder digits) {
        int count = digits.indexOf("-") == 0 ? digits.length() - 1 : digits.length();
        return count >= 1 && count <= 3;
    }

    private boolean isGroupMark(char c, boolean hasDecimals) {
        return c == ' '
                || c == '\u00a0'
                || c == '\u202f'
                || c == '\''
                || c == '\u2019'
                || (c == thousandsMark() && (thousandsStated || hasDecimals));
    }

    private static boolean isAscii(String text) {
        return text.chars()
                .allMatch(c -> (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == 'e' || c == 'E');
    }

    private static OptionalDouble toDouble(String text) {
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
