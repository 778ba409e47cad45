package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Digits;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.table.CsvColumns;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.study.FrozenLimits;
import org.tautlog.spc.study.LongSeries;
import org.tautlog.spc.study.SeriesStudies;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyKind;
import org.tautlog.spc.study.StudyOptions;
import org.tautlog.spc.study.StudyRow;

/**
 * The charts of one table.
 *
 * @param kind what was charted
 * @param rejected how many rows could not be used
 * @param groups the study of each group by its name
 */
record Charting(StudyKind kind, int rejected, Map<String, Answer<SeriesStudy>> groups) {
    private static final int MOST_SIGNALS = 40;

    static Charting run(
            TableInputs table,
            ChartOptions options,
            List<String> values,
            @Nullable String amount,
            ChartFiles files,
            PrintWriter err)
            throws IOException {
        var frozen = files.frozen();
        var kind = frozen.isEmpty() || options.namesKind()
                ? options.kind()
                : frozen.values().iterator().next().kind();
        check(kind, table, values, amount);
        options.refuseForeign(kind);
        var numbers = new ArrayList<>(values);
        if (amount != null) {
            numbers.add(amount);
        }
        var subgroup = options.subgroup();
        boolean named = subgroup != null && TableInputs.size(subgroup).isEmpty();
        var study = options.study();
        var texts = named ? List.of(subgroup) : List.<String>of();
        Optional<CsvColumns> read = LongSeries.charts(kind)
                ? table.readUpTo(LongCharting.MOST_AT_ONCE, numbers, texts, err)
                : Optional.of(table.read(numbers, texts, row -> kind.refuses(row.numbers()), err));
        if (read.isEmpty()) {
            return LongCharting.run(table, kind, values, study, frozen, err);
        }
        var columns = read.get();
        var rows = kind == StudyKind.STREAMS ? Map.of("", columns.rows()) : table.groups(columns);
        var groups = new LinkedHashMap<String, Answer<SeriesStudy>>();
        rows.forEach((name, members) -> groups.put(
                name,
                study(
                        kind,
                        numbers,
                        new AsStudied(members, row -> row(row, table, named, kind == StudyKind.STREAMS)),
                        study,
                        frozen,
                        name)));
        return new Charting(kind, columns.rejected(), groups);
    }

    private static void check(StudyKind kind, TableInputs table, List<String> values, @Nullable String amount) {
        if (kind == StudyKind.STREAMS && table.by().isEmpty()) {
            throw Refusal.wrongUse("streams are told apart by a column; name it with --by COL");
        }
        if (kind.counts() && amount == null && kind != StudyKind.FAULTS) {
            throw Refusal.wrongUse("a chart of counts needs the amount behind each; name its column with --amount COL");
        }
        if (!kind.counts() && amount != null) {
            throw Refusal.wrongUse("--amount belongs to charts of counts; " + kind.word() + " has none");
        }
        if (kind == StudyKind.T_SQUARED && values.size() < 2) {
            throw Refusal.wrongUse("t2 charts several columns; repeat --value COL");
        }
        if (values.size() > 1 && kind != StudyKind.T_SQUARED && !kind.subgroups()) {
            throw Refusal.wrongUse(kind.word() + " charts one column; give --value once");
        }
    }

    private static StudyRow row(CsvRow row, TableInputs table, boolean subgroup, boolean streams) {
        return new StudyRow(
                "line " + row.line(),
                row.numbers(),
                subgroup ? row.texts().get(table.by().size()) : "",
                streams ? table.group(row) : "");
    }

    private static Answer<SeriesStudy> study(
            StudyKind kind,
            List<String> columns,
            List<StudyRow> rows,
            StudyOptions options,
            Map<String, FrozenLimits> frozen,
            String group) {
        if (kind.subgroups()
                && !rows.isEmpty()
                && rows.get(0).values().size() == 1
                && rows.get(0).subgroup().isEmpty()
                && options.subgroupSize() == null) {
            throw Refusal.wrongUse(kind.word() + " needs subgroups; give --subgroup COL or N, or several --value");
        }
        if (frozen.isEmpty()) {
            return SeriesStudies.phaseOne(kind, columns, rows, options);
        }
        return limits(frozen, kind, group).flatMap(limits -> SeriesStudies.phaseTwo(limits, columns, rows, options));
    }

    static Answer<FrozenLimits> limits(Map<String, FrozenLimits> frozen, StudyKind kind, String group) {
        var limits = frozen.get(group);
        return limits == null || limits.kind() != kind
                ? Answer.missing(Reason.NOT_ASKED, "the file of limits holds none of this group for " + kind.word())
                : Answer.of(limits);
    }

    /** The studies that could be made, by group. */
    Map<String, SeriesStudy> found() {
        var found = new LinkedHashMap<String, SeriesStudy>();
        groups.forEach((name, answer) -> answer.found().ifPresent(study -> found.put(name, study)));
        return found;
    }

    int exitCode() {
        var found = found();
        boolean signals =
                found.values().stream().anyMatch(study -> !study.signals().isEmpty());
        return StudyCode.of(!found.isEmpty(), signals || rejected > 0 || found.size() < groups.size());
    }

    /** The charts in words. */
    List<String> lines(String value, String unit) {
        var lines = new ArrayList<String>();
        groups.forEach((name, answer) -> {
            lines.add((lines.isEmpty() ? "" : "\n") + value + (unit.isEmpty() ? "" : " (" + unit + ")")
                    + (name.isEmpty() ? "" : ", " + name) + ": " + kind.title());
            answer.found()
                    .ifPresentOrElse(
                            study -> add(lines, study),
                            () -> lines.add("  no chart: " + answer.whyMissing().orElse("")));
        });
        return lines.stream().flatMap(String::lines).toList();
    }

    private static void add(List<String> lines, SeriesStudy study) {
        lines.add("  n = " + study.values() + ", " + study.points() + " points, " + study.basis());
        int wide =
                study.figures().stream().mapToInt(f -> f.name().length()).max().orElse(0);
        for (var figure : study.figures()) {
            lines.add("  " + figure.name() + " ".repeat(wide - figure.name().length() + 2) + Digits.of(figure.value()));
        }
        study.notes().forEach(note -> lines.add("  note: " + note));
        study.removed()
                .forEach(point -> lines.add("  left out of the limits: point " + point.point() + " (" + point.place()
                        + "), " + point.said()));
        if (study.signals().isEmpty()) {
            lines.add("  no point breaks a rule");
            return;
        }
        lines.add("  " + study.signalCount() + (study.signalCount() == 1 ? " signal:" : " signals:"));
        study.signals().stream()
                .limit(MOST_SIGNALS)
                .forEach(signal -> lines.add("    point " + signal.point() + " (" + signal.place() + "), "
                        + signal.panel() + " " + Digits.of(signal.value()) + ": " + signal.said()));
        if (study.signalCount() > MOST_SIGNALS) {
            lines.add("    and " + (study.signalCount() - MOST_SIGNALS) + " more; --json gives "
                    + (study.signalCount() > study.signals().size()
                            ? "the first " + study.signals().size()
                            : "all"));
        }
    }
}
