package org.tautlog.cli.shift;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.archive.Imported;
import org.tautlog.cli.evidence.ArchiveOption;
import org.tautlog.cli.evidence.ImportRun;
import org.tautlog.cli.logs.JudgingRequest;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.cli.terminal.ReportOptions;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.file.FilesRead;
import org.tautlog.intake.file.FilesRead.News;
import org.tautlog.intake.file.SettledFiles;
import org.tautlog.intake.file.SettledFiles.Shape;
import org.tautlog.review.ShiftReviewer;

/** Imports what settles in a folder, look by look, and writes the report anew after each import. */
final class WatchRun {
    /** Waits for the next look. */
    interface Pause {
        /** Returns after a while, or at once where there shall be no further look; says whether there shall. */
        boolean untilNextLook();
    }

    private static final String LIST = "watched.tsv";
    private static final String FOLDER_GONE = "the folder cannot be looked into now: ";

    private final Path folder;
    private final JudgingRequest request;
    private final ArchivedShiftInputs archive;
    private final ReportOptions reports;
    private final PrintWriter out;
    private final PrintWriter err;
    private final SettledFiles settled;
    private final FilesRead read;
    private final Map<Path, Shape> passedOver = new HashMap<>();
    private int kept;
    private boolean allKept = true;
    private String trouble = "";

    WatchRun(
            Path folder,
            JudgingRequest request,
            ArchivedShiftInputs archive,
            ReportOptions reports,
            PrintWriter out,
            PrintWriter err)
            throws IOException {
        this.folder = folder;
        this.request = request;
        this.archive = archive;
        this.reports = reports;
        this.out = out;
        this.err = err;
        this.settled = new SettledFiles(folder, List.of(archive.folder(), reports.folder()));
        ReportFile.makeFolder(reports.folder());
        this.read = FilesRead.in(reports.folder().resolve(LIST), folder);
    }

    ExitCode run(Pause pause) {
        do {
            var news = unread(look());
            if (!news.isEmpty() && imported(news)) {
                report();
            }
        } while (pause.untilNextLook());
        out.println("stopped; " + Counted.of(kept, "file") + " kept since the start");
        out.flush();
        return allKept ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING;
    }

    /** A drive of the network may be gone for a while. */
    private Map<Path, Shape> look() {
        try {
            var seen = settled.look();
            if (trouble.startsWith(FOLDER_GONE)) {
                tellItIsOver();
            }
            return seen;
        } catch (IOException e) {
            tellOnce(FOLDER_GONE + e.getMessage());
            return Map.of();
        }
    }

    /** A drive that is gone is said to be once, not at every look. */
    private void tellOnce(String now) {
        if (!now.equals(trouble)) {
            tell(now);
        }
        trouble = now;
    }

    private void tellItIsOver() {
        if (!trouble.isEmpty()) {
            err.println("tautlog: that is over; going on");
            err.flush();
        }
        trouble = "";
    }

    private Map<Path, Shape> unread(Map<Path, Shape> files) {
        var unread = new LinkedHashMap<Path, Shape>();
        files.forEach((file, shape) -> {
            if (shape.equals(passedOver.get(file))) {
                return;
            }
            try {
                var news = read.news(file, shape);
                if (news == News.UNREAD && !LogReader.isLog(file, folder, request.options())) {
                    passedOver.put(file, shape);
                } else if (news == News.UNREAD) {
                    unread.put(file, shape);
                } else if (news == News.GROWN) {
                    read.note(file, shape, true);
                    tell(file + " grew after it was read; what came later is not kept: watch with a longer --every, and"
                            + " import the whole file into another archive");
                }
            } catch (IOException e) {
                tell(file + " cannot be read now (" + e.getMessage() + "); tried again at the next look");
            }
        });
        return unread;
    }

    /** Whether the archive has more than before. What cannot be kept now is tried again; what holds no trace is not. */
    private boolean imported(Map<Path, Shape> files) {
        try {
            var result = imported(List.copyOf(files.keySet()));
            files.forEach((file, shape) -> note(file, shape, result.holds(file.toString())));
            tellItIsOver();
            out.flush();
            return !result.changedNothing();
        } catch (IOException | UncheckedIOException e) {
            tellOnce(e.getMessage() + "; tried again at each look");
            return false;
        } catch (RuntimeException failed) {
            return files.size() == 1 ? passedOver(files, failed) : oneByOne(files);
        }
    }

    private Imported imported(List<Path> files) throws IOException {
        var asked = new JudgingRequest(
                files,
                request.specificationFile(),
                request.specification(),
                request.options().withRoot(folder));
        var result = ImportRun.run(asked, archive.create(), ArchiveOption.stamp(), err);
        allKept &= ExitCode.ofReading(result.read()) == ExitCode.ALL_CONFORMING;
        kept += result.imported().newSources().size();
        if (result.read().traces().kept() == 0) {
            tell("no trace could be read from "
                    + files.stream().map(Path::toString).collect(Collectors.joining(", ")) + "; the archive keeps why");
        } else {
            out.println("kept " + Counted.of(result.imported().traces(), "trace") + " of "
                    + Counted.of(result.imported().newSources().size(), "new file"));
        }
        return result.imported();
    }

    /** One file on which the program fails must not keep the others out. */
    private boolean oneByOne(Map<Path, Shape> files) {
        boolean more = false;
        for (var file : files.entrySet()) {
            more |= imported(Map.of(file.getKey(), file.getValue()));
        }
        return more;
    }

    private boolean passedOver(Map<Path, Shape> files, RuntimeException failed) {
        files.forEach((file, shape) -> {
            tell("the program failed on " + file + " (" + failed + "); the file is passed over");
            note(file, shape, false);
        });
        return false;
    }

    private void note(Path file, Shape shape, boolean anyKept) {
        try {
            read.note(file, shape, anyKept);
        } catch (IOException e) {
            tell("that " + file + " was read cannot be noted (" + e.getMessage() + "); the archive will know it");
        }
    }

    private void report() {
        try {
            ShiftSummary.print(ShiftRun.run(archive, ShiftReviewer.USUALLY_LISTED, null, reports, err), out);
        } catch (Refusal nothing) {
            err.println(nothing.getMessage());
        } catch (IOException e) {
            tell("the report cannot be written now: " + e.getMessage());
        }
        out.flush();
    }

    private void tell(String trouble) {
        allKept = false;
        err.println("tautlog: " + Terminal.harmless(trouble));
        err.flush();
    }
}
