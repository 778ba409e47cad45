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
 * @param threads how many files are read at once, at least 1; what is read is the same
 * @param leftOut a file among the logs that is none, as another option names it; null for none
 */
public record ReadOptions(
        @Nullable LogLayout layout,
        ReadBounds bounds,
        @Nullable Path root,
        int threads,
        @Nullable Path leftOut) {
    public ReadOptions {
        Objects.requireNonNull(bounds, "bounds");
        if (threads < 1) {
            throw new IllegalArgumentException("threads is " + threads + "; it must be at least 1");
        }
    }

    /** {@return the usual bounds, layouts from the files beside the logs, one thread} */
    public static ReadOptions withDefaults() {
        return new ReadOptions(null, ReadBounds.withDefaults(), null, 1, null);
    }

    /**
     * The same options with one layout for every file.
     *
     * @param stated the layout
     * @return the changed options
     */
    public ReadOptions withLayout(LogLayout stated) {
        return new ReadOptions(stated, bounds, root, threads, leftOut);
    }

    /**
     * The same options with other bounds.
     *
     * @param others the bounds
     * @return the changed options
     */
    public ReadOptions withBounds(ReadBounds others) {
        return new ReadOptions(layout, others, root, threads, leftOut);
    }

    /**
     * The same options for single files out of a folder.
     *
     * @param folder the folder
     * @return the changed options
     */
    public ReadOptions withRoot(Path folder) {
        return new ReadOptions(layout, bounds, folder, threads, leftOut);
    }

    /**
     * The same options on some threads.
     *
     * @param count how many files are read at once
     * @return the changed options
     */
    public ReadOptions withThreads(int count) {
        return new ReadOptions(layout, bounds, root, count, leftOut);
    }

    /**
     * The same options for logs with another file among them.
     *
     * @param file the file, not read as a log
     * @return the changed options
     */
    public ReadOptions without(Path file) {
        return new ReadOptions(layout, bounds, root, threads, file);
    }

    boolean leavesOut(Path file) {
        return leftOut != null
                && leftOut.toAbsolutePath()
                        .normalize()
                        .equals(file.toAbsolutePath().normalize());
    }
}
