package org.tautlog.intake;

/** Text of a file as a message may show it: short, and without signs that move a terminal's cursor. */
final class Words {
    private static final int LONGEST = 40;

    private Words() {}

    static String quoted(String text) {
        var shown = new StringBuilder("'");
        int end = Math.min(LONGEST, text.length());
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            shown.append(Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '\ufffd' : c);
        }
        return shown.append(end < text.length() ? "...'" : "'").toString();
    }
}
