package org.tautlog.cli;

import org.tautlog.cli.terminal.Program;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** What stands before a command's name; its commands come from the rooms, in the order of help. */
@Command(
        name = "tautlog",
        description = "Judges torque-angle traces of snug-and-turn tightenings and reviews the shift they belong to.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Each command tells more: tautlog COMMAND --help"})
final class RootCommand {
    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "Where the program fails, show the whole stack trace.")
    private boolean debug;

    boolean debug() {
        return debug;
    }
}
