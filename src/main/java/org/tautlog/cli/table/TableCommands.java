package org.tautlog.cli.table;

import java.util.List;

/** The commands that study a table, for the one line that they stand on. */
public final class TableCommands {
    private TableCommands() {}

    /**
     * The commands, made anew.
     *
     * @return the commands in the order of help
     */
    public static List<Object> all() {
        return List.of(
                new ChartCommand(),
                new CapabilityCommand(),
                new OutliersCommand(),
                new ChangesCommand(),
                new GroupsCommand(),
                new GaugeCommand());
    }
}
