package org.tautlog.review.stream;

import java.util.List;
import java.util.Objects;

/**
 * An earlier shift as far as a later one is compared with it.
 *
 * @param levels the values of each stream and feature: first attempts in time order, faulty ones set aside
 * @param shares conforming first attempts of each stream
 * @param cues what tells causes apart, tightening by tightening
 */
public record PastShift(List<Level> levels, List<Share> shares, List<CueReading> cues) {
    /**
     * The values of one feature of one stream.
     *
     * @param stream the station and spindle
     * @param feature which feature
     * @param values the values in time order, in the feature's unit
     */
    public record Level(Stream stream, ChartedFeature feature, List<Double> values) {
        public Level {
            Objects.requireNonNull(stream, "stream");
            Objects.requireNonNull(feature, "feature");
            values = List.copyOf(values);
        }
    }

    /**
     * How many first attempts of one stream conform.
     *
     * @param stream the station and spindle
     * @param conforming how many conform
     * @param attempts of how many
     */
    public record Share(Stream stream, int conforming, int attempts) {
        public Share {
            Objects.requireNonNull(stream, "stream");
            if (conforming < 0 || conforming > attempts) {
                throw new IllegalArgumentException("conforming is " + conforming + " of " + attempts
                        + " first attempts; it must lie from 0 to that");
            }
        }
    }

    public PastShift {
        levels = List.copyOf(levels);
        shares = List.copyOf(shares);
        cues = List.copyOf(cues);
    }

    /**
     * A shift to compare with, from the review of its streams.
     *
     * @param peers what its streams say
     * @param shares conforming first attempts of each stream
     * @return the shift
     */
    public static PastShift of(StreamReview peers, List<Share> shares) {
        return new PastShift(
                peers.charts().stream()
                        .map(chart -> new Level(chart.stream(), chart.feature(), chart.values()))
                        .toList(),
                shares,
                peers.cues());
    }
}
