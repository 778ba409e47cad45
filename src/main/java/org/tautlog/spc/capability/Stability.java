package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import org.tautlog.spc.Answer;
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
 * @param word the word
 * @param points how many points were charted
 * @param signals how many of them gave a signal
 * @param said one sentence for the reader
 */
public record Stability(Word word, int points, int signals, String said) {
    /** Fewer points than this cannot show control; common practice, 20 to 25 subgroups. */
    private static final int LEAST_POINTS = 20;
    /** Chance that a point in control lies beyond limits at three standard deviations. */
    private static final double BEYOND_LIMITS = 0.0027;

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
        if (values.length < LEAST_POINTS) return tooFew(values.length, 0);
        var scored = scores.of(values);
        var options = IndividualsOptions.withDefaults().withRules(rules).withPhaseOne(PhaseOneOptions.keepAll());
        return charted(
                IndividualsChart.phaseOne(scored, options)
                        .flatMap(phase -> IndividualsChart.chart(phase.limits(), scored, rules)),
                values.length,
                scores);
    }

    /** Charts the means of subgroups as they came, on the scale of normal scores. The limits rest on all of them. */
    static Stability ofSubgroups(double[][] subgroups, NormalScores scores, Set<RunRule> rules) {
        var scored = Arrays.stream(subgroups).map(scores::of).toArray(double[][]::new);
        var options = SubgroupOptions.withDefaults()
                .withSpread(SubgroupSpread.POOLED)
                .withPhaseOne(PhaseOneOptions.keepAll());
        return charted(
                SubgroupChart.phaseOne(scored, options)
                        .flatMap(phase -> SubgroupChart.chart(phase.limits(), scored, rules)),
                subgroups.length,
                scores);
    }

    private static Stability charted(Answer<ChartPair> charts, int points, NormalScores scores) {
        return charts.found()
                .map(pair -> scores.judged(of(points, pair.location().signals().size())))
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
        if (points < LEAST_POINTS) return tooFew(points, signals);
        boolean calm = signals <= byChance(points, chance);
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

    private static int byChance(int points, double chance) {
        var count = org.apache.commons.statistics.distribution.BinomialDistribution.of(points, chance);
        return count.inverseCumulativeProbability(0.99);
    }
}
