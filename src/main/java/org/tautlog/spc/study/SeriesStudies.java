package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.chart.SubgroupChart;
import org.tautlog.spc.chart.SubgroupLimits;
import org.tautlog.spc.chart.SubgroupSpread;
import org.tautlog.spc.count.CountChart;
import org.tautlog.spc.count.CountLimits;
import org.tautlog.spc.count.CountModel;
import org.tautlog.spc.multivariate.HotellingChart;
import org.tautlog.spc.multivariate.HotellingLimits;
import org.tautlog.spc.timeweighted.Cusum;
import org.tautlog.spc.timeweighted.CusumLimits;
import org.tautlog.spc.timeweighted.EwmaChart;
import org.tautlog.spc.timeweighted.EwmaLimits;

/** Makes the chart asked for by name: limits from the rows themselves (phase 1), stated, or frozen before (phase 2). */
public final class SeriesStudies {
    private final StudyKind kind;
    private final List<String> columns;
    private final List<StudyRow> rows;
    private final StudyOptions options;
    private final @Nullable FrozenLimits frozen;
    private final List<String> notes = new ArrayList<>();

    private SeriesStudies(
            StudyKind kind,
            List<String> columns,
            List<StudyRow> rows,
            StudyOptions options,
            @Nullable FrozenLimits frozen) {
        this.kind = kind;
        this.columns = columns;
        this.rows = rows;
        this.options = options;
        this.frozen = frozen;
    }

    /**
     * Makes a study with limits from the rows, or from what the options state as known.
     *
     * @param kind the chart
     * @param columns names of a row's values
     * @param rows the rows in time order, all with as many values as there are columns
     * @param options how it is made
     * @return the study, or why there is none
     */
    public static Answer<SeriesStudy> phaseOne(
            StudyKind kind, List<String> columns, List<StudyRow> rows, StudyOptions options) {
        return new SeriesStudies(kind, columns, rows, options, null).study();
    }

    /**
     * Holds rows against frozen limits.
     *
     * @param frozen the limits
     * @param columns names of a row's values
     * @param rows the rows in time order, all with as many values as there are columns
     * @param options which run rules watch, and how subgroups are made
     * @return the study, or why there is none
     */
    public static Answer<SeriesStudy> phaseTwo(
            FrozenLimits frozen, List<String> columns, List<StudyRow> rows, StudyOptions options) {
        return new SeriesStudies(frozen.kind(), columns, rows, options, frozen).study();
    }

    private Answer<SeriesStudy> study() {
        if (rows.isEmpty()) return Answer.missing(Reason.EMPTY, "no rows to chart");
        return switch (kind) {
            case INDIVIDUALS -> individuals();
            case MEAN_RANGE -> subgroups(SubgroupSpread.RANGE);
            case MEAN_DEVIATION -> subgroups(SubgroupSpread.STANDARD_DEVIATION);
            case EWMA -> ewma();
            case CUSUM -> cusum();
            case T_SQUARED -> tSquared();
            case FRACTION -> counts(CountModel.FRACTION);
            case NUMBER -> counts(CountModel.NUMBER);
            case FAULTS -> counts(CountModel.FAULTS);
            case FAULTS_PER_UNIT -> counts(CountModel.FAULTS_PER_UNIT);
            case FRACTION_LANEY -> counts(CountModel.FRACTION_LANEY);
            case FAULTS_PER_UNIT_LANEY -> counts(CountModel.FAULTS_PER_UNIT_LANEY);
            case STREAMS -> StreamStudy.of(rows, options, frozen);
        };
    }

    private Answer<SeriesStudy> individuals() {
        var x = column(0);
        var known = options.known();
        return this.<IndividualsLimits>basis(() -> IndividualsChart.phaseOne(x, options.individuals()), Answer::of)
                .flatMap(basis -> IndividualsChart.chart(basis.limits, x, options.rules())
                        .map(pair -> {
                            var draft = draft(basis, x.length, this::place);
                            if (known == null)
                                draft.neighbours("the values", basis.limits.neighbours(), options.neighbours());
                            draft.individuals(
                                    basis.limits, pair.location().points().get(0));
                            draft.panel("single values", true, new PanelLine("value", pair.location()));
                            if (x.length > 1)
                                draft.panel("moving ranges", true, new PanelLine("moving range", pair.spread()));
                            return draft.study();
                        }));
    }

    private Answer<SeriesStudy> ewma() {
        var x = column(0);
        return this.<EwmaLimits>basis(
                        () -> EwmaChart.phaseOne(x, options.individuals(), options.ewma()),
                        stated -> Answer.of(EwmaLimits.of(stated, options.ewma())))
                .flatMap(basis -> EwmaChart.chart(basis.limits, x).map(chart -> {
                    var draft = draft(basis, x.length, this::place);
                    sayNeighbours(draft, basis, x);
                    draft.ewma(basis.limits, chart.points().get(x.length - 1));
                    draft.panel("moving averages", true, new PanelLine("average", chart));
                    draft.onlyLimits(options.rules());
                    return draft.study();
                }));
    }

    private Answer<SeriesStudy> cusum() {
        var x = column(0);
        return this.<CusumLimits>basis(
                        () -> Cusum.phaseOne(x, options.individuals(), options.cusum()),
                        stated -> Answer.of(CusumLimits.of(stated, options.cusum())))
                .flatMap(basis -> Cusum.of(basis.limits, x).map(sums -> {
                    var draft = draft(basis, x.length, this::place);
                    sayNeighbours(draft, basis, x);
                    draft.cusum(basis.limits);
                    draft.sums(sums);
                    draft.onlyLimits(options.rules());
                    return draft.study();
                }));
    }

    private Answer<SeriesStudy> subgroups(SubgroupSpread spread) {
        var groups = new LinkedHashMap<String, List<Double>>();
        if (rows.get(0).values().size() > 1) rows.forEach(row -> groups.put(row.place(), row.values()));
        else
            grouped()
                    .forEach((name, members) -> groups.put(
                            name,
                            members.stream().map(row -> row.values().get(0)).toList()));
        if (groups.isEmpty())
            return Answer.missing(
                    Reason.TOO_FEW, rows.size() + " values do not fill one subgroup of " + options.subgroupSize());
        var x = groups.values().stream()
                .map(group -> group.stream().mapToDouble(v -> v).toArray())
                .toArray(double[][]::new);
        return this.<SubgroupLimits>basis(
                        () -> SubgroupChart.phaseOne(x, options.subgroups(spread)),
                        stated -> Answer.of(new SubgroupLimits(
                                stated.centre(), stated.sigma(), stated.width(), spread, 1, 0, 0, stated.neighbours())))
                .flatMap(basis -> SubgroupChart.chart(basis.limits, x, options.rules())
                        .map(pair -> {
                            int values = IntStream.range(0, x.length)
                                    .map(i -> x[i].length)
                                    .sum();
                            var draft = draft(basis, values, List.copyOf(groups.keySet())::get);
                            if (options.known() == null)
                                draft.neighbours("the means", basis.limits.neighbours(), options.neighbours());
                            draft.lines("", pair.location().points().get(x.length - 1));
                            draft.lines(
                                    spread == SubgroupSpread.RANGE ? " of ranges" : " of deviations",
                                    pair.spread().points().get(x.length - 1));
                            draft.figure("standard deviation within", basis.limits.sigma());
                            draft.differentLimits(pair.location());
                            draft.panel("means of subgroups", true, new PanelLine("mean", pair.location()));
                            draft.panel(
                                    spread == SubgroupSpread.RANGE ? "ranges" : "standard deviations",
                                    true,
                                    new PanelLine(
                                            spread == SubgroupSpread.RANGE ? "range" : "deviation", pair.spread()));
                            return draft.study();
                        }));
    }

    private Answer<SeriesStudy> counts(CountModel model) {
        var counts = column(0);
        var amounts = rows.get(0).values().size() > 1
                ? column(1)
                : IntStream.range(0, counts.length).mapToDouble(i -> 1).toArray();
        return this.<CountLimits>basis(
                        () -> CountChart.phaseOne(model, counts, amounts, options.counts()),
                        stated -> Answer.missing(
                                Reason.NOT_ASKED,
                                "counts take their spread from their rate; state no standard deviation"))
                .flatMap(basis -> CountChart.chart(basis.limits, counts, amounts, options.rules())
                        .map(chart -> {
                            var draft = draft(basis, counts.length, this::place);
                            if (basis.phase != null) sayNeighbours(draft, basis.phase, chart);
                            draft.lines("", chart.points().get(counts.length - 1));
                            draft.figure("mean rate", basis.limits.rate());
                            if (kind == StudyKind.FRACTION_LANEY || kind == StudyKind.FAULTS_PER_UNIT_LANEY)
                                draft.figure("scatter between points over chance", basis.limits.scatter());
                            draft.differentLimits(chart);
                            draft.panel(counted(model), false, new PanelLine("point", chart));
                            return draft.study();
                        }));
    }

    private void sayNeighbours(Draft draft, PhaseOne<CountLimits> phase, Chart chart) {
        boolean binomial = kind == StudyKind.FRACTION || kind == StudyKind.NUMBER || kind == StudyKind.FRACTION_LANEY;
        var kept = phase.kept().stream()
                .mapToObj(chart.points()::get)
                .mapToDouble(point -> (point.value() - point.centre()) / (point.upper() - point.centre()))
                .toArray();
        var found = Autocorrelation.ofDifferences(kept).found().orElse(Autocorrelation.none());
        var wider = binomial ? StudyKind.FRACTION_LANEY : StudyKind.FAULTS_PER_UNIT_LANEY;
        if (kind == StudyKind.FRACTION_LANEY || kind == StudyKind.FAULTS_PER_UNIT_LANEY)
            draft.neighbours("the points", found, options.neighbours());
        else draft.countedNeighbours(found, wider);
    }

    private void sayNeighbours(
            Draft draft, PhaseOne<HotellingLimits> phase, @Nullable Map<String, List<StudyRow>> groups) {
        var points = groups == null
                ? rows.stream().map(List::of).toList()
                : groups.values().stream().toList();
        var kept = phase.kept().stream()
                .mapToObj(points::get)
                .flatMap(List::stream)
                .map(SeriesStudies::features)
                .toArray(double[][]::new);
        var found = HotellingChart.neighbours(kept);
        for (int j = 0; j < found.size(); j++) draft.neighbours(columns.get(j), found.get(j), options.neighbours());
    }

    private static String counted(CountModel model) {
        return switch (model) {
            case FRACTION, FRACTION_LANEY -> "fractions";
            case NUMBER -> "numbers";
            case FAULTS -> "faults";
            case FAULTS_PER_UNIT, FAULTS_PER_UNIT_LANEY -> "faults for each unit";
        };
    }

    private Answer<SeriesStudy> tSquared() {
        boolean grouped = !rows.get(0).subgroup().isEmpty() || options.subgroupSize() != null;
        var groups = grouped ? grouped() : null;
        var x = groups == null
                ? rows.stream().map(SeriesStudies::features).toArray(double[][]::new)
                : groups.values().stream().map(SeriesStudies::mean).toArray(double[][]::new);
        return this.<HotellingLimits>basis(
                        () -> groups == null
                                ? HotellingChart.phaseOne(x, options.hotelling())
                                : HotellingChart.phaseOneOfSubgroups(
                                        groups.values().stream()
                                                .map(members -> members.stream()
                                                        .map(SeriesStudies::features)
                                                        .toArray(double[][]::new))
                                                .toArray(double[][][]::new),
                                        options.hotelling()),
                        stated -> Answer.missing(
                                Reason.NOT_ASKED,
                                "T squared needs a covariance; a standard deviation does not state it"))
                .flatMap(basis -> HotellingChart.chart(
                                basis.limits, x, frozen == null ? HotellingLimits.Phase.ONE : HotellingLimits.Phase.TWO)
                        .map(chart -> {
                            var draft = draft(
                                    basis,
                                    rows.size(),
                                    groups == null ? this::place : List.copyOf(groups.keySet())::get);
                            if (basis.phase != null) sayNeighbours(draft, basis.phase, groups);
                            draft.figure("upper limit", chart.points().get(0).upper());
                            draft.figure("upper limit for new points", basis.limits.phaseTwoLimit());
                            draft.figure(
                                    "mean in control", chart.points().get(0).centre());
                            draft.panel("T squared", false, new PanelLine("T squared", chart));
                            draft.parts(columns, index -> HotellingChart.parts(basis.limits, x[index]));
                            draft.onlyLimits(options.rules());
                            return draft.study();
                        }));
    }

    /** Limits and where they come from. */
    record Basis<L extends Record>(L limits, @Nullable PhaseOne<L> phase, String said) {}

    interface FromKnown<L> {
        Answer<L> of(IndividualsLimits stated);
    }

    private <L extends Record> Answer<Basis<L>> basis(Supplier<Answer<PhaseOne<L>>> fromRows, FromKnown<L> fromKnown) {
        if (frozen != null) {
            @SuppressWarnings("unchecked") // FrozenLimits checks that the record is of its kind's type
            var limits = (L) frozen.limits();
            return Answer.of(new Basis<>(limits, null, "frozen limits"));
        }
        var known = options.known();
        if (known != null)
            return fromKnown
                    .of(options.limits(known))
                    .map(limits -> new Basis<>(limits, null, "limits from the stated centre and standard deviation"));
        return fromRows.get().map(phase -> new Basis<>(phase.limits(), phase, phase.said()));
    }

    private Draft draft(Basis<?> basis, int values, IntFunction<String> places) {
        var draft = new Draft(kind, values, places, basis.said, new FrozenLimits(kind, basis.limits, List.of()));
        notes.forEach(draft::note);
        var phase = basis.phase;
        if (phase != null) draft.removed(phase.removed());
        return draft;
    }

    /** Of the values that the limits rest on; limits that were stated or frozen have said it before. */
    private void sayNeighbours(Draft draft, Basis<?> basis, double[] x) {
        var phase = basis.phase;
        if (phase == null) return;
        var kept = phase.kept().stream().mapToDouble(i -> x[i]).toArray();
        draft.neighbours(
                "the values",
                Autocorrelation.ofDifferences(kept).found().orElse(Autocorrelation.none()),
                options.neighbours());
    }

    private double[] column(int column) {
        return rows.stream().mapToDouble(row -> row.values().get(column)).toArray();
    }

    private String place(int row) {
        return rows.get(row).place();
    }

    /** Rows by the name of their subgroup, or so many running; a last one that is not full is left out and named. */
    private Map<String, List<StudyRow>> grouped() {
        var groups = new LinkedHashMap<String, List<StudyRow>>();
        var size = options.subgroupSize();
        if (size == null) {
            rows.forEach(row -> groups.computeIfAbsent("subgroup " + row.subgroup(), name -> new ArrayList<>())
                    .add(row));
            return groups;
        }
        int full = rows.size() / size;
        for (int i = 0; i < full; i++) {
            groups.put("subgroup " + (i + 1), rows.subList(i * size, (i + 1) * size));
        }
        int rest = rows.size() - full * size;
        if (rest > 0)
            notes.add("the last " + rest + (rest == 1 ? " value fills" : " values fill") + " no subgroup of " + size
                    + " and " + (rest == 1 ? "is" : "are") + " not charted");
        return groups;
    }

    private static double[] features(StudyRow row) {
        return row.values().stream().mapToDouble(v -> v).toArray();
    }

    private static double[] mean(List<StudyRow> members) {
        var mean = new double[members.get(0).values().size()];
        for (var row : members)
            for (int j = 0; j < mean.length; j++) mean[j] += row.values().get(j) / members.size();
        return mean;
    }
}
