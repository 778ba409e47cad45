package org.tautlog.intake.text;

/**
 * One line of a text file.
 *
 * @param text the line without its end; where it was too long, its beginning
 * @param number 1-based number of the line
 * @param ended whether a line end stood after it; only the last line of a file can lack one
 * @param tooLong whether it was longer than the bound and so not kept whole
 */
public record Line(String text, int number, boolean ended, boolean tooLong) {
    public Line {
        if (number < 1) {
            throw new IllegalArgumentException("number is " + number + "; lines count from 1");
        }
    }

    /** {@return whether the line holds nothing but blanks} */
    public boolean isBlank() {
        return text.isBlank();
    }
}
