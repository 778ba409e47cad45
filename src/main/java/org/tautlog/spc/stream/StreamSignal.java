package org.tautlog.spc.stream;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * What a chart of streams saw at one time.
 *
 * @param kind what it is
 * @param time place in time, from 0
 * @param stream column of the stream it names, null where it speaks of the mean
 * @param value what was plotted: a level, a deviation, a difference, a run length or a sum
 * @param limit what it lies beyond
 */
public record StreamSignal(Kind kind, int time, @Nullable Integer stream, double value, double limit) {
    /** What a chart of streams can see. */
    public enum Kind {
        /** The mean of the streams breaks a rule: all moved, or one moved far. */
        MEAN_MOVED,
        /** The largest deviation lies above the group limit. */
        GROUP_HIGH,
        /** The smallest deviation lies below the group limit. */
        GROUP_LOW,
        /** One stream lies above the others by more than its own limit. */
        OWN_HIGH,
        /** One stream lies below the others by more than its own limit. */
        OWN_LOW,
        /** One stream was the largest too often running. */
        RUN_LARGEST,
        /** One stream was the smallest too often running. */
        RUN_SMALLEST,
        /** One stream's differences sum upwards: a small lasting rise of its own. */
        OWN_RISE,
        /** One stream's differences sum downwards: a small lasting fall of its own. */
        OWN_FALL;

        /** {@return whether it speaks of one stream apart from the others} */
        public boolean ofOneStream() {
            return switch (this) {
                case MEAN_MOVED, GROUP_HIGH, GROUP_LOW -> false;
                case OWN_HIGH, OWN_LOW, RUN_LARGEST, RUN_SMALLEST, OWN_RISE, OWN_FALL -> true;
            };
        }
    }

    /** {@return the column of the stream it names, empty where it speaks of the mean} */
    public OptionalInt named() {
        return stream == null ? OptionalInt.empty() : OptionalInt.of(stream);
    }
}
