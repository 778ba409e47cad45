package org.tautlog.spc.capability;

import java.util.Locale;
import java.util.Set;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;

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
        /** Too few points, or nobody charted them. */
        NOT_SHOWN
    }

    /**
     * Charts the values as they came and says whether they were in control. The limits rest on all of them.
     *
     * <p>Out of control means more signals than 99 of 100 in-control series of that length give, at a chance of 0.0027 a
     * point: 1 up to 55 points, 2 up to 162, and so on.
     *
     * @param values values in time order
     * @param rules the run rules held against them; more rules give more false signals than the count allows for
     * @return the word with its count
     */
    public static Stability ofIndividuals(double[] values, Set<RunRule> rules) {
        if (values.length < LEAST_POINTS)
            return new Stability(
                    Word.NOT_SHOWN,
                    values.length,
                    0,
                    values.length + " points; control needs at least " + LEAST_POINTS + " to be shown");
        var options = IndividualsOptions.withDefaults().withRules(rules).withPhaseOne(PhaseOneOptions.keepAll());
        var chart = IndividualsChart.phaseOne(values, options)
                .flatMap(phase -> IndividualsChart.chart(phase.limits(), values, rules));
        return chart.found()
                .map(pair -> of(values.length, pair.location().signals().size()))
                .orElseGet(() -> new Stability(
                        Word.NOT_SHOWN, values.length, 0, chart.whyMissing().orElse("not charted")));
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
        if (points < LEAST_POINTS)
            return new Stability(
                    Word.NOT_SHOWN,
                    points,
                    signals,
                    points + " points; control needs at least " + LEAST_POINTS + " to be shown");
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
