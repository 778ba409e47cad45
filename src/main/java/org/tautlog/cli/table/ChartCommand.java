package org.tautlog.cli.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Terminal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Charts any column of any table. */
@Command(
        name = "chart",
        description = {
            "Charts columns of any table: control limits from the values, what was left out of them and why, and every"
                    + " point that breaks a rule.",
            "",
            "Rows are taken in the order of the file. --freeze keeps the limits in a file; --limits holds later values"
                    + " against them, by the names of their columns. A group or stream that stands on one side only is"
                    + " named as not watched, with exit code 1.",
            "",
            "A table of more than 1,000,000 rows is charted value by value where the kind is individuals, ewma or cusum:"
                    + " a first pass over the file for the limits, of which no value is left out, and one for the"
                    + " points. Every signal is counted, the first 200 of each panel are told."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog chart verdicts.csv --value finalTorqueNm --by station --by spindle --out torque.svg",
            "  tautlog chart diameters.csv --value diameter --subgroup 5 --kind mean-range --rules nelson",
            "  tautlog chart faults.csv --value faulty --amount built --kind p-laney --json",
            "  tautlog chart may.csv --value torque --freeze limits.json",
            "  tautlog chart june.csv --value torque --limits limits.json"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            StudyCode.NOTHING_FOUND,
            "1:computed, and there are signals, rows that could not be used, or groups or streams that nobody watched",
            StudyCode.WRONG_USE,
            StudyCode.NOTHING,
            StudyCode.FAILED
        },
        mixinStandardHelpOptions = true)
final class ChartCommand implements Callable<Integer> {
    @Mixin
    private TableInputs table = new TableInputs();

    @Mixin
    private ChartOptions options = new ChartOptions();

    @Option(
            names = "--value",
            paramLabel = "COL",
            required = true,
            description = "Column to chart; repeated for t2, or where each row is a subgroup.")
    private List<String> values = List.of();

    @Option(names = "--amount", paramLabel = "COL", description = "Column of the items or units behind each count.")
    private @Nullable String amount;

    @Option(names = "--unit", paramLabel = "UNIT", defaultValue = "", description = "Unit of the values, for drawings.")
    private String unit = "";

    @Option(names = "--out", paramLabel = "FILE", description = "Draw the charts to FILE.svg or FILE.png.")
    private @Nullable Path out;

    @Option(names = "--freeze", paramLabel = "FILE", description = "Write the limits to a new file.")
    private @Nullable Path freeze;

    @Option(names = "--limits", paramLabel = "FILE", description = "Use the limits that --freeze wrote.")
    private @Nullable Path limits;

    @Option(names = "--json", description = "One JSON object in place of the text.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var files = new ChartFiles(DrawingFile.of(out), freeze, limits);
        var asked = options.columns(values, amount == null ? "" : amount, table.by(), unit);
        var charting = Charting.run(table, options, asked, files.inUse(), line.getErr());
        if (json) {
            line.getOut().println(charting.json());
        } else {
            charting.lines().forEach(text -> line.getOut().println(Terminal.harmless(text)));
        }
        files.write(charting, table.file(), line.getErr());
        return charting.exitCode();
    }
}
