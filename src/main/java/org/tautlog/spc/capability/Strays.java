package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tautlog.spc.Sample;
import org.tautlog.spc.outlier.GeneralizedEsd;

/**
 * Values that stray from the rest of them, which is normal as it stands or in its logarithms.
 *
 * @param places their places among all values, from 0, in order
 * @param rest the values without them
 * @param scale the shape that the rest was tested for: normal or lognormal
 */
record Strays(List<Integer> places, Sample rest, Shape scale) {
    private static final double SIGNIFICANCE = 0.01;
    /** The test's critical values are good from here on. */
    private static final int LEAST = 25;

    private static final int MOST = 5;

    Strays {
        places = List.copyOf(places);
    }

    /** None, where the test names none on that scale: at most 5, and at most one value in 25. */
    static Optional<Strays> of(Sample sample, Shape scale) {
        if (sample.size() < LEAST || (scale == Shape.LOGNORMAL && sample.min() <= 0)) return Optional.empty();
        var values = sample.toArray();
        var scaled =
                scale == Shape.LOGNORMAL ? Arrays.stream(values).map(Math::log).toArray() : values;
        return GeneralizedEsd.of(scaled, Math.min(MOST, sample.size() / LEAST), SIGNIFICANCE)
                .found()
                .filter(test -> test.strays() > 0)
                .flatMap(test -> without(values, test.flagged(), scale));
    }

    private static Optional<Strays> without(double[] values, List<Integer> places, Shape scale) {
        var out = new HashSet<>(places);
        var rest = IntStream.range(0, values.length)
                .filter(i -> !out.contains(i))
                .mapToDouble(i -> values[i])
                .toArray();
        return Sample.varying(rest, 2, "values without strays")
                .map(sample -> new Strays(places.stream().sorted().toList(), sample, scale))
                .found();
    }
}
