package org.tautlog.cli.shift;

import java.util.List;

/** The commands that review a shift, for the one line that they stand on. */
public final class ShiftCommands {
    private ShiftCommands() {}

    /**
     * The commands, made anew.
     *
     * @return the commands in the order of help
     */
    public static List<Object> all() {
        return List.of(new ShiftCommand(), new WatchCommand());
    }
}
