package org.tautlog.cli.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.report.chart.CapabilityChart;
import org.tautlog.report.study.CapabilityJson;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
import org.tautlog.spc.Interval;
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
        var values = new LinkedHashMap<String, double[]>();
        groups.forEach((name, rows) -> {
            var points = subgroup == null ? singles(rows) : subgroups(rows);
            var charted = points.stream().flatMap(List::stream).toList();
            var study = subgroup == null
                    ? CapabilityStudy.process(values(rows), spec, options)
                    : CapabilityStudy.process(
                            points.stream().map(CapabilityStudying::values).toArray(double[][]::new), spec, options);
            values.put(name, values(charted));
            studies.put(name, study);
            notes.put(
                    name,
                    Stream.concat(
                                    leftOut(rows).stream(),
                                    study.found().stream()
                                            .flatMap(it ->
                                                    CapabilityNotes.of(it.stability(), it.neighbours(), points)
                                                            .stream()))
                            .toList());
        });
        return result(
                studies,
                notes,
                value,
                "process capability",
                this::add,
                Capability::stability,
                CapabilityJson.processes(value, rejected, studies, notes),
                CapabilityDrawing.processes(studies, values));
    }

    Result machines(String value, Map<String, List<CsvRow>> groups) {
        var studies = new LinkedHashMap<String, Answer<MachineCapability>>();
        var notes = new LinkedHashMap<String, List<String>>();
        var values = new LinkedHashMap<String, double[]>();
        groups.forEach((name, rows) -> {
            var study = CapabilityStudy.machine(values(rows), spec, CapabilityOptions.withDefaults());
            values.put(name, values(rows));
            studies.put(name, study);
            notes.put(
                    name,
                    study.found()
                            .map(it -> CapabilityNotes.of(it.stability(), it.neighbours(), singles(rows)))
                            .orElse(List.of()));
        });
        return result(
                studies,
                notes,
                value,
                "machine capability",
                this::add,
                MachineCapability::stability,
                CapabilityJson.machines(value, rejected, studies, notes),
                CapabilityDrawing.machines(studies, values));
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
        lines.add("  outside: " + words(study.outside()));
    }

    private void add(List<String> lines, MachineCapability study) {
        lines.add("  n = " + study.n() + ", mean " + Digits.of(study.mean(), study.sd()) + ", standard deviation "
                + Digits.of(study.sd()));
        common(lines, study.stability(), study.normality(), study.shape());
        index(lines, "Cm", study.cm(), study.stability());
        index(lines, "Cmk", study.cmk(), study.stability());
        lines.add("  outside: " + words(study.outside()));
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
        lines.add("  indices rest on the " + shape.words() + " form"
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

    static String words(FractionOutside outside) {
        var counted = outside.counted();
        return counted.count() + " of " + counted.n() + " counted (" + percent(counted.bounds()) + "), "
                + outside.foretold()
                        .found()
                        .map(share -> Digits.of(100 * share.share()) + " % foretold (" + percent(share.bounds()) + ")")
                        .orElseGet(() -> "none foretold: "
                                + outside.foretold().whyMissing().orElse(""));
    }

    private static String percent(Interval share) {
        return Digits.of(100 * share.lower()) + " to " + Digits.of(100 * share.upper()) + " %";
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

    private static List<List<CsvRow>> singles(List<CsvRow> rows) {
        return rows.stream().map(List::of).toList();
    }

    private List<List<CsvRow>> subgroups(List<CsvRow> rows) {
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
        return List.copyOf(groups.values());
    }

    /** Values that fill no subgroup are left out of the study, and it says so. */
    private List<String> leftOut(List<CsvRow> rows) {
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
