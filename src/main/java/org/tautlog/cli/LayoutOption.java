package org.tautlog.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.ReadOptions;
import org.tautlog.intake.layout.LayoutFile;
import picocli.CommandLine.Option;

/** How every command that reads logs is told their layout. */
final class LayoutOption {
    @Option(
            names = "--layout",
            paramLabel = "FILE",
            description =
                    "Log layout for every file; without it the nearest layout.toml, else the file's own headings.")
    private @Nullable Path layout;

    ReadOptions readOptions() {
        var options = ReadOptions.withDefaults();
        return layout == null ? options : options.withLayout(Refusal.orRefuse(LayoutFile.read(layout)));
    }

    boolean given() {
        return layout != null;
    }
}
