package org.tautlog.cli;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.tautlog.judge.Judgement;
import org.tautlog.report.Provenance;
import org.tautlog.report.ShiftJson;
import org.tautlog.report.ShiftPage;
import org.tautlog.report.VerdictsCsv;
import org.tautlog.review.ShiftReview;

/** The files of a shift's report. Each is written beside its place and moved there whole, so that none is ever half. */
final class ShiftReports implements Closeable {
    private final Path page;
    private final Path table;
    private final Path figures;
    private final VerdictsCsv verdicts;

    private ShiftReports(Path page, Path table, Path figures, VerdictsCsv verdicts) {
        this.page = page;
        this.table = table;
        this.figures = figures;
        this.verdicts = verdicts;
    }

    static ShiftReports in(Path folder) throws IOException {
        ReportFile.makeFolder(folder);
        var table = folder.resolve("verdicts.csv");
        return new ShiftReports(
                folder.resolve("shift.html"),
                table,
                folder.resolve("shift.json"),
                new VerdictsCsv(Files.newBufferedWriter(ReportFile.part(table))));
    }

    void add(Judgement judgement) {
        try {
            verdicts.add(judgement);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void finish(ShiftReview review, Provenance provenance) throws IOException {
        verdicts.close();
        try (var out = Files.newBufferedWriter(ReportFile.part(page))) {
            ShiftPage.write(review, provenance, out);
        }
        try (var out = Files.newBufferedWriter(ReportFile.part(figures))) {
            ShiftJson.write(review, out);
        }
        Files.move(ReportFile.part(table), table, StandardCopyOption.REPLACE_EXISTING);
        Files.move(ReportFile.part(figures), figures, StandardCopyOption.REPLACE_EXISTING);
        Files.move(ReportFile.part(page), page, StandardCopyOption.REPLACE_EXISTING);
    }

    Path page() {
        return page;
    }

    Path table() {
        return table;
    }

    /** Leaves no half file behind where the run failed. */
    @Override
    public void close() throws IOException {
        verdicts.close();
        Files.deleteIfExists(ReportFile.part(table));
        Files.deleteIfExists(ReportFile.part(figures));
        Files.deleteIfExists(ReportFile.part(page));
    }
}
