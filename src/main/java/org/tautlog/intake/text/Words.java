package org.tautlog.intake.text;

/** Text of a file as a message may show it: short, and without signs that move a terminal's cursor. */
public final class Words {
    private static final int LONGEST = 40;

    private Words() {}

    /**
     * A text in single quotes, cut after a few words.
     *
     * @param text any text
     * @return the text as a message may show it
     */
    public static String quoted(String text) {
        var shown = new StringBuilder("'");
        int end = Math.min(LONGEST, text.length());
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            shown.append(Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '\ufffd' : c);
        }
        return shown.append(end < text.length() ? "...'" : "'").toString();
    }
}
