package org.tautlog.cli.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.chart.CapabilityChart;
import org.tautlog.spc.capability.SpecLimits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Studies whether a process or a machine keeps its limits. */
@Command(
        name = "capability",
        description = {
            "Studies whether values keep their limits: test of normality first, then indices by the normal distribution"
                    + " or by percentiles, with bounds, and the share outside.",
            "",
            "The word on control stands beside every index: an index of a process out of control foretells nothing. It rests"
                    + " on a chart on the scale of the shape that fits and on a test by ranks whether the level moved,"
                    + " each wrong for at most 1 calm group in 100. Where no shape fits, strays are looked for: if one"
                    + " fits without them, they are named and the group is out of control, else control is not shown.",
            "",
            "Where neighbours resemble each other, bounds are widened and single values give no Cp nor Cpk."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog capability diameters.csv --value diameter --low 73.95 --high 74.05 --subgroup sample --out rings.svg",
            "  tautlog capability verdicts.csv --value finalTorqueNm --low 50 --high 90 --by station",
            "  tautlog capability run.csv --value torque --high 120 --machine --json"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:computed, and every group was in control",
            "1:computed, and control was not shown everywhere, or rows could not be used",
            StudyCode.WRONG_USE,
            StudyCode.NOTHING,
            StudyCode.FAILED
        },
        mixinStandardHelpOptions = true)
final class CapabilityCommand implements Callable<Integer> {
    @Mixin
    private TableInputs table = new TableInputs();

    @Option(names = "--value", paramLabel = "COL", required = true, description = "Column to study.")
    private String value = "";

    @Option(names = "--low", paramLabel = "X", description = "Lower limit of single values.")
    private @Nullable Double low;

    @Option(names = "--high", paramLabel = "X", description = "Upper limit of single values.")
    private @Nullable Double high;

    @Option(
            names = "--subgroup",
            paramLabel = "COL|N",
            description = "Column that names the subgroup, or how many values running make one.")
    private @Nullable String subgroup;

    @Option(names = "--machine", description = "One run of a machine in place of a process: Cm and Cmk.")
    private boolean machine;

    @Option(names = "--unit", paramLabel = "UNIT", defaultValue = "", description = "Unit of the values, for drawings.")
    private String unit = "";

    @Option(names = "--out", paramLabel = "FILE", description = "Draw the studies to FILE.svg or FILE.png.")
    private @Nullable Path out;

    @Option(names = "--json", description = "One JSON object in place of the text.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (machine && subgroup != null) {
            throw Refusal.wrongUse("a machine study takes one run as it came; leave --subgroup out");
        }
        var drawing = DrawingFile.of(out);
        var line = spec.commandLine();
        boolean named = subgroup != null && TableInputs.size(subgroup).isEmpty();
        var columns = table.read(List.of(value), named ? List.of(subgroup) : List.of(), line.getErr());
        var studying = new CapabilityStudying(limits(), subgroup, table.by().size(), columns.rejected());
        var groups = table.groups(columns);
        var result = machine ? studying.machines(value, groups) : studying.processes(value, groups);
        if (json) {
            line.getOut().println(result.json());
        } else {
            result.lines().forEach(text -> line.getOut().println(Terminal.harmless(text)));
        }
        if (drawing != null && !result.drawn().isEmpty()) {
            drawing.write(
                    drawing.isPng()
                            ? CapabilityChart.png(value, unit, result.drawn())
                            : CapabilityChart.svg(value, unit, result.drawn()).getBytes(StandardCharsets.UTF_8),
                    result.drawn().keySet(),
                    CapabilityChart.MOST_GROUPS,
                    line.getErr());
        }
        return result.exitCode();
    }

    private SpecLimits limits() {
        try {
            return new SpecLimits(low, high);
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(
                    low == null && high == null
                            ? "no limit is given; state --low X, --high Y or both"
                            : "--low and --high: " + e.getMessage());
        }
    }
}
