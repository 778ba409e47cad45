package org.tautlog.cli.logs;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every judging command is given: logs, and where they need them a specification and a layout. */
public final class LogInputs {
    @Parameters(
            arity = "0..*",
            paramLabel = "LOGS",
            description = "Log files or folders; folders are read with all below them. Packed logs (.gz, .zip) too.")
    private List<Path> logs = List.of();

    @Option(
            names = "--spec",
            paramLabel = "FILE",
            description = "Joint specification; without it joint.toml in the folder given, or beside the file given.")
    private @Nullable Path specification;

    @Mixin
    private LayoutOption layout = new LayoutOption();

    /** For the command line, which fills it. */
    public LogInputs() {}

    /**
     * Whether any logs are named.
     *
     * @return true where there are
     */
    public boolean given() {
        return !logs.isEmpty();
    }

    /**
     * What is to be judged; a {@link Refusal} where the words do not say it.
     *
     * @return the request, its specification read
     */
    public JudgingRequest request() {
        if (logs.isEmpty()) {
            throw Refusal.wrongUse("no LOGS are named: name log files or folders");
        }
        if (logs.stream().noneMatch(Files::exists)) {
            throw Refusal.nothingRead("there is no file or folder "
                    + logs.stream().map(Path::toString).collect(Collectors.joining(", ")));
        }
        var file = specification == null ? SpecificationSearch.beside(logs) : specification;
        return new JudgingRequest(logs, file, SpecificationSearch.read(file), layout.readOptions());
    }
}
