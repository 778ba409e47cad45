package org.tautlog.intake.text;

/**
 * Keeps a spreadsheet from evaluating a text cell as a formula, so that the reader gives back the very text.
 *
 * <p>A text that begins with {@code = + - @}, with a wide form of one of these or with an apostrophe is written with
 * one apostrophe before it; reading drops an apostrophe that stands before one of these signs. A foreign
 * {@code 'abc} stays as it is. Reading takes the text out of {@code ="abc"} too. Numbers are no text and are never guarded.
 *
 * <p>Source: OWASP, "CSV Injection", for the signs; the wide forms from memory.
 */
public final class FormulaGuard {
    private static final char APOSTROPHE = '\'';
    private static final String SIGNS = "=+-@'\uff1d\uff0b\uff0d\uff20";

    private FormulaGuard() {}

    /**
     * A text as it is written.
     *
     * @param text any text
     * @return the text, with an apostrophe before it where it needs one
     */
    public static String guard(String text) {
        return beginsWithSign(text, 0) ? APOSTROPHE + text : text;
    }

    /**
     * A text as it was before it was written.
     *
     * @param cell a cell that was read
     * @return the text, without what guarded it
     */
    public static String unguard(String cell) {
        if (isFormula(cell)) {
            return cell.substring(2, cell.length() - 1).replace("\"\"", "\"");
        }
        return !cell.isEmpty() && cell.charAt(0) == APOSTROPHE && beginsWithSign(cell, 1) ? cell.substring(1) : cell;
    }

    /**
     * Says whether a cell is a formula that gives nothing but a text, as others keep a spreadsheet from dropping zeros.
     *
     * @param cell a cell that was read, such as {@code ="00004711"}
     * @return whether it is
     */
    public static boolean isFormula(String cell) {
        return cell.length() > 3 && cell.startsWith("=\"") && cell.endsWith("\"");
    }

    private static boolean beginsWithSign(String text, int at) {
        return text.length() > at && SIGNS.indexOf(text.charAt(at)) >= 0;
    }
}
