package org.tautlog.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.tautlog.cli.evidence.EvidenceCommands;
import org.tautlog.cli.logs.LogCommands;
import org.tautlog.cli.shift.ShiftCommands;
import org.tautlog.cli.simulate.SimulateCommands;
import org.tautlog.cli.table.TableCommands;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.Moment;
import picocli.CommandLine;

/** The one entry point of the program. */
public final class Main {
    private Main() {}

    /**
     * Runs the program and ends the process with its exit code.
     *
     * @param args the words of the command line
     */
    public static void main(String[] args) {
        // A library logs; where nobody configured logging it would say so on the error output of every run.
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        var root = new RootCommand();
        var line = new CommandLine(root);
        Stream.of(
                        LogCommands.all(),
                        ShiftCommands.all(),
                        EvidenceCommands.all(),
                        TableCommands.all(),
                        List.of(new SchemaCommand()),
                        SimulateCommands.all())
                .flatMap(List::stream)
                .forEach(line::addSubcommand);
        // Set after the commands are added: what is set reaches only those that are there.
        line.setOut(out)
                .setErr(err)
                .registerConverter(OffsetDateTime.class, new Moment())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Trouble::wrongWords)
                .setExecutionExceptionHandler(
                        (failure, command, words) -> Trouble.report(failure, command, root.debug()));
        Help.complete(line);
        try {
            return line.execute(args);
        } catch (OutOfMemoryError full) {
            return Trouble.outOfMemory(full, err, root.debug());
        } finally {
            out.flush();
            err.flush();
        }
    }
}
