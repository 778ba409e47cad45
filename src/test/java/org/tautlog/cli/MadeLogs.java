package org.tautlog.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tautlog.intake.LogWriter;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.review.MadeShift;
import org.tautlog.review.MadeShift.Made;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

/** Small logs made by hand, with the joint specification beside them. */
public final class MadeLogs {
    private MadeLogs() {}

    public static Path good(Path folder) throws IOException {
        return write(folder, List.of(MadeShift.named("FW-000001", 360), MadeShift.named("FW-000002", 361)));
    }

    public static Path mixed(Path folder) throws IOException {
        return write(
                folder,
                List.of(
                        MadeShift.named("FW-000001", 360),
                        MadeShift.named("FW-000002", 300),
                        MadeShift.named("=FW<b>\"3", 320)));
    }

    public static Path write(Path folder, List<Made> made) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("joint.toml"), SpecificationFile.write(MadeShift.specification()));
        var log = folder.resolve("S40.csv");
        try (var writer = LogWriter.open(log, LogShape.LONG_TABLE, Packing.PLAIN)) {
            for (var one : made) {
                writer.write(new Trace(one.judgement().identity(), new Source("made", 1, ""), one.curve()));
            }
        }
        return log;
    }
}
