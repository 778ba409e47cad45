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
        for (var cell : cells) {
            for (var value : BETWEEN_VALUES.split(cell, -1)) {
                if (value.length() < 64 && COMMA_LAST.matcher(value).matches()) {
                    commas++;
                } else if (value.length() < 64 && POINT_LAST.matcher(value).matches()) {
                    points++;
                }
            }
        }
        return commas > points ? ',' : '.';
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
