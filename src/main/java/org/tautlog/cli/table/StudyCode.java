package org.tautlog.cli.table;

import org.tautlog.cli.terminal.ExitCode;

/** Exit codes of the studies of tables, in one place for all of them. */
final class StudyCode {
    static final String NOTHING_FOUND = "0:computed, and nothing asks for a person";
    static final String FOUND = "1:computed, and there are signals, or rows that could not be used";
    static final String WRONG_USE = "2:the command line or the table cannot be used";
    static final String NOTHING = "3:nothing could be computed; the reason is told";
    static final String FAILED = "4:the program itself failed";

    private StudyCode() {}

    static int of(boolean anyComputed, boolean anythingFound) {
        var code = !anyComputed
                ? ExitCode.NOTHING_READ
                : anythingFound ? ExitCode.NOT_ALL_CONFORMING : ExitCode.ALL_CONFORMING;
        return code.number();
    }
}
