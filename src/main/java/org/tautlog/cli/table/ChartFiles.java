package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.report.chart.SeriesChart;
import org.tautlog.report.study.LimitsFile;
import org.tautlog.spc.study.FrozenLimits;

/** The files beside a chart: its drawing, and limits that are kept or used again. */
record ChartFiles(
        @Nullable Path out, @Nullable Path freeze, @Nullable Path limits) {
    ChartFiles {
        if (out != null && !isPng(out) && !ending(out).endsWith(".svg")) {
            throw Refusal.wrongUse(out + " is neither .svg nor .png; name the drawing FILE.svg or FILE.png");
        }
        if (freeze != null && Files.exists(freeze)) {
            throw Refusal.wrongUse(freeze + " exists; limits in use are never overwritten: name a new file");
        }
    }

    /** The frozen limits by group; empty where none are used. */
    Map<String, FrozenLimits> frozen() throws IOException {
        return limits == null ? Map.of() : Refusal.orRefuse(LimitsFile.read(limits));
    }

    void write(Charting charting, String value, String unit, PrintWriter err) throws IOException {
        var found = charting.found();
        if (out != null && !found.isEmpty()) {
            var bytes = isPng(out)
                    ? SeriesChart.png(value, unit, found)
                    : SeriesChart.svg(value, unit, found).getBytes(StandardCharsets.UTF_8);
            var part = ReportFile.part(out);
            Files.write(part, bytes);
            Files.move(part, out, StandardCopyOption.REPLACE_EXISTING);
            err.println("drawing: " + out
                    + (found.size() > SeriesChart.MOST_GROUPS
                            ? ", the first " + SeriesChart.MOST_GROUPS + " of " + found.size() + " groups"
                            : ""));
        }
        if (freeze != null && !found.isEmpty()) {
            var kept = new LinkedHashMap<String, FrozenLimits>();
            found.forEach((group, study) -> kept.put(group, study.limits()));
            Files.writeString(freeze, LimitsFile.text(kept), StandardOpenOption.CREATE_NEW);
            err.println("limits: " + freeze);
        }
    }

    private static boolean isPng(Path file) {
        return ending(file).endsWith(".png");
    }

    private static String ending(Path file) {
        return file.toString().toLowerCase(Locale.ROOT);
    }
}
