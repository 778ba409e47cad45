package org.tautlog.spc;

import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/** Seeded normal values, and the bounds within which a simulated share must fall. */
public final class Simulated {
    private Simulated() {}

    public static ZigguratSampler.NormalizedGaussian normal(long seed) {
        return ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
    }

    public static double[] normal(long seed, int n) {
        var sampler = normal(seed);
        return java.util.stream.DoubleStream.generate(sampler::sample).limit(n).toArray();
    }

    /** Asserts that a count is within the 99.9 % binomial interval of a theoretical rate. */
    public static void assertRate(double theory, long count, long n, String what) {
        var law = org.apache.commons.statistics.distribution.BinomialDistribution.of((int) n, theory);
        int low = law.inverseCumulativeProbability(0.0005);
        int high = law.inverseCumulativeProbability(0.9995);
        if (count < low || count > high)
            throw new AssertionError(what + ": " + count + " of " + n + " where theory " + theory + " gives " + low
                    + " to " + high + " in 99.9 % of trials");
    }
}
