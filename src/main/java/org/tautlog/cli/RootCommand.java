package org.tautlog.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** What stands before a command's name; every command is one line in {@code subcommands}, in the order of help. */
@Command(
        name = "tautlog",
        description = "Judges torque-angle traces of snug-and-turn tightenings and reviews the shift they belong to.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Each command tells more: tautlog COMMAND --help"},
        subcommands = {
            JudgeCommand.class,
            ShiftCommand.class,
            WindowCommand.class,
            EngineCommand.class,
            ContainCommand.class,
            CompareCommand.class,
            RejudgeCommand.class,
            ChartCommand.class,
            CapabilityCommand.class,
            OutliersCommand.class,
            ChangesCommand.class,
            GroupsCommand.class,
            GaugeCommand.class,
            LayoutCommand.class,
            ImportCommand.class,
            WatchCommand.class,
            DecideCommand.class,
            VerifyCommand.class,
            SealCommand.class,
            TidyCommand.class,
            SchemaCommand.class,
            SimulateCommand.class
        })
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
