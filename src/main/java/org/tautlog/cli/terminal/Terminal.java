package org.tautlog.cli.terminal;

import java.io.Console;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.Verdict;
import picocli.CommandLine.Help.Ansi;

/** What may reach a terminal: text of logs without control characters, and colour only where it is wanted. */
public final class Terminal {
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]");

    private Terminal() {}

    /**
     * Whether a person sits at it. From Java 22 on there is a console even where nobody does, and only {@code isTerminal}
     * tells.
     *
     * @return true where the program writes to a terminal
     */
    public static boolean isAttended() {
        return isTerminal(System.console());
    }

    private static boolean isTerminal(@Nullable Console console) {
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }

    /**
     * A text from outside without escape sequences, line ends or marks that turn the direction of reading.
     *
     * @param text any text
     * @return the text, a question mark in place of each such character
     */
    public static String harmless(String text) {
        return CONTROL.matcher(text).replaceAll("?");
    }

    /**
     * A verdict by shape and word; by colour too where the terminal has it and NO_COLOR does not forbid it.
     *
     * @param verdict the verdict
     * @param width the least width in characters, colour not counted
     * @param ansi whether there is colour
     * @return the text to print
     */
    public static String verdict(Verdict verdict, int width, Ansi ansi) {
        var word = mark(verdict) + " " + verdict.word();
        var padded = word + " ".repeat(Math.max(0, width - word.length()));
        return ansi.string("@|" + style(verdict) + ' ' + padded + "|@");
    }

    private static char mark(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> '○';
            case REVIEW -> '◆';
            case UNJUDGED -> '□';
            case NONCONFORMING -> '▲';
        };
    }

    private static String style(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> "cyan";
            case REVIEW -> "yellow";
            case UNJUDGED -> "magenta";
            case NONCONFORMING -> "bold,red";
        };
    }
}
