package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.cli.terminal.Terminal;

/** Where a study is drawn to: an SVG or a PNG file in a folder that is there. */
record DrawingFile(Path file) {
    private static final int MOST_NAMES = 10;

    DrawingFile {
        if (!file.toString().toLowerCase(Locale.ROOT).matches("(?s).*\\.(svg|png)")) {
            throw Refusal.wrongUse(file + " is neither .svg nor .png; name the drawing FILE.svg or FILE.png");
        }
        checkFolder(file, "--out FILE");
        if (Files.isDirectory(file)) {
            throw Refusal.wrongUse(file + " is a folder; name a file in it with --out FILE");
        }
    }

    static @Nullable DrawingFile of(@Nullable Path file) {
        return file == null ? null : new DrawingFile(file);
    }

    /** Before any work: a file cannot be written where there is no folder for it. */
    static void checkFolder(Path file, String option) {
        var folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw Refusal.wrongUse("the folder of " + file + " is not there; make " + folder
                    + " first, or name a file in another folder with " + option);
        }
    }

    boolean isPng() {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".png");
    }

    /** Writes the drawing and names the groups that found no room in it. */
    void write(byte[] drawing, Collection<String> groups, int most, PrintWriter err) throws IOException {
        var part = ReportFile.part(file);
        Files.write(part, drawing);
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        err.println("drawing: " + file
                + (groups.size() > most
                        ? ", the first " + most + " of " + groups.size() + " groups; not drawn: "
                                + named(groups.stream().skip(most).toList())
                        : ""));
    }

    private static String named(Collection<String> groups) {
        return groups.stream().limit(MOST_NAMES).map(Terminal::harmless).collect(Collectors.joining("; "))
                + (groups.size() > MOST_NAMES ? " and " + (groups.size() - MOST_NAMES) + " more" : "");
    }
}
