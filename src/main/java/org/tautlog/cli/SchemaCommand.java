package org.tautlog.cli;

import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.Schema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints how the program's JSON is made. */
@Command(
        name = "schema",
        description = {
            "Prints the JSON Schema of what the program writes as JSON: judgement (judge --json, a line a tightening),"
                    + " shift (shift.json), engine, containment, archive (import, rejudge, verify, seal, tidy, decide),"
                    + " tuning (tune --json).",
            "",
            "Keys never change their meaning; new ones may be added."
        },
        footerHeading = "%nExamples:%n",
        footer = {"  tautlog schema shift > shift.schema.json"},
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    @Parameters(paramLabel = "KIND", description = "judgement, shift, engine, containment, archive or tuning.")
    private String kind = "";

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var schema = Schema.parse(kind)
                .orElseThrow(() -> Refusal.wrongUse("'" + Terminal.harmless(kind) + "' is no kind of JSON; there are "
                        + Arrays.stream(Schema.values()).map(Schema::word).collect(Collectors.joining(", "))));
        spec.commandLine().getOut().print(schema.text());
        return ExitCode.ALL_CONFORMING.number();
    }
}
