package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Digits;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.Removed;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.timeweighted.Cusum;
import org.tautlog.spc.timeweighted.CusumLimits;
import org.tautlog.spc.timeweighted.CusumPoint;
import org.tautlog.spc.timeweighted.EwmaLimits;

/** A study while it is put together. */
final class Draft {
    static final String SUMS = "cumulative sums";

    private final StudyKind kind;
    private final int values;
    private final IntFunction<String> places;
    private final String basis;
    private final FrozenLimits limits;
    private final List<SeriesStudy.Figure> figures = new ArrayList<>();
    private final List<StudyPanel> panels = new ArrayList<>();
    private final List<StudySignal> signals = new ArrayList<>();
    private final List<SeriesStudy.LeftOut> removed = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Draft(StudyKind kind, int values, IntFunction<String> places, String basis, FrozenLimits limits) {
        this.kind = kind;
        this.values = values;
        this.places = places;
        this.basis = basis;
        this.limits = limits;
    }

    void note(String note) {
        notes.add(note);
    }

    void figure(String name, double value) {
        figures.add(new SeriesStudy.Figure(name, value, true));
    }

    void lines(String of, ChartPoint point) {
        figure("centre" + of, point.centre());
        figure("lower limit" + of, point.lower());
        figure("upper limit" + of, point.upper());
    }

    /** Says whether neighbours resemble each other, and what the limits make of it. */
    void neighbours(String of, Autocorrelation neighbours, IndividualsOptions.Neighbours rule) {
        if (neighbours.n() == 0) {
            note("too few values to tell whether neighbours resemble each other in " + of);
        } else if (neighbours.allowed() > 0) {
            note("in " + of + " neighbours resemble each other (lag-1 autocorrelation " + Digits.of(neighbours.lagOne())
                    + "): "
                    + (rule == IndividualsOptions.Neighbours.WIDEN
                            ? "limits are widened for it"
                            : "limits are not widened and will give false signals"));
        }
    }

    /** Says of counts whose limits know chance alone what resemblance means: chance has none. */
    void countedNeighbours(Autocorrelation neighbours, StudyKind wider) {
        if (neighbours.n() == 0) {
            note("too few points to tell whether neighbours resemble each other");
        } else if (neighbours.allowed() > 0) {
            note("neighbouring points resemble each other (lag-1 autocorrelation " + Digits.of(neighbours.lagOne())
                    + "), so the rate itself moves; these limits allow for chance alone and will give false signals: chart "
                    + wider.word() + ", which measures the scatter between points and widens for resemblance");
        }
    }

    void individuals(IndividualsLimits of, ChartPoint last) {
        lines("", last);
        figure("standard deviation", of.sigma());
        figure("mean moving range", of.movingRangeCentre());
        figure("upper limit of moving ranges", of.movingRangeUpper());
    }

    void ewma(EwmaLimits of, ChartPoint last) {
        lines("", last);
        figure("standard deviation", of.sigma());
        figure("weight of the newest value", of.lambda());
        figure("width", of.width());
    }

    /** The standard deviation is known where K is so many of it: not where limits are frozen. */
    void cusum(CusumLimits of, OptionalDouble slack) {
        figure("target", of.target());
        slack.ifPresent(k -> figure("standard deviation behind k and h", of.reference() / k));
        figure("slack k", of.reference());
        figure("decision value h", of.decision());
    }

    void differentLimits(Chart chart) {
        var first = chart.points().get(0);
        if (chart.points().stream().anyMatch(point -> point.upper() != first.upper()))
            note("limits differ from point to point with what stands behind each; those of the last point are given");
    }

    void onlyLimits(Set<RunRule> rules) {
        if (rules.stream().anyMatch(rule -> rule != RunRule.BEYOND_LIMITS))
            note("run rules do not apply to " + kind.title() + "; only the limits are watched");
    }

    void removed(List<Removed> points) {
        for (var point : points)
            removed.add(new SeriesStudy.LeftOut(
                    point.index() + 1,
                    places.apply(point.index()),
                    point.value(),
                    word(point.kind()) + " " + beyond(point.value(), point.lower(), point.upper()) + ", round "
                            + point.round()));
    }

    static String beyond(double value, double lower, double upper) {
        double spread = upper - lower;
        return Digits.of(value, spread) + " beyond " + Digits.of(lower, spread) + " to " + Digits.of(upper, spread);
    }

    void leftOut(SeriesStudy.LeftOut point) {
        removed.add(point);
    }

    void signal(StudySignal signal) {
        signals.add(signal);
    }

    /** Adds a panel with the signals of its lines. */
    void panel(String title, boolean inUnit, PanelLine... lines) {
        panelOnly(title, inUnit, lines);
        for (var line : lines)
            for (var point : line.chart().signals())
                signals.add(new StudySignal(
                        point.index() + 1, places.apply(point.index()), title, point.value(), broken(point)));
    }

    void panelOnly(String title, boolean inUnit, PanelLine... lines) {
        panels.add(new StudyPanel(title, inUnit, List.of(lines)));
    }

    /** The upper sum above and the lower one below zero, each with its decision value. */
    void sums(Cusum cusum) {
        var up = sums(cusum, CusumPoint::upperSum);
        var down = sums(cusum, point -> -point.lowerSum());
        panelOnly(SUMS, true, new PanelLine("upper sum", up), new PanelLine("lower sum", down));
        for (var point : cusum.signals())
            moved(point, cusum.limits(), places.apply((int) point.index())).forEach(signals::add);
    }

    /** What a step of sums says: one signal for each sum past the decision value. */
    static List<StudySignal> moved(CusumPoint point, CusumLimits limits, String place) {
        var said = new ArrayList<StudySignal>();
        int number = (int) point.index() + 1;
        if (point.signal().up())
            said.add(new StudySignal(
                    number,
                    place,
                    SUMS,
                    point.upperSum(),
                    "risen since point " + (point.roseAt() + 1) + ", now near "
                            + level(point.risenLevel(limits), limits)));
        if (point.signal().down())
            said.add(new StudySignal(
                    number,
                    place,
                    SUMS,
                    -point.lowerSum(),
                    "fallen since point " + (point.fellAt() + 1) + ", now near "
                            + level(point.fallenLevel(limits), limits)));
        return said;
    }

    private static String level(double value, CusumLimits limits) {
        return Digits.of(value, limits.lines().upper() - limits.lines().lower());
    }

    private static Chart sums(Cusum cusum, java.util.function.ToDoubleFunction<CusumPoint> sum) {
        return Chart.draw(
                ChartKind.CUSUM,
                cusum.points().stream().mapToDouble(sum).toArray(),
                i -> cusum.limits().lines(),
                RunRule.limitsOnly());
    }

    /** Names for each signal the columns that put it there. */
    void parts(List<String> columns, IntFunction<double[]> partsOf) {
        signals.replaceAll(signal -> {
            int most = Columns.largest(partsOf.apply(signal.point() - 1));
            return new StudySignal(
                    signal.point(),
                    signal.place(),
                    signal.panel(),
                    signal.value(),
                    signal.said() + "; most of it by " + columns.get(most));
        });
    }

    SeriesStudy study() {
        return study(panels.get(0).lines().get(0).chart().points().size(), signals.size());
    }

    /** A study of which not every point is drawn, nor every signal told. */
    SeriesStudy study(int points, int signalCount) {
        return new SeriesStudy(
                kind, values, points, basis, figures, panels, signals, signalCount, removed, notes, limits);
    }

    static String broken(ChartPoint point) {
        return point.broken().stream()
                .map(rule -> rule == RunRule.BEYOND_LIMITS
                        ? point.value() > point.upper() ? "above the upper limit" : "below the lower limit"
                        : rule.words())
                .collect(Collectors.joining("; "));
    }

    private static String word(ChartKind kind) {
        return switch (kind) {
            case INDIVIDUALS -> "value";
            case MOVING_RANGE -> "moving range";
            case MEAN -> "mean";
            case RANGE -> "range";
            case STANDARD_DEVIATION -> "standard deviation";
            case EWMA -> "average";
            case T_SQUARED -> "T squared";
            case COUNT -> "point";
            case CUSUM -> "sum";
            case DIFFERENCE -> "difference";
        };
    }
}
