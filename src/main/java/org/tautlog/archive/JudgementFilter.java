package org.tautlog.archive;

import java.time.OffsetDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Which judgements are wanted. Empty texts and absent times leave a part open; a judgement without a time falls outside
 * every range of time.
 *
 * @param station the station; empty for any
 * @param spindle the spindle; empty for any
 * @param bolt the bolt position; empty for any
 * @param from earliest time; null where open
 * @param before first time that is too late; null where open
 * @param specificationVersion version of the specification that judged; empty for any
 */
public record JudgementFilter(
        String station,
        String spindle,
        String bolt,
        @Nullable OffsetDateTime from,
        @Nullable OffsetDateTime before,
        String specificationVersion) {
    public JudgementFilter {
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(spindle, "spindle");
        Objects.requireNonNull(bolt, "bolt");
        Objects.requireNonNull(specificationVersion, "specificationVersion");
    }

    /** {@return a filter that lets everything through} */
    public static JudgementFilter everything() {
        return new JudgementFilter("", "", "", null, null, "");
    }

    /**
     * The same filter, narrowed to a stream.
     *
     * @param ofStation the station; empty for any
     * @param ofSpindle the spindle; empty for any
     * @param ofBolt the bolt position; empty for any
     * @return the narrowed filter
     */
    public JudgementFilter stream(String ofStation, String ofSpindle, String ofBolt) {
        return new JudgementFilter(ofStation, ofSpindle, ofBolt, from, before, specificationVersion);
    }

    /**
     * The same filter, narrowed to a range of time.
     *
     * @param earliest earliest time; null where open
     * @param tooLate first time that is too late; null where open
     * @return the narrowed filter
     */
    public JudgementFilter between(@Nullable OffsetDateTime earliest, @Nullable OffsetDateTime tooLate) {
        return new JudgementFilter(station, spindle, bolt, earliest, tooLate, specificationVersion);
    }

    /**
     * The same filter, narrowed to what one version of the specification said.
     *
     * @param version the version; empty for any
     * @return the narrowed filter
     */
    public JudgementFilter judgedBy(String version) {
        return new JudgementFilter(station, spindle, bolt, from, before, version);
    }
}
