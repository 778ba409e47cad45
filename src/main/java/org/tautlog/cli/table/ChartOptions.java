package org.tautlog.cli.table;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.report.study.ChartedColumns;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.study.StudyKind;
import org.tautlog.spc.study.StudyOptions;
import org.tautlog.spc.timeweighted.CusumOptions;
import picocli.CommandLine.Option;

/** How a chart is made, in words. */
final class ChartOptions {
    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "Which chart: individuals, mean-range, mean-deviation, ewma, cusum, t2, p, np, c, u, p-laney,"
                    + " u-laney, or streams (default for one column: individuals, with --subgroup mean-range;"
                    + " taken from the file with --limits).")
    private @Nullable String kind;

    @Option(
            names = "--subgroup",
            paramLabel = "COL|N",
            description = "Column that names the subgroup, or how many values running make one; with streams the"
                    + " column that names the time.")
    private @Nullable String subgroup;

    @Option(
            names = "--rules",
            split = ",",
            paramLabel = "RULE",
            description = "Run rules beside the limits: nine-one-side, eight-one-side, six-steady,"
                    + " fourteen-alternating, two-of-three, four-of-five, fifteen-within, eight-beyond; or nelson or"
                    + " western-electric for their sets. With streams they watch the mean of all.")
    private List<String> rules = List.of();

    @Option(
            names = "--without",
            split = ",",
            paramLabel = "RULE",
            description = "Rules not to watch: one of a set, or beyond-limits for the limits themselves; with streams"
                    + " those of the mean of all.")
    private List<String> without = List.of();

    @Option(names = "--width", paramLabel = "W", description = "Distance of the limits in standard deviations.")
    private @Nullable Double width;

    @Option(names = "--centre", paramLabel = "X", description = "Centre that is taken as known; needs --deviation.")
    private @Nullable Double centre;

    @Option(
            names = "--deviation",
            paramLabel = "X",
            description = "Standard deviation of single values that is taken as known; needs --centre.")
    private @Nullable Double deviation;

    @Option(names = "--weight", paramLabel = "W", description = "ewma: weight of the newest value (default: 0.2).")
    private @Nullable Double weight;

    @Option(
            names = "--slack",
            paramLabel = "K",
            description = "cusum: half the shift to be found, in standard deviations (default: 0.5).")
    private @Nullable Double slack;

    @Option(
            names = "--decision",
            paramLabel = "H",
            description = "cusum: the sum that gives a signal, in standard deviations (default: 5).")
    private @Nullable Double decision;

    @Option(
            names = "--head-start",
            description = "cusum: start both sums at half the decision value, so that a process that starts off"
                    + " target is found sooner.")
    private boolean headStart;

    @Option(
            names = "--false-alarm",
            paramLabel = "P",
            description = "t2 and streams: chance of a false signal at one point (default: 0.0027, streams 0.001 for"
                    + " each kind of signal).")
    private @Nullable Double falseAlarm;

    @Option(names = "--keep-all", description = "Leave no point out of the limits, whatever it shows.")
    private boolean keepAll;

    @Option(
            names = "--do-not-widen",
            description = "Do not widen limits where neighbouring values resemble each other.")
    private boolean doNotWiden;

    /** What of a table is asked for. */
    ChartedColumns columns(List<String> values, String amount, List<String> by, String unit) {
        var size = subgroup == null ? OptionalInt.empty() : TableInputs.size(subgroup);
        if (size.isPresent() && size.getAsInt() < 2) {
            throw Refusal.wrongUse("--subgroup is " + size.getAsInt() + "; a subgroup holds at least 2 values");
        }
        return new ChartedColumns(
                values, amount, by, subgroup == null || size.isPresent() ? "" : subgroup, size.orElse(0), unit);
    }

    boolean namesKind() {
        return kind != null;
    }

    /** The chart asked for, or the usual one for so many columns; several could be subgroups or features. */
    StudyKind kind(ChartedColumns columns) {
        if (kind != null) {
            return named(kind);
        }
        if (columns.values().size() > 1) {
            throw Refusal.wrongUse(columns.values().size() + " columns can be the values of one subgroup in each row"
                    + " (--kind mean-range or mean-deviation) or so many features (--kind t2); say which with --kind");
        }
        return subgroup == null ? StudyKind.INDIVIDUALS : StudyKind.MEAN_RANGE;
    }

    /** Why a chart is of its kind where nobody named it. */
    String kindReason(StudyKind chosen) {
        return kind != null
                ? ""
                : chosen.word() + ", as "
                        + (subgroup == null ? "one column is charted without subgroups" : "subgroups are asked for")
                        + "; --kind names another";
    }

    @Nullable StudyKind askedKind() {
        return kind == null ? null : named(kind);
    }

    /** What limits from a file hold already and a command line cannot change. */
    void refuseBesideLimits() {
        var given = new java.util.LinkedHashMap<String, Boolean>();
        given.put("--width", width != null);
        given.put("--centre and --deviation", centre != null || deviation != null);
        given.put("--weight", weight != null);
        given.put("--slack", slack != null);
        given.put("--decision", decision != null);
        given.put("--head-start", headStart);
        given.put("--keep-all", keepAll);
        given.put("--do-not-widen", doNotWiden);
        given.forEach((option, there) -> {
            if (there) {
                throw Refusal.wrongUse(
                        option + " changes how limits are made, and --limits brings them finished;" + " leave one out");
            }
        });
    }

    private static StudyKind named(String kind) {
        return StudyKind.of(kind)
                .orElseThrow(() -> Refusal.wrongUse("there is no chart '" + kind + "'; the charts are "
                        + Arrays.stream(StudyKind.values()).map(StudyKind::word).collect(Collectors.joining(", "))));
    }

    /** An option that the chart does not know would be dropped without a word. */
    void refuseForeign(StudyKind kind) {
        only(weight != null, "--weight", kind, StudyKind.EWMA);
        only(slack != null, "--slack", kind, StudyKind.CUSUM);
        only(decision != null, "--decision", kind, StudyKind.CUSUM);
        only(headStart, "--head-start", kind, StudyKind.CUSUM);
        if (!without.isEmpty() && kind.limitsOnly()) {
            throw Refusal.wrongUse("--without does not belong to " + kind.word() + "; only its limits are watched");
        }
        only(falseAlarm != null, "--false-alarm", kind, StudyKind.T_SQUARED, StudyKind.STREAMS);
        if (width != null && (kind == StudyKind.T_SQUARED || kind == StudyKind.CUSUM)) {
            throw Refusal.wrongUse("--width does not belong to " + kind.word() + "; it takes "
                    + (kind == StudyKind.CUSUM ? "--decision" : "--false-alarm"));
        }
    }

    private static void only(boolean given, String option, StudyKind kind, StudyKind... owners) {
        if (given && !List.of(owners).contains(kind)) {
            throw Refusal.wrongUse(option + " belongs to "
                    + Arrays.stream(owners).map(StudyKind::word).collect(Collectors.joining(" and ")) + ", not to "
                    + kind.word());
        }
    }

    StudyOptions study(ChartedColumns columns) {
        if ((centre == null) != (deviation == null)) {
            throw Refusal.wrongUse("--centre and --deviation are taken as known together; give both or neither");
        }
        var usual = StudyOptions.withDefaults();
        try {
            return new StudyOptions(
                    chosenRules(),
                    width,
                    columns.subgroupSize() > 0 ? columns.subgroupSize() : null,
                    weight == null ? usual.lambda() : weight,
                    slack == null ? usual.reference() : slack,
                    decision == null ? usual.decision() : decision,
                    headStart ? CusumOptions.HeadStart.HALF : CusumOptions.HeadStart.NONE,
                    falseAlarm,
                    doNotWiden ? IndividualsOptions.Neighbours.IGNORE : IndividualsOptions.Neighbours.WIDEN,
                    keepAll ? PhaseOneOptions.keepAll() : PhaseOneOptions.withDefaults(),
                    centre == null || deviation == null ? null : new StudyOptions.Known(centre, deviation));
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(byOption(String.valueOf(e.getMessage())));
        }
    }

    private Set<RunRule> chosenRules() {
        var chosen = EnumSet.copyOf(RunRule.limitsOnly());
        for (var word : rules) {
            switch (word.strip().toLowerCase(Locale.ROOT)) {
                case "nelson" -> chosen.addAll(RunRule.nelson());
                case "western-electric" -> chosen.addAll(RunRule.westernElectric());
                default -> chosen.add(rule(word));
            }
        }
        without.forEach(word -> chosen.remove(rule(word)));
        if (chosen.isEmpty()) {
            throw Refusal.wrongUse("--without leaves no rule to watch; name another with --rules");
        }
        return chosen;
    }

    /** A refusal in the words of the command line. */
    private static String byOption(String message) {
        return message.replaceFirst("^lambda is", "--weight is")
                .replaceFirst("^reference is (.*) and decision ", "--slack is $1 and --decision ")
                .replaceFirst("^width is", "--width is")
                .replaceFirst("^subgroup size is", "--subgroup is")
                .replaceFirst("^false alarm is", "--false-alarm is")
                .replaceFirst("^centre is", "--centre is")
                .replaceFirst("^sigma is", "--deviation is");
    }

    private static RunRule rule(String word) {
        return Arrays.stream(RunRule.values())
                .filter(rule -> rule.word().equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(() -> Refusal.wrongUse("there is no rule '" + word + "'; the rules are "
                        + Arrays.stream(RunRule.values()).map(RunRule::word).collect(Collectors.joining(", "))));
    }
}
