package org.tautlog.spc.stream;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.chart.PhaseOneLoop;
import org.tautlog.spc.chart.Removed;
import org.tautlog.spc.timeweighted.RunLength;

/**
 * Charts of parallel streams: the mean of all, the largest and smallest of them at each time, and each one's difference from
 * the mean. Cells in which a stream was not seen hold NaN.
 *
 * <pre>
 * x[t][j] = centre[j] + movement[t] + own[t][j]
 * group:  deviation x[t][j] - centre[j], largest and smallest, within +- w streamSigma
 * own:    d[t][j] = deviation - mean deviation of the m streams seen, within +- w ownSigma sqrt(1 - 1/m)
 * w:      2 F(-w) = 1 - (1 - falseAlarm)^(1 / k)                k streams
 * run:    smallest r with (k^r - 1) / (k - 1) >= 1 / falseAlarm
 * sums:   CUSUM of d / (ownSigma sqrt(1 - 1/m)) with k 0.5 and h such that k streams run 1 / falseAlarm times on average
 * </pre>
 *
 * <ul>
 *   <li>A stream that moves by s moves every other's difference by -s / m: at each time only differences on the side of the
 *       farthest one give a signal, and a stream whose sum is past h is no longer part of the mean that sums are held against;
 *       its own difference then has the standard deviation ownSigma sqrt(1 + 1/m). The drawn differences are from all streams.
 *   <li>Two streams: their differences mirror each other, so a signal names both sides of one fact.
 *   <li>Equal extremes, as rounding makes them, end a run.
 *   <li>Where a stream's differences resemble the ones before (their lag-1 autocorrelation r, all streams together, lies above
 *       its noise bound), sums are scaled by sqrt((1 + r) / (1 - r)) and runs must be (1 + r) / (1 - r) times as long; where its
 *       values do, streamSigma is divided by sqrt(1 - r). ownSigma is that of all values and needs nothing.
 *   <li>A sum signals once, when it crosses; a run once, when it is long enough.
 * </ul>
 *
 * Source: group charts: Boyd, Industrial Quality Control 7 (1950); run of one stream: Nelson, Journal of Quality Technology 18
 * (1986); differences: Mortell and Runger, Journal of Quality Technology 27 (1995); Montgomery 10.3; all from memory.
 *
 * @param limits the limits that the streams were held against
 * @param common chart of the mean of the streams, on the level of the mean centre, over the times with 2 or more streams
 * @param points largest and smallest by time
 * @param signals what was seen, in time order
 */
public record StreamsChart(StreamsLimits limits, Chart common, List<StreamPoint> points, List<StreamSignal> signals) {
    private static final double PAIR_D2 = 2 / Math.sqrt(Math.PI);

    /** Copies the lists. */
    public StreamsChart {
        points = List.copyOf(points);
        signals = List.copyOf(signals);
    }

    /**
     * Limits from data (phase 1). A cell whose difference lies beyond its own limits is left out; the index of a removed point
     * is time * streams + column.
     *
     * @param byTime one row a time in order, one column a stream; NaN where a stream was not seen
     * @param options how the streams are charted
     * @return the limits with the cells left out, or why there are none
     */
    public static Answer<PhaseOne<StreamsLimits>> phaseOne(double[][] byTime, StreamsOptions options) {
        return StreamTable.of(byTime).flatMap(table -> {
            var usable = new BitSet();
            int charted = 0;
            for (int j = 0; j < table.streams(); j++) {
                if (table.seenOf(j) < options.leastValues()) continue;
                charted++;
                for (int t = 0; t < table.times(); t++) if (table.seen(t, j)) usable.set(table.cell(t, j));
            }
            if (charted < 2)
                return Answer.missing(
                        Reason.TOO_FEW,
                        charted + " of " + table.streams() + " streams have at least " + options.leastValues()
                                + " values; a comparison needs 2");
            int streams = charted;
            return PhaseOneLoop.settle(
                    table.times() * table.streams(),
                    options.phaseOne(),
                    kept -> limits(table, both(kept, usable), streams, options),
                    (limits, kept, round) -> beyond(table, limits, both(kept, usable), round));
        });
    }

    /**
     * Holds frozen limits against data (phase 2), or draws phase 1's own data.
     *
     * @param limits the frozen limits
     * @param byTime one row a time in order, one column a stream, as many as in phase 1; NaN where a stream was not seen
     * @param options how the mean of the streams is watched
     * @return the charts, or why there are none
     */
    public static Answer<StreamsChart> chart(StreamsLimits limits, double[][] byTime, StreamsOptions options) {
        return StreamTable.of(byTime).flatMap(table -> {
            if (table.streams() != limits.centres().size())
                return Answer.missing(
                        Reason.UNEQUAL,
                        table.streams() + " streams, the limits hold "
                                + limits.centres().size());
            var use = usable(table, limits);
            var times = IntStream.range(0, table.times())
                    .filter(t -> present(table, t, use) >= 2)
                    .toArray();
            if (times.length == 0)
                return Answer.missing(Reason.TOO_FEW, "no time at which two charted streams were seen");
            double level = limits.common().centre();
            var centres = centres(limits);
            var levels = Arrays.stream(times)
                    .mapToDouble(t -> level + table.movement(t, centres, use))
                    .toArray();
            return IndividualsChart.chart(
                            limits.common(), levels, options.common().rules())
                    .map(common -> {
                        var watch = new StreamsWatch(limits);
                        var signals = new ArrayList<StreamSignal>();
                        for (int i = 0; i < times.length; i++) {
                            var point = common.location().points().get(i);
                            if (point.signals())
                                signals.add(new StreamSignal(
                                        StreamSignal.Kind.MEAN_MOVED,
                                        times[i],
                                        null,
                                        point.value(),
                                        point.value() > point.centre() ? point.upper() : point.lower()));
                            signals.addAll(watch.next(times[i], table, use));
                        }
                        return new StreamsChart(limits, common.location(), watch.points(), signals);
                    });
        });
    }

    /** {@return the columns of the streams that moved apart from the others, smallest first} */
    public List<Integer> ownMovers() {
        return signals.stream()
                .filter(signal -> signal.kind().ofOneStream())
                .map(StreamSignal::named)
                .flatMapToInt(OptionalInt::stream)
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }

    /** {@return the kinds of signals seen} */
    public Set<StreamSignal.Kind> kinds() {
        return signals.stream().map(StreamSignal::kind).collect(Collectors.toUnmodifiableSet());
    }

    static StreamTable.Vector centres(StreamsLimits limits) {
        var values = limits.centres().stream()
                .mapToDouble(centre -> centre == null ? Double.NaN : centre)
                .toArray();
        return i -> values[i];
    }

    private static BitSet usable(StreamTable table, StreamsLimits limits) {
        var use = new BitSet();
        for (int t = 0; t < table.times(); t++)
            for (int j = 0; j < table.streams(); j++)
                if (table.seen(t, j) && limits.centres().get(j) != null) use.set(table.cell(t, j));
        return use;
    }

    static int present(StreamTable table, int time, BitSet use) {
        return use.get(table.cell(time, 0), table.cell(time, 0) + table.streams())
                .cardinality();
    }

    private static BitSet both(BitSet one, BitSet other) {
        var both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    private static Answer<StreamsLimits> limits(StreamTable table, BitSet use, int streams, StreamsOptions options) {
        var fit = table.fit(use);
        double own = 0;
        int cells = 0;
        for (int t = 0; t < table.times(); t++) {
            if (present(table, t, use) < 2) continue;
            for (int j = 0; j < table.streams(); j++) {
                if (!use.get(table.cell(t, j))) continue;
                double rest =
                        table.at(t, j) - fit.centres().at(j) - fit.movements().at(t);
                own += rest * rest;
                cells++;
            }
        }
        int freedom = cells - fit.parameters();
        if (freedom < 1)
            return Answer.missing(Reason.TOO_FEW, "too few times at which two streams were seen to compare them");
        double ownSigma = Math.sqrt(own / freedom);
        boolean widen = options.common().neighbours() == IndividualsOptions.Neighbours.WIDEN;
        var neighbours = StreamNeighbours.ofDifferences(table, fit, use);
        double factor = widen ? neighbours.meanFactor() : 1;
        double streamSigma = movingRangeSigma(table, use)
                * (widen ? StreamNeighbours.ofValues(table, use).movingRangeFactor() : 1);
        if (!(ownSigma > Sample.LEAST_SPREAD && streamSigma > Sample.LEAST_SPREAD))
            return Answer.missing(Reason.NO_SPREAD, "the streams do not differ from one another in their movement");
        double level = IntStream.range(0, table.streams())
                .mapToDouble(j -> fit.centres().at(j))
                .filter(c -> !Double.isNaN(c))
                .average()
                .orElseThrow();
        var levels = IntStream.range(0, table.times())
                .mapToDouble(t -> level + fit.movements().at(t))
                .filter(m -> !Double.isNaN(m))
                .toArray();
        int counted = cells;
        return IndividualsChart.phaseOne(levels, options.common())
                .map(common -> new StreamsLimits(
                        IntStream.range(0, table.streams())
                                .<@Nullable Double>mapToObj(
                                        j -> Double.isNaN(fit.centres().at(j))
                                                ? null
                                                : Double.valueOf(fit.centres().at(j)))
                                .collect(Collectors.toCollection(ArrayList::new)),
                        common.limits(),
                        ownSigma,
                        streamSigma,
                        familyWidth(streams, options.falseAlarm()),
                        (int) Math.ceil(longestRun(streams, options.falseAlarm()) * factor * factor),
                        cusumDecision(streams, options.falseAlarm()),
                        factor,
                        counted,
                        neighbours));
    }

    private static double movingRangeSigma(StreamTable table, BitSet use) {
        double sum = 0;
        int ranges = 0;
        for (int j = 0; j < table.streams(); j++) {
            int before = -1;
            for (int t = 0; t < table.times(); t++) {
                if (!use.get(table.cell(t, j))) continue;
                if (before >= 0) {
                    sum += Math.abs(table.at(t, j) - table.at(before, j));
                    ranges++;
                }
                before = t;
            }
        }
        return ranges == 0 ? 0 : sum / ranges / PAIR_D2;
    }

    static double familyWidth(int streams, double falseAlarm) {
        double each = -Math.expm1(Math.log1p(-falseAlarm) / streams);
        return NormalDistribution.of(0, 1).inverseSurvivalProbability(each / 2);
    }

    static int longestRun(int streams, double falseAlarm) {
        int run = 2;
        while ((Math.pow(streams, run) - 1) / (streams - 1) < 1 / falseAlarm) run++;
        return run;
    }

    static double cusumDecision(int streams, double falseAlarm) {
        double wanted = Math.log(streams / falseAlarm);
        return new BrentSolver(1e-6)
                .solve(100, h -> Math.log(RunLength.ofCusum(StreamsLimits.SLACK, h, 0, 0)) - wanted, 0.1, 25);
    }

    private static List<Removed> beyond(StreamTable table, StreamsLimits limits, BitSet use, int round) {
        var centres = centres(limits);
        var beyond = new ArrayList<Removed>();
        for (int t = 0; t < table.times(); t++) {
            int present = present(table, t, use);
            if (present < 2) continue;
            double movement = table.movement(t, centres, use);
            double reach = limits.ownReach(present);
            int farthest = -1;
            double most = reach;
            for (int j = 0; j < table.streams(); j++) {
                if (!use.get(table.cell(t, j))) continue;
                double difference = Math.abs(table.at(t, j) - centres.at(j) - movement);
                if (difference <= most) continue;
                most = difference;
                farthest = j;
            }
            if (farthest >= 0) {
                double difference = table.at(t, farthest) - centres.at(farthest) - movement;
                beyond.add(
                        new Removed(ChartKind.DIFFERENCE, table.cell(t, farthest), difference, -reach, reach, round));
            }
        }
        return beyond;
    }
}
