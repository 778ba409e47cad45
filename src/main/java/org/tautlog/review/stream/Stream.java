package org.tautlog.review.stream;

import java.util.Comparator;
import java.util.Objects;
import org.tautlog.trace.TraceIdentity;

/**
 * One source of tightenings that is charted by itself before anything is pooled: a spindle of a station.
 *
 * @param station the station; empty where the export does not say
 * @param spindle the spindle; empty where the export does not say
 */
public record Stream(String station, String spindle) implements Comparable<Stream> {
    private static final Comparator<Stream> ORDER = Comparator.comparing(Stream::station)
            .thenComparingInt(stream -> stream.spindle.length())
            .thenComparing(Stream::spindle);

    public Stream {
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(spindle, "spindle");
    }

    /**
     * The stream that a tightening belongs to.
     *
     * @param identity the tightening
     * @return its station and spindle
     */
    public static Stream of(TraceIdentity identity) {
        return new Stream(identity.station(), identity.spindle());
    }

    /** {@return the stream in words, for example {@code S40/2}} */
    public String words() {
        if (station.isEmpty() && spindle.isEmpty()) {
            return "(unnamed)";
        }
        return (station.isEmpty() ? "?" : station) + '/' + (spindle.isEmpty() ? "?" : spindle);
    }

    /** Orders by station, then by spindle, 2 before 10. */
    @Override
    public int compareTo(Stream other) {
        return ORDER.compare(this, other);
    }
}
