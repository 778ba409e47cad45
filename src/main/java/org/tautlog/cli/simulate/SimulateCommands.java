package org.tautlog.cli.simulate;

import java.util.List;

/** The command of the simulated line, for the one line that they stand on. */
public final class SimulateCommands {
    private SimulateCommands() {}

    /**
     * The commands, made anew.
     *
     * @return the commands in the order of help
     */
    public static List<Object> all() {
        return List.of(new SimulateCommand());
    }
}
