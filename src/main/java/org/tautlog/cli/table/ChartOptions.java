package org.tautlog.cli.table;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
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
                    + " u-laney, or streams (default: individuals; with --subgroup: mean-range; taken from the"
                    + " file with --limits).")
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

    @Nullable String subgroup() {
        return subgroup;
    }

    boolean namesKind() {
        return kind != null;
    }

    StudyKind kind() {
        if (kind == null) {
            return subgroup == null ? StudyKind.INDIVIDUALS : StudyKind.MEAN_RANGE;
        }
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

    StudyOptions study() {
        if ((centre == null) != (deviation == null)) {
            throw Refusal.wrongUse("--centre and --deviation are taken as known together; give both or neither");
        }
        var usual = StudyOptions.withDefaults();
        var size = subgroup == null ? java.util.OptionalInt.empty() : TableInputs.size(subgroup);
        try {
            return new StudyOptions(
                    chosenRules(),
                    width,
                    size.isPresent() ? size.getAsInt() : null,
                    weight == null ? usual.lambda() : weight,
                    slack == null ? usual.reference() : slack,
                    decision == null ? usual.decision() : decision,
                    headStart ? CusumOptions.HeadStart.HALF : CusumOptions.HeadStart.NONE,
                    falseAlarm,
                    doNotWiden ? IndividualsOptions.Neighbours.IGNORE : IndividualsOptions.Neighbours.WIDEN,
                    keepAll ? PhaseOneOptions.keepAll() : PhaseOneOptions.withDefaults(),
                    centre == null || deviation == null ? null : new StudyOptions.Known(centre, deviation));
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(String.valueOf(e.getMessage()));
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

    private static RunRule rule(String word) {
        return Arrays.stream(RunRule.values())
                .filter(rule -> word(rule).equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(() -> Refusal.wrongUse("there is no rule '" + word + "'; the rules are "
                        + Arrays.stream(RunRule.values())
                                .map(ChartOptions::word)
                                .collect(Collectors.joining(", "))));
    }

    private static String word(RunRule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
