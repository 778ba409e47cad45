package org.tautlog.intake.layout;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.tautlog.intake.text.NumberForm;

/** Tells from cells of numbers which mark stands before decimals, and what stands between values of a list cell. */
public final class NumberSearch {
    private static final Pattern BETWEEN_VALUES = Pattern.compile("[\\s;|\\[\\]]+");
    private static final Pattern COMMA_LAST = Pattern.compile("[-+\u2212]?[0-9.' \u00a0]*,[0-9]+([eE][-+]?[0-9]+)?");
    private static final Pattern POINT_LAST = Pattern.compile("[-+\u2212]?[0-9,' \u00a0]*\\.[0-9]+([eE][-+]?[0-9]+)?");

    /** One group of three digits and no more: 1.234 may be a thousand or one. */
    private static final Pattern GROUPED = Pattern.compile("[-+\u2212]?[0-9]{1,3}[.,][0-9]{3}");

    private NumberSearch() {}

    /**
     * Tells the decimal mark.
     *
     * @param cells cells that hold numbers
     * @return the mark that ends more of the values; a point where neither is seen
     */
    public static char decimalMark(List<String> cells) {
        int commas = 0;
        int points = 0;
        if (cells.stream().noneMatch(cell -> cell.indexOf(',') >= 0)) {
            return '.';
        }
        int sureCommas = 0;
        int surePoints = 0;
        for (var cell : cells) {
            for (var value : BETWEEN_VALUES.split(cell, -1)) {
                boolean sure = value.length() < 64 && !GROUPED.matcher(value).matches();
                if (value.length() < 64 && COMMA_LAST.matcher(value).matches()) {
                    commas++;
                    sureCommas += sure ? 1 : 0;
                } else if (value.length() < 64 && POINT_LAST.matcher(value).matches()) {
                    points++;
                    surePoints += sure ? 1 : 0;
                }
            }
        }
        // What may stand between thousands says less than what cannot.
        return sureCommas != surePoints ? (sureCommas > surePoints ? ',' : '.') : commas > points ? ',' : '.';
    }

    /**
     * Whether the other mark surely stands between thousands: it always stands before three digits, in some number of the
     * column before the decimal mark too, or the column passes from 999 to 1.000 without it.
     *
     * @param column the cells of one column, from the first row on
     * @param decimalMark the decimal mark
     * @return whether nothing else explains the column
     */
    static boolean provesThousands(List<String> column, char decimalMark) {
        char other = decimalMark == ',' ? '.' : ',';
        boolean proof = false;
        var grouped = new NumberForm(decimalMark, true);
        double before = Double.NaN;
        double longest = 0;
        int marked = 0;
        for (var cell : column) {
            double value = grouped.parse(cell).orElse(Double.NaN);
            boolean has = cell.indexOf(other) >= 0;
            if (Double.isNaN(value) && !cell.isEmpty()) {
                return false;
            }
            boolean passes = has && marked == 0 && Math.abs(before) >= 100 && Math.abs(value - before) <= 2 * longest;
            proof |= has && (cell.indexOf(decimalMark) >= 0 || passes);
            marked += has ? 1 : 0;
            longest = Double.isNaN(before) ? longest : Math.max(longest, Math.abs(value - before));
            before = value;
        }
        return proof;
    }

    /** The separator of list cells; NUL where no cell holds more than one value. */
    static char listSeparator(List<String> cells, NumberForm numbers) {
        for (var cell : cells) {
            var inside = withoutBrackets(cell);
            char separator = separatorIn(inside, numbers.decimalMark());
            if (separator != 0 && numbers.parse(inside).isEmpty() && areNumbers(inside, separator, numbers)) {
                return separator;
            }
        }
        return 0;
    }

    private static boolean areNumbers(String cell, char separator, NumberForm numbers) {
        return Arrays.stream(cell.split(Pattern.quote(String.valueOf(separator)) + " *", -1))
                .allMatch(value -> numbers.parse(value.strip()).isPresent());
    }

    private static char separatorIn(String cell, char decimalMark) {
        for (char sure : new char[] {';', '|'}) {
            if (cell.indexOf(sure) >= 0) {
                return sure;
            }
        }
        if (decimalMark == '.' && cell.indexOf(',') >= 0) {
            return ',';
        }
        return cell.indexOf(' ') >= 0 ? ' ' : 0;
    }

    /** The inside of a list that is written {@code [ ... ]}. */
    static String withoutBrackets(String cell) {
        return cell.startsWith("[") && cell.endsWith("]") && cell.length() > 1
                ? cell.substring(1, cell.length() - 1).strip()
                : cell;
    }
}
