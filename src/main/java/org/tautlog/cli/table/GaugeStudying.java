package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.table.CsvColumns;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.report.chart.GaugeChart;
import org.tautlog.report.study.GaugeJson;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
import org.tautlog.spc.Reason;
import org.tautlog.spc.gauge.Bias;
import org.tautlog.spc.gauge.GaugeOptions;
import org.tautlog.spc.gauge.GaugePlot;
import org.tautlog.spc.gauge.GaugeResult;
import org.tautlog.spc.gauge.GaugeStudy;
import org.tautlog.spc.gauge.Linearity;

/** Makes the gauge study of one table and puts it into words. */
record GaugeStudying(
        Path file,
        String value,
        @Nullable String part,
        @Nullable String appraiser,
        @Nullable String trial,
        @Nullable String reference,
        @Nullable Double tolerance,
        List<GaugeResult.Method> methods) {
    private static final double CONFIDENCE = 0.95;
    private static final int MOST_NAMED = 5;

    /** What the command prints and returns. */
    record Result(List<String> lines, String json, int exitCode, Optional<GaugeChart.Drawn> drawn) {}

    Result run(PrintWriter err) throws IOException {
        var numbers = reference == null ? List.of(value) : List.of(value, reference);
        var texts =
                Stream.of(part, appraiser, trial).flatMap(Stream::ofNullable).toList();
        var columns = Refusal.orRefuse(CsvColumns.read(file, numbers, texts, CsvColumns.MOST_ROWS));
        columns.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
        if (columns.rejected() > 0) {
            err.println(columns.rejected() + " rows could not be used");
        }
        var crossed = new LinkedHashMap<GaugeResult.Method, Answer<GaugeResult>>();
        var drawn = Optional.<GaugeChart.Drawn>empty();
        if (part != null) {
            var cells = cells(columns.rows());
            var measured = measured(cells);
            var uneven = uneven(cells);
            for (var method : methods) {
                crossed.put(
                        method,
                        uneven.isPresent()
                                ? Answer.missing(Reason.UNEQUAL, uneven.get())
                                : method == GaugeResult.Method.ANOVA
                                        ? GaugeStudy.byAnova(measured, GaugeOptions.withDefaults())
                                        : GaugeStudy.byRanges(measured));
            }
            drawn = crossed.values().stream()
                    .flatMap(answer -> answer.found().stream())
                    .findFirst()
                    .flatMap(found -> drawn(cells, found));
        }
        var biases = new TreeMap<Double, Answer<Bias>>();
        var linearity = new LinkedHashMap<String, Answer<Linearity>>();
        if (reference != null) {
            references(columns.rows(), biases, linearity);
        }
        var width = tolerance == null ? OptionalDouble.empty() : OptionalDouble.of(tolerance);
        boolean any = Stream.of(crossed.values(), biases.values(), linearity.values())
                .flatMap(answers -> answers.stream())
                .anyMatch(answer -> answer.found().isPresent());
        var lines = lines(crossed, biases, linearity);
        drawn.ifPresent(study -> lines.addAll(wide(study.plot(), study.parts(), study.appraisers())));
        return new Result(
                lines,
                GaugeJson.of(columns.rejected(), width, crossed, biases, linearity),
                StudyCode.of(any, columns.rejected() > 0),
                drawn);
    }

    /** By part, appraiser and trial, each in the order in which the file names it. */
    private Map<String, Map<String, List<Double>>> cells(List<CsvRow> rows) {
        var cells = new LinkedHashMap<String, Map<String, List<Double>>>();
        var seen = new java.util.HashSet<List<String>>();
        for (var row : rows) {
            if (trial != null && !seen.add(row.texts())) {
                throw Refusal.wrongUse(
                        "line " + row.line() + ": part " + row.texts().get(0) + ", appraiser "
                                + row.texts().get(1) + ", trial " + row.texts().get(2) + " is there twice");
            }
            cells.computeIfAbsent(row.texts().get(0), name -> new TreeMap<>())
                    .computeIfAbsent(row.texts().get(1), name -> new ArrayList<>())
                    .add(row.numbers().get(0));
        }
        var first = cells.entrySet().stream().findFirst();
        cells.forEach((name, byAppraiser) -> first.filter(
                        other -> !other.getValue().keySet().equals(byAppraiser.keySet()))
                .ifPresent(other -> {
                    throw Refusal.wrongUse("part " + Terminal.harmless(name) + " was measured by "
                            + Terminal.harmless(String.join(", ", byAppraiser.keySet())) + ", part "
                            + Terminal.harmless(other.getKey()) + " by "
                            + Terminal.harmless(
                                    String.join(", ", other.getValue().keySet()))
                            + "; in a crossed study every appraiser measures every part: leave out the others");
                }));
        return cells;
    }

    /** The first cell with another number of trials than the first of all, by its names. */
    private static Optional<String> uneven(Map<String, Map<String, List<Double>>> cells) {
        var trials = cells.values().stream()
                .flatMap(byAppraiser -> byAppraiser.values().stream())
                .map(List::size)
                .findFirst();
        return cells.entrySet().stream()
                .flatMap(part -> part.getValue().entrySet().stream()
                        .filter(cell -> cell.getValue().size() != trials.orElseThrow())
                        .map(cell -> "part " + part.getKey() + " was measured "
                                + times(cell.getValue().size()) + " by appraiser " + cell.getKey() + ", not "
                                + times(trials.orElseThrow())))
                .findFirst();
    }

    private static String times(int n) {
        return n == 1 ? "once" : n + " times";
    }

    private static Optional<GaugeChart.Drawn> drawn(Map<String, Map<String, List<Double>>> cells, GaugeResult result) {
        var measured = cells.values().stream()
                .map(byAppraiser -> List.copyOf(byAppraiser.values()))
                .toList();
        var said = List.of(
                result.parts() + " parts, " + result.appraisers() + " appraisers, " + result.trials()
                        + " trials; n = " + result.parts() * result.appraisers() * result.trials() + "; by "
                        + (result.method() == GaugeResult.Method.ANOVA
                                ? "analysis of variance"
                                : "averages and ranges"),
                "gauge, both: " + Digits.of(Math.round(1000 * result.shareOfTotal()) / 10.0)
                        + " % of the total deviation; shares of deviations do not add up to 100 %, no bounds are drawn");
        return GaugePlot.of(measured).found().map(plot -> {
            var parts = List.copyOf(cells.keySet());
            var appraisers = List.copyOf(cells.values().iterator().next().keySet());
            return new GaugeChart.Drawn(
                    Stream.concat(said.stream(), wide(plot, parts, appraisers).stream())
                            .toList(),
                    parts,
                    appraisers,
                    result,
                    plot);
        });
    }

    /** The trials of one cell that lie too far apart; a line, or none. */
    private static List<String> wide(GaugePlot plot, List<String> parts, List<String> appraisers) {
        var wide = new ArrayList<String>();
        for (int p = 0; p < parts.size(); p++) {
            for (int a = 0; a < appraisers.size(); a++) {
                if (plot.cells().get(p).get(a).range() > plot.upperRange()) {
                    wide.add("part " + parts.get(p) + " by " + appraisers.get(a));
                }
            }
        }
        return wide.isEmpty()
                ? List.of()
                : List.of(wide.size() + (wide.size() == 1 ? " range" : " ranges") + " of trials above the upper limit "
                        + Digits.of(plot.upperRange()) + ", look for a wrong trial: "
                        + wide.stream().limit(MOST_NAMED).collect(Collectors.joining("; "))
                        + (wide.size() > MOST_NAMED ? " and " + (wide.size() - MOST_NAMED) + " more" : ""));
    }

    private static double[][][] measured(Map<String, Map<String, List<Double>>> cells) {
        return cells.values().stream()
                .map(byAppraiser -> byAppraiser.values().stream()
                        .map(trials -> trials.stream().mapToDouble(v -> v).toArray())
                        .toArray(double[][]::new))
                .toArray(double[][][]::new);
    }

    private static void references(
            List<CsvRow> rows, Map<Double, Answer<Bias>> biases, Map<String, Answer<Linearity>> linearity) {
        var readings = new TreeMap<Double, List<Double>>();
        rows.forEach(row -> readings.computeIfAbsent(row.numbers().get(1), name -> new ArrayList<>())
                .add(row.numbers().get(0)));
        readings.forEach((nominal, read) ->
                biases.put(nominal, Bias.of(read.stream().mapToDouble(v -> v).toArray(), nominal, CONFIDENCE)));
        linearity.put(
                "linearity",
                Linearity.of(
                        rows.stream().mapToDouble(row -> row.numbers().get(1)).toArray(),
                        rows.stream().mapToDouble(row -> row.numbers().get(0)).toArray(),
                        CONFIDENCE));
    }

    private List<String> lines(
            Map<GaugeResult.Method, Answer<GaugeResult>> crossed,
            Map<Double, Answer<Bias>> biases,
            Map<String, Answer<Linearity>> linearity) {
        var lines = new ArrayList<String>();
        crossed.forEach((method, answer) -> {
            lines.add(value + ": gauge study by "
                    + (method == GaugeResult.Method.ANOVA ? "analysis of variance" : "averages and ranges"));
            answer.found()
                    .ifPresentOrElse(
                            result -> add(lines, result),
                            () -> lines.add("  no study: " + answer.whyMissing().orElse("")));
        });
        biases.forEach((nominal, answer) -> lines.add("bias at " + Digits.of(nominal) + ": "
                + answer.found()
                        .map(bias -> Digits.of(bias.value()) + "  (" + Digits.of(bias.bounds()) + " with 95 %), "
                                + bias.n() + " readings of this reference; a bias of 0 lies "
                                + (bias.bounds().contains(0) ? "within" : "outside") + " the bounds")
                        .orElseGet(() -> answer.whyMissing().orElse(""))));
        linearity
                .values()
                .forEach(answer -> lines.add("linearity: "
                        + answer.found()
                                .map(line -> "slope " + Digits.of(line.slope()) + "  (" + Digits.of(line.slopeBounds())
                                        + " with 95 %), bias at 0 " + Digits.of(line.intercept()) + "  ("
                                        + Digits.of(line.interceptBounds()) + "), " + line.n()
                                        + " readings of all references")
                                .orElseGet(() -> answer.whyMissing().orElse(""))));
        return lines;
    }

    private void add(List<String> lines, GaugeResult result) {
        lines.add("  " + result.parts() + " parts, " + result.appraisers() + " appraisers, " + result.trials()
                + " trials");
        lines.add("                     deviation  share of total");
        row(lines, "repeatability", result.repeatability(), result.total());
        row(lines, "reproducibility", result.reproducibility(), result.total());
        row(lines, "gauge, both", result.gauge(), result.total());
        row(lines, "parts", result.part(), result.total());
        row(lines, "total", result.total(), result.total());
        if (tolerance != null) {
            lines.add("  six deviations of the gauge: " + Digits.of(100 * result.shareOfTolerance(tolerance))
                    + " % of the tolerance " + Digits.of(tolerance));
        }
        if (result.gauge() > 0) {
            lines.add("  categories the gauge can tell: " + (long) result.categories());
        }
        var interaction = result.interaction();
        if (interaction != null) {
            lines.add("  interaction of part and appraiser: p " + Digits.of(interaction.pValue())
                    + (interaction.pooled() ? ", taken as repeatability" : ", kept"));
        }
    }

    private static void row(List<String> lines, String name, double deviation, double total) {
        var number = Digits.of(deviation);
        lines.add("  " + name + " ".repeat(Math.max(1, 28 - name.length() - number.length())) + number + "  "
                + Digits.of(Math.round(1000 * deviation / total) / 10.0) + " %");
    }
}
