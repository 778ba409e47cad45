package org.tautlog.cli.shift;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.tautlog.archive.Archive;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.cli.terminal.WrittenReport;
import org.tautlog.judge.Judgement;
import org.tautlog.report.judged.VerdictsCsv;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.shift.ShiftJson;
import org.tautlog.report.shift.ShiftPage;
import org.tautlog.review.ShiftReview;

/** The files of a shift's report. Each is written beside its place and moved there whole, so that none is ever half. */
final class ShiftReports implements Closeable {
    private final ReportOptions options;
    private final Path page;
    private final Path print;
    private final Path table;
    private final Path figures;
    private final List<Judgement> judgements = new ArrayList<>();

    private ShiftReports(ReportOptions options) {
        this.options = options;
        var folder = options.folder();
        page = folder.resolve("shift.html");
        print = folder.resolve("shift.pdf");
        table = folder.resolve("verdicts.csv");
        figures = folder.resolve("shift.json");
    }

    static ShiftReports in(ReportOptions options) throws IOException {
        ReportFile.makeFolder(options.folder());
        return new ShiftReports(options);
    }

    /** Keeps it for the table, whose last columns wait for the whole shift; the review holds it too. */
    void add(Judgement judgement) {
        judgements.add(judgement);
    }

    void finish(ShiftReview review, Provenance provenance) throws IOException {
        try (var verdicts = new VerdictsCsv(Files.newBufferedWriter(ReportFile.part(table)), review.shapes())) {
            for (var judgement : judgements) {
                verdicts.add(judgement);
            }
        }
        var evidence = new Evidence(table.getFileName().toString(), Archive.sha256(ReportFile.part(table)));
        try (var out = Files.newBufferedWriter(ReportFile.part(page))) {
            ShiftPage.write(review, provenance, evidence, out);
        }
        if (options.printed()) {
            try (var out = new BufferedOutputStream(Files.newOutputStream(ReportFile.part(print)))) {
                ShiftPage.print(review, provenance, evidence, out);
            }
        } else {
            Files.deleteIfExists(print);
        }
        try (var out = Files.newBufferedWriter(ReportFile.part(figures))) {
            ShiftJson.write(review, out);
        }
        for (var file : files()) {
            Files.move(ReportFile.part(file), file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    WrittenReport written() {
        return new WrittenReport(page, options.printed() ? print : null, table, figures);
    }

    /** Leaves no half file behind where the run failed. */
    @Override
    public void close() throws IOException {
        for (var file : files()) {
            Files.deleteIfExists(ReportFile.part(file));
        }
    }

    /** The page last: who waits for it finds the others there. */
    private List<Path> files() {
        return options.printed() ? List.of(table, figures, print, page) : List.of(table, figures, page);
    }
}
