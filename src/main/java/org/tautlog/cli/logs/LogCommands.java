package org.tautlog.cli.logs;

import java.util.List;

/** The commands that read logs, for the one line that they stand on. */
public final class LogCommands {
    private LogCommands() {}

    /**
     * The commands, made anew.
     *
     * @return the commands in the order of help
     */
    public static List<Object> all() {
        return List.of(new JudgeCommand(), new WindowCommand(), new TuneCommand(), new LayoutCommand());
    }
}
