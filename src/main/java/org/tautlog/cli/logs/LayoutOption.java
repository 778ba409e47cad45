package org.tautlog.cli.logs;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.ReadOptions;
import org.tautlog.intake.layout.LayoutFile;
import picocli.CommandLine.Option;

/** How every command that reads logs is told their layout. */
public final class LayoutOption {
    @Option(
            names = "--layout",
            paramLabel = "FILE",
            description =
                    "Log layout for every file; without it the nearest layout.toml, else the file's own headings.")
    private @Nullable Path layout;

    /** For the command line, which fills it. */
    public LayoutOption() {}

    /**
     * How to read; a {@link Refusal} where the layout file cannot be used.
     *
     * @return the options
     */
    public ReadOptions readOptions() {
        var options = ReadOptions.withDefaults();
        return layout == null ? options : options.withLayout(Refusal.orRefuse(LayoutFile.read(layout)));
    }

    /**
     * Whether a layout is named.
     *
     * @return true where it is
     */
    public boolean given() {
        return layout != null;
    }
}
