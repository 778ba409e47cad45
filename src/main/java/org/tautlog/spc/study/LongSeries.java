package org.tautlog.spc.study;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.RunRuleWatch;
import org.tautlog.spc.chart.RunningLimits;
import org.tautlog.spc.timeweighted.CusumLimits;
import org.tautlog.spc.timeweighted.CusumPoint;
import org.tautlog.spc.timeweighted.CusumWatch;
import org.tautlog.spc.timeweighted.EwmaLimits;
import org.tautlog.spc.timeweighted.EwmaWatch;

/**
 * Charts single values, moving averages or cumulative sums of a series of any length, value by value and in bounded memory:
 * every point is held against its limits and every signal counted; drawn are the least and greatest points of each stretch,
 * told the first signals. Not thread-safe.
 */
public final class LongSeries {
    private static final String FROZEN = "frozen limits";

    private final FrozenLimits limits;
    private final String basis;
    private final StudyOptions options;
    private final @Nullable IndividualsLimits measured;
    private final Step step;
    private final LongLine first = new LongLine();
    private final LongLine second = new LongLine();
    private int n;

    /** What a chart makes of its next value. */
    private interface Step {
        void next(double x, int line);
    }

    private LongSeries(FrozenLimits limits, String basis, StudyOptions options, @Nullable IndividualsLimits measured) {
        this.limits = limits;
        this.basis = basis;
        this.options = options;
        this.measured = measured;
        this.step = switch (limits.kind()) {
            case INDIVIDUALS -> individuals((IndividualsLimits) limits.limits());
            case EWMA -> ewma((EwmaLimits) limits.limits());
            case CUSUM -> cusum((CusumLimits) limits.limits());
            default ->
                throw new IllegalArgumentException(
                        "a chart of " + limits.kind().title() + " is not made value by value");
        };
    }

    /**
     * {@return whether a kind can be charted value by value}
     *
     * @param kind the chart
     */
    public static boolean charts(StudyKind kind) {
        return kind == StudyKind.INDIVIDUALS || kind == StudyKind.EWMA || kind == StudyKind.CUSUM;
    }

    /**
     * Begins a chart with limits from a first pass over the same values.
     *
     * @param kind the chart, one that {@link #charts} knows
     * @param pass the first pass
     * @param options how it is made; no point is left out of the limits
     * @return the chart without a value yet, or why there is none
     */
    public static Answer<LongSeries> phaseOne(StudyKind kind, RunningLimits pass, StudyOptions options) {
        return pass.limits(options.individuals())
                .map(found -> new LongSeries(
                        frozen(kind, found, options),
                        "limits from all " + found.n() + " points of a first pass, none left out",
                        options,
                        found));
    }

    /**
     * Begins a chart with limits from what the options state as known.
     *
     * @param kind the chart, one that {@link #charts} knows
     * @param known centre and standard deviation
     * @param options how it is made
     * @return the chart without a value yet
     */
    public static LongSeries stated(StudyKind kind, StudyOptions.Known known, StudyOptions options) {
        return new LongSeries(
                frozen(kind, options.limits(known), options),
                "limits from the stated centre and standard deviation",
                options,
                null);
    }

    /**
     * Begins a chart with frozen limits.
     *
     * @param limits the limits, of a kind that {@link #charts} knows
     * @param options which run rules watch
     * @return the chart without a value yet
     */
    public static LongSeries phaseTwo(FrozenLimits limits, StudyOptions options) {
        return new LongSeries(limits, FROZEN, options, null);
    }

    private static FrozenLimits frozen(StudyKind kind, IndividualsLimits values, StudyOptions options) {
        var limits = switch (kind) {
            case EWMA -> EwmaLimits.of(values, options.ewma());
            case CUSUM -> CusumLimits.of(values, options.cusum());
            default -> values;
        };
        return new FrozenLimits(kind, limits, List.of());
    }

    /**
     * Takes the next value.
     *
     * @param x a finite value
     * @param line 1-based line it comes from
     */
    public void next(double x, int line) {
        step.next(x, line);
        n++;
    }

    private Step individuals(IndividualsLimits of) {
        var watch = new RunRuleWatch(options.rules());
        var rangeWatch = new RunRuleWatch(RunRule.ofSpread(options.rules()));
        var lines = of.lines();
        var rangeLines = of.movingRangeLines();
        var before = new double[1];
        return (x, line) -> {
            draw(first, Chart.point(n, x, lines, watch), "single values", line);
            if (n > 0)
                draw(second, Chart.point(n, Math.abs(x - before[0]), rangeLines, rangeWatch), "moving ranges", line);
            before[0] = x;
        };
    }

    private Step ewma(EwmaLimits of) {
        var averages = new EwmaWatch(of);
        var watch = new RunRuleWatch(RunRule.limitsOnly());
        return (x, line) -> {
            averages.next(x);
            draw(first, Chart.point(n, averages.average(), of.lines(n + 1L), watch), "moving averages", line);
        };
    }

    private Step cusum(CusumLimits of) {
        var sums = new CusumWatch(of);
        var watch = new RunRuleWatch(RunRule.limitsOnly());
        var lines = of.lines();
        return (x, line) -> {
            var sum = sums.next(x);
            first.add(Chart.point(n, sum.upperSum(), lines, watch));
            second.add(Chart.point(n, -sum.lowerSum(), lines, watch));
            if (sum.signal() != CusumPoint.Signal.NONE)
                Draft.moved(sum, of, place(line)).forEach(first::signal);
        };
    }

    private static void draw(LongLine of, ChartPoint point, String panel, int line) {
        of.add(point);
        if (point.signals())
            of.signal(new StudySignal(point.index() + 1, place(line), panel, point.value(), Draft.broken(point)));
    }

    /** {@return the study of all values so far, or why there is none} */
    public Answer<SeriesStudy> study() {
        if (n == 0) return Answer.missing(Reason.EMPTY, "no rows to chart");
        var draft = new Draft(limits.kind(), n, point -> "", basis, limits);
        if (measured != null) {
            int told = Math.min(n, RunningLimits.MOST_FOR_NEIGHBOURS);
            draft.neighbours(
                    told == n ? "the values" : "the first " + told + " values",
                    measured.neighbours(),
                    options.neighbours());
        }
        switch (limits.kind()) {
            case INDIVIDUALS -> {
                draft.individuals((IndividualsLimits) limits.limits(), first.last());
                draft.panelOnly("single values", true, line("value", ChartKind.INDIVIDUALS, first));
                if (n > 1) draft.panelOnly("moving ranges", true, line("moving range", ChartKind.MOVING_RANGE, second));
            }
            case EWMA -> {
                draft.ewma((EwmaLimits) limits.limits(), first.last());
                draft.panelOnly("moving averages", true, line("average", ChartKind.EWMA, first));
                draft.onlyLimits(options.rules());
            }
            default -> {
                draft.cusum(
                        (CusumLimits) limits.limits(),
                        basis.equals(FROZEN) ? OptionalDouble.empty() : OptionalDouble.of(options.reference()));
                draft.panelOnly(
                        Draft.SUMS,
                        true,
                        line("upper sum", ChartKind.CUSUM, first),
                        line("lower sum", ChartKind.CUSUM, second));
                draft.onlyLimits(options.rules());
            }
        }
        first.signals().forEach(draft::signal);
        second.signals().forEach(draft::signal);
        if (n > LongLine.MOST_STRETCHES)
            draft.note("charted value by value: no point is left out of the limits, drawn are the least and greatest"
                    + " points of each stretch, and told the first " + LongLine.MOST_SIGNALS
                    + " signals of each panel; all are counted");
        return Answer.of(draft.study(n, first.signalCount() + second.signalCount()));
    }

    private static String place(int line) {
        return "line " + line;
    }

    private static PanelLine line(String name, ChartKind kind, LongLine line) {
        return new PanelLine(name, new Chart(kind, line.points()));
    }
}
