package org.tautlog.cli.evidence;

import java.util.List;

/** The commands of the kept evidence, for the one line that they stand on. */
public final class EvidenceCommands {
    private EvidenceCommands() {}

    /**
     * The commands, made anew.
     *
     * @return the commands in the order of help
     */
    public static List<Object> all() {
        return List.of(
                new EngineCommand(),
                new ContainCommand(),
                new CompareCommand(),
                new RejudgeCommand(),
                new ImportCommand(),
                new DecideCommand(),
                new VerifyCommand(),
                new SealCommand(),
                new TidyCommand());
    }
}
