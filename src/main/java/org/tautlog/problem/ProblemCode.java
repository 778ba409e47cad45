package org.tautlog.problem;

import java.util.Locale;

/** The kinds of trouble that files can hold; each is a stable word that programs may test. */
public enum ProblemCode {
    /** A file or folder is not there or may not be read. */
    NOT_READABLE,
    /** A file holds nothing. */
    EMPTY_FILE,
    /** Bytes that are not text in the stated or found encoding. */
    NOT_TEXT,
    /** A file whose shape no layout and no guess explains. */
    UNKNOWN_LAYOUT,
    /** A packed file that is damaged, nested or larger than the bounds allow. */
    BAD_ARCHIVE,
    /** A name inside an archive that would escape its folder. */
    ESCAPING_NAME,
    /** A column that the layout needs is missing. */
    MISSING_COLUMN,
    /** An identity field (serial, station, spindle, bolt) is missing. */
    MISSING_IDENTITY,
    /** A row that cannot be read. */
    BAD_ROW,
    /** A cell that should be a number and is none. */
    NOT_A_NUMBER,
    /** A time that cannot be read. */
    BAD_TIME,
    /** A trace whose samples cannot be used: too few, unequal lists, no turning. */
    BAD_TRACE,
    /** The same recording twice. */
    DUPLICATE_TRACE,
    /** A file, line or trace larger than the bounds allow. */
    TOO_LARGE,
    /** A file that ends in the middle. */
    TRUNCATED,
    /** A text that is not TOML, JSON or whatever its kind says. */
    BAD_SYNTAX,
    /** A key that the file's kind does not know. */
    UNKNOWN_KEY,
    /** A key that the file's kind needs and that is not there. */
    MISSING_KEY,
    /** A value of the wrong type or outside what makes sense. */
    BAD_VALUE,
    /** A unit that is unknown or does not fit its quantity. */
    BAD_UNIT,
    /** Limits that are upside down. */
    LIMITS_UPSIDE_DOWN,
    /** Something the reader took for granted because nothing said otherwise. */
    ASSUMED,
    /** A column or file that was left unread on purpose. */
    IGNORED,
    /** A kept record that is not what it was when it was kept. */
    ALTERED,
    /** A kept record that is gone. */
    MISSING,
    /** Something among kept records that nobody put there by this program. */
    UNEXPECTED,
    /** What a killed or failed run left behind; it never counted. */
    LEFTOVER,
    /** A file that cannot be written. */
    NOT_WRITABLE,
    /** A file or trace on which the program itself failed; the others are read. */
    READING_FAILED;

    /** {@return the word of this code, in lower case with hyphens, for example {@code not-readable}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
