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
        double number = parse(cell.toCharArray(), 0, cell.length());
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    /**
     * Reads a number within a text.
     *
     * @param text the text
     * @param from where the stripped cell begins
     * @param until where it ends
     * @return the number, finite; NaN where the cell is none
     */
    double parse(char[] text, int from, int until) {
        if (until == from || until - from > LONGEST) {
            return Double.NaN;
        }
        double quick = shortDecimal(text, from, until, decimalMark);
        return Double.isNaN(quick) ? parseLong(new String(text, from, until - from)) : quick;
    }

    private double parseLong(String cell) {
        if (decimalMark == '.' && isPlain(cell)) {
            return toDouble(cell);
        }
        var rewritten = rewritten(cell);
        return rewritten.isEmpty() ? Double.NaN : toDouble(rewritten);
    }

    /**
     * A number of at most 15 digits and no more than a sign and a mark beside them; NaN where it is another. Digits below
     * 2^53 and powers of ten up to 10^22 are exact in a double, so that one division rounds once, as the long way does.
     *
     * Source: W. D. Clinger, "How to read floating point numbers accurately", PLDI 1990, the fast path.
     */
    private static double shortDecimal(char[] text, int from, int until, char mark) {
        int at = text[from] == '-' ? from + 1 : from;
        if (until - at > MOST_DIGITS + 1 || until == at) {
            return Double.NaN;
        }
        long digits = 0;
        int behind = until;
        for (int i = at; i < until; i++) {
            char c = text[i];
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
            } else if (c == mark && behind == until && i > at) {
                behind = i + 1;
            } else {
                return Double.NaN;
            }
        }
        boolean marked = text[behind - 1] == mark;
        if ((marked && behind == until) || until - at - (marked ? 1 : 0) > MOST_DIGITS) {
            return Double.NaN;
        }
        double value = digits / POWERS_OF_TEN[until - behind];
        return at == from ? value : -value;
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
        return grouped && isPlain(fraction + tail) ? digits + fraction + tail : "";
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

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E') {
                return false;
            }
        }
        return true;
    }

    private static double toDouble(String text) {
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? value : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
