package org.tautlog.review.shape;

import java.util.Comparator;
import java.util.Objects;
import org.tautlog.review.stream.Stream;

/**
 * How far the envelope of one stream and bolt position was learned.
 *
 * @param stream the station and spindle
 * @param bolt the bolt position; empty where the export does not say
 * @param peers conforming curves that it could be learned from
 * @param past how many of those are from before the shift, out of an archive
 * @param compared curves that were held against it
 * @param leaving how many of those left it
 */
public record ShapeStream(Stream stream, String bolt, int peers, int past, int compared, int leaving) {
    static final Comparator<ShapeStream> ORDER = Comparator.comparing(ShapeStream::stream)
            .thenComparingInt(one -> one.bolt().length())
            .thenComparing(ShapeStream::bolt);

    public ShapeStream {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(bolt, "bolt");
        if (past < 0 || past > peers || leaving < 0 || leaving > compared) {
            throw new IllegalArgumentException("peers is " + peers + ", past " + past + ", leaving " + leaving + " of "
                    + compared + "; counts are not negative, a part not more than the whole");
        }
    }

    /** {@return whether too few conforming curves were met for an envelope} */
    public boolean learning() {
        return peers < Envelope.LEAST_PEERS;
    }
}
