package org.tautlog.intake;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.LogLayout;

/**
 * How logs are read.
 *
 * @param layout the layout of every file; null where each file's nearest {@code layout.toml} counts
 * @param bounds how much the reading may take
 */
public record ReadOptions(@Nullable LogLayout layout, ReadBounds bounds) {
    public ReadOptions {
        Objects.requireNonNull(bounds, "bounds");
    }

    /** {@return the usual bounds, and layouts from the files beside the logs} */
    public static ReadOptions withDefaults() {
        return new ReadOptions(null, ReadBounds.withDefaults());
    }

    /**
     * The same options with one layout for every file.
     *
     * @param stated the layout
     * @return the changed options
     */
    public ReadOptions withLayout(LogLayout stated) {
        return new ReadOptions(stated, bounds);
    }

    /**
     * The same options with other bounds.
     *
     * @param others the bounds
     * @return the changed options
     */
    public ReadOptions withBounds(ReadBounds others) {
        return new ReadOptions(layout, others);
    }
}
