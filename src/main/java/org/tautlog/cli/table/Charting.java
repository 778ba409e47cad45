package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tautlog.intake.table.CsvColumns;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.report.study.ChartedColumns;
import org.tautlog.report.study.SeriesJson;
import org.tautlog.report.study.Unwatched;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
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
 * @param kindReason why it is of this kind where nobody named it; empty where somebody did
 * @param columns what of the table was charted
 * @param rejected how many rows could not be used
 * @param groups the study of each group by its name
 * @param unwatched groups and streams that no limits watched
 */
record Charting(
        StudyKind kind,
        String kindReason,
        ChartedColumns columns,
        int rejected,
        Map<String, Answer<SeriesStudy>> groups,
        List<Unwatched> unwatched) {
    private static final int MOST_SIGNALS = 40;
    private static final int MOST_NAMES = 20;

    static Charting run(
            TableInputs table,
            ChartOptions options,
            ChartedColumns asked,
            Optional<LimitsInUse> limits,
            PrintWriter err)
            throws IOException {
        limits.ifPresent(inUse -> options.refuseBesideLimits());
        var kind = limits.isPresent() ? limits.get().kind(options.askedKind()) : options.kind(asked);
        var columns = limits.map(inUse -> inUse.columns(asked)).orElse(asked);
        table.by(columns.by());
        ChartedKind.check(kind, columns);
        options.refuseForeign(kind);
        var frozen = limits.map(inUse -> inUse.kept().groups()).orElse(Map.of());
        var numbers = new ArrayList<>(columns.values());
        if (!columns.amount().isEmpty()) {
            numbers.add(columns.amount());
        }
        boolean named = !columns.subgroupColumn().isEmpty();
        var study = options.study(columns);
        var texts = named ? List.of(columns.subgroupColumn()) : List.<String>of();
        Optional<CsvColumns> read = LongSeries.charts(kind)
                ? table.readUpTo(LongCharting.MOST_AT_ONCE, numbers, texts, err)
                : Optional.of(table.read(numbers, texts, row -> kind.refuses(row.numbers()), err));
        var reason = limits.isPresent() ? "" : options.kindReason(kind);
        if (read.isEmpty()) {
            var found = LongCharting.run(table, kind, columns.values(), study, frozen, err);
            return new Charting(
                    kind,
                    reason,
                    columns,
                    found.rejected(),
                    found.groups(),
                    Watching.unwatched(frozen, found.groups(), Set.of()));
        }
        var rows = kind == StudyKind.STREAMS ? Map.of("", read.get().rows()) : table.groups(read.get());
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
        var streams = kind == StudyKind.STREAMS
                ? read.get().rows().stream().map(table::group).collect(Collectors.toCollection(LinkedHashSet::new))
                : Set.<String>of();
        return new Charting(
                kind, reason, columns, read.get().rejected(), groups, Watching.unwatched(frozen, groups, streams));
    }

    /** The columns charted, for readers. */
    String value() {
        return String.join(", ", columns.values());
    }

    String json() {
        return SeriesJson.of(kind, value(), rejected, groups, unwatched, exitCode());
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
        if (frozen.isEmpty()) {
            return SeriesStudies.phaseOne(kind, columns, rows, options);
        }
        return limits(frozen, kind, group).flatMap(limits -> SeriesStudies.phaseTwo(limits, columns, rows, options));
    }

    static Answer<FrozenLimits> limits(Map<String, FrozenLimits> frozen, StudyKind kind, String group) {
        var limits = frozen.get(group);
        return limits == null || limits.kind() != kind
                ? Answer.missing(Reason.NOT_ASKED, "the file of limits holds none of this group")
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
        return StudyCode.of(
                !found.isEmpty(), signals || rejected > 0 || found.size() < groups.size() || !unwatched.isEmpty());
    }

    /** The charts in words. */
    List<String> lines() {
        var lines = new ArrayList<String>();
        if (!kindReason.isEmpty()) {
            lines.add("kind: " + kindReason);
        }
        var unit = columns.unit();
        groups.forEach((name, answer) -> {
            lines.add((lines.size() < 2 ? "" : "\n") + value() + (unit.isEmpty() ? "" : " (" + unit + ")")
                    + (name.isEmpty() ? "" : ", " + name) + ": " + kind.title());
            answer.found()
                    .ifPresentOrElse(
                            study -> add(lines, study),
                            () -> lines.add("  no chart: " + answer.whyMissing().orElse("")));
        });
        if (!unwatched.isEmpty()) {
            lines.add("\nNOT ALL WATCHED: "
                    + unwatched.stream()
                            .limit(MOST_NAMES)
                            .map(one -> one.name() + " (" + one.reason() + ")")
                            .collect(Collectors.joining("; "))
                    + (unwatched.size() > MOST_NAMES ? " and " + (unwatched.size() - MOST_NAMES) + " more" : "")
                    + "; exit code " + exitCode());
        }
        return lines.stream().flatMap(String::lines).toList();
    }

    private static void add(List<String> lines, SeriesStudy study) {
        lines.add("  n = " + study.values() + ", " + study.points() + " points, " + study.basis());
        int wide =
                study.figures().stream().mapToInt(f -> f.name().length()).max().orElse(0);
        for (var figure : study.figures()) {
            lines.add("  " + figure.name() + " ".repeat(wide - figure.name().length() + 2)
                    + Digits.of(figure.value(), study.spread()));
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
                        + signal.panel() + " " + Digits.of(signal.value(), study.spread()) + ": " + signal.said()));
        if (study.signalCount() > MOST_SIGNALS) {
            lines.add("    and " + (study.signalCount() - MOST_SIGNALS) + " more; --json gives "
                    + (study.signalCount() > study.signals().size()
                            ? "the first " + study.signals().size()
                            : "all"));
        }
    }
}
