package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Digits;
import org.tautlog.spc.change.Pettitt;
import org.tautlog.spc.chart.ChartPair;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.SubgroupChart;
import org.tautlog.spc.chart.SubgroupOptions;
import org.tautlog.spc.chart.SubgroupSpread;

/**
 * The word on control that stands beside every capability figure: an index of a process that is not in control foretells
 * nothing.
 *
 * <p>A capability study's word rests on two tests, each of which calls at most 1 calm group in 100 out of control: points
 * beyond the limits of a chart, and a level that moved, by ranks (Pettitt) widened where neighbours resemble each other. Where
 * no shape holds but for strays, these too put a group out of control. A review joins what its own charts saw, {@link #and}.
 *
 * @param word the word
 * @param points how many points were charted
 * @param signals how many of them gave a signal
 * @param said one sentence for the reader
 * @param movedAt place of the first point at which the level moved, from 0; null where it did not for certain
 * @param strays places of the values without which a shape holds, from 0; none where it holds with all
 */
public record Stability(
        Word word,
        int points,
        int signals,
        String said,
        @Nullable Integer movedAt,
        List<Integer> strays) {
    /** Fewer points than this cannot show control; common practice, 20 to 25 subgroups. */
    private static final int LEAST_POINTS = 20;
    /** Chance that a point in control lies beyond limits at three standard deviations. */
    private static final double BEYOND_LIMITS = 0.0027;

    /** Chance that the level of a calm group is said to have moved. */
    private static final double LEVEL_SIGNIFICANCE = 0.01;

    public Stability {
        strays = List.copyOf(strays);
    }

    /**
     * A word from signals alone.
     *
     * @param word the word
     * @param points how many points were charted
     * @param signals how many of them gave a signal
     * @param said one sentence for the reader
     */
    public Stability(Word word, int points, int signals, String said) {
        this(word, points, signals, said, null, List.of());
    }

    /** The word on control. */
    public enum Word {
        /** No more signals than chance gives. */
        IN_CONTROL,
        /** Signals show causes of their own. */
        OUT_OF_CONTROL,
        /** Too few points, no limits for values of their shape, or nobody charted them. */
        NOT_SHOWN
    }

    /**
     * Charts single values as they came, on the scale of normal scores. The limits rest on all of them.
     *
     * <p>Out of control means more signals than 99 of 100 in-control series of that length give, at a chance of 0.0027 a
     * point: 1 up to 55 points, 2 up to 162, and so on.
     */
    static Stability ofIndividuals(double[] values, NormalScores scores, Set<RunRule> rules) {
        return chartOf(values, scores, rules).withLevel(values, "value");
    }

    private static Stability chartOf(double[] values, NormalScores scores, Set<RunRule> rules) {
        if (values.length < LEAST_POINTS) return tooFew(values.length, 0);
        var scored = scores.of(values);
        var options = IndividualsOptions.withDefaults().withRules(rules).withPhaseOne(PhaseOneOptions.keepAll());
        return charted(
                IndividualsChart.phaseOne(scored, options)
                        .flatMap(phase -> IndividualsChart.chart(phase.limits(), scored, rules)),
                values.length,
                scores,
                NormalScores.neighbours(values));
    }

    /** Charts the means of subgroups as they came, on the scale of normal scores. The limits rest on all of them. */
    static Stability ofSubgroups(double[][] subgroups, NormalScores scores, Set<RunRule> rules) {
        var means = Arrays.stream(subgroups)
                .mapToDouble(group -> Arrays.stream(group).average().orElseThrow())
                .toArray();
        return chartOf(subgroups, scores, rules).withLevel(means, "subgroup");
    }

    private static Stability chartOf(double[][] subgroups, NormalScores scores, Set<RunRule> rules) {
        var scored = Arrays.stream(subgroups).map(scores::of).toArray(double[][]::new);
        var options = SubgroupOptions.withDefaults()
                .withSpread(SubgroupSpread.POOLED)
                .withPhaseOne(PhaseOneOptions.keepAll());
        return charted(
                SubgroupChart.phaseOne(scored, options)
                        .flatMap(phase -> SubgroupChart.chart(phase.limits(), scored, rules)),
                subgroups.length,
                scores,
                Autocorrelation.none());
    }

    private Stability withLevel(double[] points, String point) {
        if (points.length < LEAST_POINTS) return this;
        return Pettitt.of(points, NormalScores.neighbours(points))
                .found()
                .map(test -> and(level(test, point)))
                .orElse(this);
    }

    private static Stability level(Pettitt test, String point) {
        boolean moved = test.pValue() < LEVEL_SIGNIFICANCE;
        return new Stability(
                moved ? Word.OUT_OF_CONTROL : Word.IN_CONTROL,
                test.n(),
                0,
                (moved ? "the level moved at " + point + " " + (test.index() + 1) : "no level moved") + " by ranks, p "
                        + Digits.of(test.pValue()),
                moved ? (Integer) test.index() : null,
                List.of());
    }

    /** Out of control by values that stray from a shape that holds without them. */
    Stability withStrays(List<Integer> places) {
        if (places.isEmpty()) return this;
        String named = places.stream().map(i -> String.valueOf(i + 1)).collect(Collectors.joining(", "));
        return and(new Stability(
                Word.OUT_OF_CONTROL,
                points,
                0,
                (places.size() == 1 ? "value " + named + " strays" : "values " + named + " stray") + " from the others",
                null,
                places));
    }

    /**
     * Joins what another look at the same points says.
     *
     * @param other its word
     * @return out of control where either look says so, in control where both do; points and signals are this one's
     */
    public Stability and(Stability other) {
        var together = word == Word.OUT_OF_CONTROL || other.word == Word.OUT_OF_CONTROL
                ? Word.OUT_OF_CONTROL
                : word == Word.IN_CONTROL ? other.word : word;
        boolean leads = other.word == Word.OUT_OF_CONTROL && word != Word.OUT_OF_CONTROL;
        return new Stability(
                together,
                points,
                signals,
                leads ? other.said + "; " + said : said + "; " + other.said,
                movedAt == null ? other.movedAt : movedAt,
                strays.isEmpty() ? other.strays : strays);
    }

    private static Stability charted(
            Answer<ChartPair> charts, int points, NormalScores scores, Autocorrelation neighbours) {
        return charts.found()
                .map(pair -> scores.judged(of(points, pair.location().signals().size(), BEYOND_LIMITS, neighbours)))
                .orElseGet(() -> new Stability(
                        Word.NOT_SHOWN, points, 0, charts.whyMissing().orElse("not charted")));
    }

    private static Stability tooFew(int points, int signals) {
        return new Stability(
                Word.NOT_SHOWN,
                points,
                signals,
                points + " points; control needs at least " + LEAST_POINTS + " to be shown");
    }

    /**
     * States the word from a count of signals on any chart.
     *
     * @param points points charted, at least 0
     * @param signals points that gave a signal
     * @return the word
     */
    public static Stability of(int points, int signals) {
        return of(points, signals, BEYOND_LIMITS);
    }

    /**
     * States the word from a count of signals on a chart whose rules have a chance of their own.
     *
     * @param points points charted, at least 0
     * @param signals points that gave a signal
     * @param chance chance that a point in control gives a signal, from 0 to 1
     * @return the word
     */
    public static Stability of(int points, int signals, double chance) {
        return of(points, signals, chance, Autocorrelation.none());
    }

    /** Where neighbours resemble each other, signals come in clusters: fewer chances, each of several signals. */
    private static Stability of(int points, int signals, double chance, Autocorrelation neighbours) {
        if (points < LEAST_POINTS) return tooFew(points, signals);
        boolean calm = signals <= byChance(points, chance, neighbours);
        return new Stability(
                calm ? Word.IN_CONTROL : Word.OUT_OF_CONTROL,
                points,
                signals,
                String.format(
                        Locale.ROOT,
                        "%d of %d points gave a signal; %s",
                        signals,
                        points,
                        calm ? "no more than chance gives" : "more than chance gives"));
    }

    /** {@return nobody charted the values} */
    public static Stability notCharted() {
        return new Stability(Word.NOT_SHOWN, 0, 0, "no chart was kept of these values");
    }

    private static double byChance(int points, double chance, Autocorrelation neighbours) {
        int worth = neighbours.worth(points);
        return BinomialDistribution.of(worth, chance).inverseCumulativeProbability(0.99) * ((double) points / worth);
    }
}
