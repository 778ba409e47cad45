package org.tautlog.intake;

import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.LogLayout;

/**
 * How logs are read.
 *
 * @param layout the layout of every file; null where each file's nearest {@code layout.toml} counts
 * @param bounds how much the reading may take
 * @param root the folder up to which the {@code layout.toml} of a file below it is looked for; null where that is the
 *     folder given, and for a file given its own
 */
public record ReadOptions(
        @Nullable LogLayout layout,
        ReadBounds bounds,
        @Nullable Path root) {
    public ReadOptions {
        Objects.requireNonNull(bounds, "bounds");
    }

    /** {@return the usual bounds, and layouts from the files beside the logs} */
    public static ReadOptions withDefaults() {
        return new ReadOptions(null, ReadBounds.withDefaults(), null);
    }

    /**
     * The same options with one layout for every file.
     *
     * @param stated the layout
     * @return the changed options
     */
    public ReadOptions withLayout(LogLayout stated) {
        return new ReadOptions(stated, bounds, root);
    }

    /**
     * The same options with other bounds.
     *
     * @param others the bounds
     * @return the changed options
     */
    public ReadOptions withBounds(ReadBounds others) {
        return new ReadOptions(layout, others, root);
    }

    /**
     * The same options for single files out of a folder.
     *
     * @param folder the folder
     * @return the changed options
     */
    public ReadOptions withRoot(Path folder) {
        return new ReadOptions(layout, bounds, folder);
    }
}
