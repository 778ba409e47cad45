package org.tautlog.cli.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.report.chart.CapabilityChart;
import org.tautlog.report.study.CapabilityJson;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
import org.tautlog.spc.capability.AndersonDarling;
import org.tautlog.spc.capability.Capability;
import org.tautlog.spc.capability.CapabilityIndex;
import org.tautlog.spc.capability.CapabilityOptions;
import org.tautlog.spc.capability.CapabilityStudy;
import org.tautlog.spc.capability.FractionOutside;
import org.tautlog.spc.capability.MachineCapability;
import org.tautlog.spc.capability.Shape;
import org.tautlog.spc.capability.SpecLimits;
import org.tautlog.spc.capability.Stability;

/** Makes the capability studies of one table and puts them into words. */
record CapabilityStudying(SpecLimits spec, @Nullable String subgroup, int groupColumns, int rejected) {
    /** What the command prints and returns. */
    record Result(List<String> lines, String json, int exitCode, Map<String, CapabilityChart.Drawn> drawn) {}

    Result processes(String value, Map<String, List<CsvRow>> groups) {
        var options = CapabilityOptions.withDefaults();
        var studies = new LinkedHashMap<String, Answer<Capability>>();
        var notes = new LinkedHashMap<String, List<String>>();
        var charted = new LinkedHashMap<String, double[]>();
        groups.forEach((name, rows) -> {
            notes.put(name, notes(rows));
            var grouped = subgroup == null ? null : subgroups(rows);
            charted.put(
                    name,
                    grouped == null
                            ? values(rows)
                            : Arrays.stream(grouped)
                                    .flatMapToDouble(Arrays::stream)
                                    .toArray());
            studies.put(
                    name,
                    grouped == null
                            ? CapabilityStudy.process(values(rows), spec, options)
                            : CapabilityStudy.process(grouped, spec, options));
        });
        return result(
                studies,
                notes,
                value,
                "process capability",
                this::add,
                Capability::stability,
                CapabilityJson.processes(value, rejected, studies, notes),
                CapabilityDrawing.processes(studies, charted));
    }

    Result machines(String value, Map<String, List<CsvRow>> groups) {
        var studies = new LinkedHashMap<String, Answer<MachineCapability>>();
        var charted = new LinkedHashMap<String, double[]>();
        groups.forEach((name, rows) -> {
            charted.put(name, values(rows));
            studies.put(name, CapabilityStudy.machine(values(rows), spec, CapabilityOptions.withDefaults()));
        });
        return result(
                studies,
                Map.of(),
                value,
                "machine capability",
                this::add,
                MachineCapability::stability,
                CapabilityJson.machines(value, rejected, studies),
                CapabilityDrawing.machines(studies, charted));
    }

    private <T> Result result(
            Map<String, Answer<T>> studies,
            Map<String, List<String>> notes,
            String value,
            String title,
            BiConsumer<List<String>, T> words,
            Function<T, Stability> stability,
            String json,
            Map<String, CapabilityChart.Drawn> drawn) {
        var lines = new ArrayList<String>();
        studies.forEach((name, answer) -> {
            lines.add(head(value, name, title));
            answer.found()
                    .ifPresentOrElse(
                            study -> words.accept(lines, study),
                            () -> lines.add("  no study: " + answer.whyMissing().orElse("")));
            notes.getOrDefault(name, List.of()).forEach(note -> lines.add("  note: " + note));
        });
        boolean calm = studies.values().stream()
                .allMatch(answer -> answer.found()
                        .filter(study -> inControl(stability.apply(study)))
                        .isPresent());
        boolean any =
                studies.values().stream().anyMatch(answer -> answer.found().isPresent());
        return new Result(lines, json, StudyCode.of(any, !calm || rejected > 0), drawn);
    }

    private static boolean inControl(Stability stability) {
        return stability.word() == Stability.Word.IN_CONTROL;
    }

    private static String head(String value, String group, String study) {
        return value + (group.isEmpty() ? "" : ", " + group) + ": " + study;
    }

    private void add(List<String> lines, Capability study) {
        lines.add(
                "  n = " + study.n() + ", mean " + Digits.of(study.mean(), study.overallSd()) + ", standard deviation "
                        + Digits.of(study.overallSd()) + " overall, " + Digits.of(study.shortSigma()) + " short-term");
        common(lines, study.stability(), study.normality(), study.shape());
        index(lines, "Cp", study.cp(), study.stability());
        index(lines, "Cpk", study.cpk(), study.stability());
        index(lines, "Pp", study.pp(), study.stability());
        index(lines, "Ppk", study.ppk(), study.stability());
        outside(lines, study.outside());
    }

    private void add(List<String> lines, MachineCapability study) {
        lines.add("  n = " + study.n() + ", mean " + Digits.of(study.mean(), study.sd()) + ", standard deviation "
                + Digits.of(study.sd()));
        common(lines, study.stability(), study.normality(), study.shape());
        index(lines, "Cm", study.cm(), study.stability());
        index(lines, "Cmk", study.cmk(), study.stability());
        outside(lines, study.outside());
    }

    private void common(List<String> lines, Stability stability, Answer<AndersonDarling> normality, Shape shape) {
        lines.add("  limits: "
                + spec.lowerLimit().stream()
                        .mapToObj(x -> "low " + Digits.whole(x))
                        .findFirst()
                        .orElse("no low") + ", "
                + spec.upperLimit().stream()
                        .mapToObj(x -> "high " + Digits.whole(x))
                        .findFirst()
                        .orElse("no high"));
        lines.add("  control: " + word(stability) + " (" + stability.said() + ")");
        lines.add(normality
                .found()
                .map(test ->
                        "  Anderson-Darling: A2 " + Digits.of(test.statistic()) + ", p " + Digits.of(test.pValue()))
                .orElseGet(() -> "  Anderson-Darling: " + normality.whyMissing().orElse("")));
        lines.add("  indices rest on the " + shape.name().toLowerCase(java.util.Locale.ROOT) + " form"
                + (shape == Shape.NORMAL ? "" : ", by its percentiles"));
    }

    private static void index(List<String> lines, String name, Answer<CapabilityIndex> answer, Stability stability) {
        var padded = "  " + name + " ".repeat(5 - name.length());
        lines.add(padded
                + answer.found()
                        .map(index -> Digits.of(index.value()) + "  (" + Digits.of(index.bounds()) + " with "
                                + Digits.of(100 * index.bounds().confidence()) + " %), " + word(stability))
                        .orElseGet(() -> "none: " + answer.whyMissing().orElse("")));
    }

    private static void outside(List<String> lines, Answer<FractionOutside> answer) {
        lines.add("  outside: "
                + answer.found()
                        .map(share -> Digits.of(100 * share.foretold()) + " % foretold ("
                                + Digits.of(100 * share.foretoldBounds().lower())
                                + " to "
                                + Digits.of(100 * share.foretoldBounds().upper()) + " %), "
                                + share.counted().count() + " of "
                                + share.counted().n() + " counted (up to "
                                + Digits.of(100 * share.counted().bounds().upper()) + " %)")
                        .orElseGet(() -> answer.whyMissing().orElse("")));
    }

    static String word(Stability stability) {
        return switch (stability.word()) {
            case IN_CONTROL -> "in control";
            case OUT_OF_CONTROL -> "OUT OF CONTROL";
            case NOT_SHOWN -> "control not shown";
        };
    }

    private static double[] values(List<CsvRow> rows) {
        return rows.stream().mapToDouble(row -> row.numbers().get(0)).toArray();
    }

    private double[][] subgroups(List<CsvRow> rows) {
        var size = size();
        if (size.isPresent() && size.getAsInt() < 2) {
            throw Refusal.wrongUse("a subgroup of " + size.getAsInt() + " has no spread; it holds at least 2 values");
        }
        var groups = new LinkedHashMap<String, List<CsvRow>>();
        for (int i = 0; i < rows.size(); i++) {
            var name = size.isPresent()
                    ? String.valueOf(i / size.getAsInt())
                    : rows.get(i).texts().get(groupColumns);
            groups.computeIfAbsent(name, key -> new ArrayList<>()).add(rows.get(i));
        }
        if (size.isPresent()) {
            groups.values().removeIf(members -> members.size() < size.getAsInt());
        }
        return groups.values().stream().map(CapabilityStudying::values).toArray(double[][]::new);
    }

    /** Values that fill no subgroup are left out of the study, and it says so. */
    private List<String> notes(List<CsvRow> rows) {
        var size = size();
        int rest = size.isPresent() && size.getAsInt() > 1 ? rows.size() % size.getAsInt() : 0;
        return rest == 0
                ? List.of()
                : List.of("the last " + rest + (rest == 1 ? " value fills" : " values fill") + " no subgroup of "
                        + size.getAsInt() + " and " + (rest == 1 ? "is" : "are") + " not studied");
    }

    private OptionalInt size() {
        return subgroup == null ? OptionalInt.empty() : TableInputs.size(subgroup);
    }
}
