package org.tautlog.spc.outlier;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Test for up to r strays in values that are otherwise normal (generalized extreme Studentized deviate).
 *
 * <pre>{@code
 * step i = 1..r: R[i] = max |x - mean| / s of what is left; the farthest value is then taken out
 * lambda[i] = (n - i) t / sqrt((n - i - 1 + t^2)(n - i + 1)),  t the 1 - a / (2 (n - i + 1)) point, n - i - 1 degrees of freedom
 * strays = the largest i with R[i] > lambda[i], even where earlier steps fail: strays hide each other
 * }</pre>
 *
 * <p>The critical values are good from 25 values on, and tolerable from 15.
 *
 * <p>Source: Rosner, Technometrics 25 (1983); NIST/SEMATECH e-Handbook 1.3.5.17.3.
 *
 * @param steps the steps, first the farthest value
 * @param strays how many values are called strays, from 0
 * @param significance chance of calling any good value a stray
 * @param n how many values
 */
public record GeneralizedEsd(List<Step> steps, int strays, double significance, int n) {
    /**
     * One step.
     *
     * @param index place of the value taken out, from 0
     * @param value the value
     * @param statistic R
     * @param critical lambda
     */
    public record Step(int index, double value, double statistic, double critical) {}

    /** Copies the list. */
    public GeneralizedEsd {
        steps = List.copyOf(steps);
    }

    /**
     * Tests values.
     *
     * @param values the values, at least 3 more than the most strays, not all equal
     * @param mostStrays r, the most strays looked for, at least 1
     * @param significance chance of calling any good value a stray, above 0 and below 1
     * @return the test, or why there is none
     */
    public static Answer<GeneralizedEsd> of(double[] values, int mostStrays, double significance) {
        if (mostStrays < 1)
            throw new IllegalArgumentException("mostStrays is " + mostStrays + "; it must be at least 1");
        if (!(significance > 0 && significance < 1))
            throw new IllegalArgumentException("significance is " + significance + "; it must lie between 0 and 1");
        return Sample.varying(values, 3, "a test for strays").flatMap(sample -> {
            int n = sample.size();
            if (n < mostStrays + 3)
                return Answer.missing(
                        Reason.TOO_FEW, n + " values; looking for " + mostStrays + " strays needs " + (mostStrays + 3));
            return Answer.of(test(sample, mostStrays, significance));
        });
    }

    private static GeneralizedEsd test(Sample sample, int mostStrays, double significance) {
        int n = sample.size();
        var left = new ArrayList<Integer>();
        for (int i = 0; i < n; i++) left.add(i);
        var steps = new ArrayList<Step>();
        int strays = 0;
        for (int i = 1; i <= mostStrays; i++) {
            var rest = Sample.derived(left.stream().mapToDouble(sample::at).toArray());
            double sd = rest.sd();
            if (sd == 0) break;
            double mean = rest.mean();
            int farthest = 0;
            for (int k = 1; k < left.size(); k++)
                if (Math.abs(rest.at(k) - mean) > Math.abs(rest.at(farthest) - mean)) farthest = k;
            double r = Math.abs(rest.at(farthest) - mean) / sd;
            double lambda = critical(n, i, significance);
            int index = left.remove(farthest);
            steps.add(new Step(index, sample.at(index), r, lambda));
            if (r > lambda) strays = i;
        }
        return new GeneralizedEsd(steps, strays, significance, n);
    }

    private static double critical(int n, int i, double significance) {
        double t = TDistribution.of(n - i - 1).inverseSurvivalProbability(significance / (2.0 * (n - i + 1)));
        return (n - i) * t / Math.sqrt((n - i - 1 + t * t) * (n - i + 1));
    }

    /** {@return the places of the values called strays, from 0, the farthest first} */
    public List<Integer> flagged() {
        return steps.stream().limit(strays).map(Step::index).toList();
    }
}
