package org.tautlog.cli.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.chart.GaugeChart;
import org.tautlog.spc.gauge.GaugeResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Studies how much of the spread is the measuring's own. */
@Command(
        name = "gauge",
        description = {
            "Studies a gauge by measurements of the same parts by several appraisers: repeatability, reproducibility and"
                    + " their share; with reference values bias and linearity.",
            "",
            "No word good or bad is given: the plant's own rules say what share is acceptable."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog gauge study.csv --value torque --part bolt --appraiser who --tolerance 20 --out gauge.svg",
            "  tautlog gauge study.csv --value torque --part bolt --appraiser who --method both --json",
            "  tautlog gauge check.csv --value reading --reference nominal"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:computed",
            "1:computed, and rows could not be used",
            StudyCode.WRONG_USE,
            StudyCode.NOTHING,
            StudyCode.FAILED
        },
        mixinStandardHelpOptions = true)
final class GaugeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "Table as CSV, one measurement a row.")
    private java.nio.file.Path file = java.nio.file.Path.of("");

    @Option(names = "--value", paramLabel = "COL", required = true, description = "Column of the measurements.")
    private String value = "";

    @Option(names = "--part", paramLabel = "COL", description = "Column that names the part.")
    private @Nullable String part;

    @Option(names = "--appraiser", paramLabel = "COL", description = "Column that names the appraiser.")
    private @Nullable String appraiser;

    @Option(
            names = "--trial",
            paramLabel = "COL",
            description = "Column that names the trial; the same trial twice is then refused.")
    private @Nullable String trial;

    @Option(names = "--reference", paramLabel = "COL", description = "Column of reference values: bias and linearity.")
    private @Nullable String reference;

    @Option(
            names = "--tolerance",
            paramLabel = "X",
            description = "Width of the tolerance, for the gauge's share of it.")
    private @Nullable Double tolerance;

    @Option(
            names = "--method",
            paramLabel = "METHOD",
            defaultValue = "anova",
            description = "anova, ranges or both (default: anova).")
    private String method = "anova";

    @Option(names = "--unit", paramLabel = "UNIT", defaultValue = "", description = "Unit of the values, for drawings.")
    private String unit = "";

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Draw the crossed study to FILE.svg or FILE.png; with both methods the one by anova.")
    private java.nio.file.@Nullable Path out;

    @Option(names = "--json", description = "One JSON object in place of the text.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if ((part == null) != (appraiser == null) || (part == null && reference == null)) {
            throw Refusal.wrongUse("name --part COL and --appraiser COL, or --reference COL, or all three");
        }
        if (tolerance != null && !(tolerance > 0)) {
            throw Refusal.wrongUse("tolerance is " + tolerance + "; it must be above 0");
        }
        if (out != null && part == null) {
            throw Refusal.wrongUse("--out draws the crossed study; name --part COL and --appraiser COL");
        }
        var drawing = DrawingFile.of(out);
        var line = spec.commandLine();
        var study = new GaugeStudying(file, value, part, appraiser, trial, reference, tolerance, methods());
        var result = study.run(line.getErr());
        if (json) {
            line.getOut().println(result.json());
        } else {
            result.lines().forEach(text -> line.getOut().println(Terminal.harmless(text)));
        }
        if (drawing != null && result.drawn().isPresent()) {
            var drawn = result.drawn().get();
            drawing.write(
                    drawing.isPng()
                            ? GaugeChart.png(value, unit, drawn)
                            : GaugeChart.svg(value, unit, drawn).getBytes(StandardCharsets.UTF_8),
                    List.of(),
                    0,
                    line.getErr());
        }
        return result.exitCode();
    }

    private List<GaugeResult.Method> methods() {
        var methods = new ArrayList<GaugeResult.Method>();
        if (method.equals("anova") || method.equals("both")) {
            methods.add(GaugeResult.Method.ANOVA);
        }
        if (method.equals("ranges") || method.equals("both")) {
            methods.add(GaugeResult.Method.AVERAGE_RANGE);
        }
        if (methods.isEmpty()) {
            throw Refusal.wrongUse("there is no method '" + method + "'; the methods are anova, ranges and both");
        }
        return methods;
    }
}
