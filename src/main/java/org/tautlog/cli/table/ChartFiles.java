package org.tautlog.cli.table;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.Archive;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.report.chart.SeriesChart;
import org.tautlog.report.study.KeptLimits;
import org.tautlog.report.study.LimitsFile;
import org.tautlog.spc.study.FrozenLimits;

/** The files beside a chart: its drawing, and limits that are kept or used again. */
record ChartFiles(
        @Nullable DrawingFile out,
        @Nullable Path freeze,
        @Nullable Path limits) {
    ChartFiles {
        if (freeze != null) {
            DrawingFile.checkFolder(freeze, "--freeze FILE");
            if (Files.exists(freeze)) {
                throw Refusal.wrongUse(freeze + " exists; limits in use are never overwritten: name a new file");
            }
            if (limits != null) {
                throw Refusal.wrongUse("--freeze keeps limits made of these values, --limits brings others; give one");
            }
        }
    }

    /** The limits to hold values against; empty where they are made of the values themselves. */
    Optional<LimitsInUse> inUse() throws IOException {
        return limits == null
                ? Optional.empty()
                : Optional.of(new LimitsInUse(limits, Refusal.orRefuse(LimitsFile.read(limits))));
    }

    void write(Charting charting, Path table, PrintWriter err) throws IOException {
        var found = charting.found();
        var columns = charting.columns();
        if (out != null && !found.isEmpty()) {
            out.write(
                    out.isPng()
                            ? SeriesChart.png(charting.value(), columns.unit(), found)
                            : SeriesChart.svg(charting.value(), columns.unit(), found)
                                    .getBytes(StandardCharsets.UTF_8),
                    found.keySet(),
                    SeriesChart.MOST_GROUPS,
                    err);
        }
        if (freeze != null && found.isEmpty()) {
            err.println("limits: none written, as there is no chart");
        } else if (freeze != null) {
            var kept = new LinkedHashMap<String, FrozenLimits>();
            found.forEach((group, study) -> kept.put(group, study.limits()));
            var name = String.valueOf(table.getFileName());
            var limits = new KeptLimits(charting.kind(), columns, name, Archive.sha256(table), kept);
            Files.writeString(freeze, LimitsFile.text(limits), StandardOpenOption.CREATE_NEW);
            err.println("limits: " + freeze);
        }
    }
}
