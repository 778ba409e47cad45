package org.tautlog.intake.file;

/** How a written log is packed. */
public enum Packing {
    /** Plain text files. */
    PLAIN,
    /** Each file through gzip, {@code .gz} at the end of its name. */
    GZIP,
    /** All files as entries of one zip archive. */
    ZIP
}
