package org.tautlog.cli.logs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.intake.LogReader;
import org.tautlog.judge.Judgement;

/** Shows beside a bar which of the logs is read; they come in their order, one after the other. */
final class FilesAtHand {
    private final Progress progress;
    private final long all;
    private String file = "";
    private int n;

    private FilesAtHand(Progress progress, long all) {
        this.progress = progress;
        this.all = all;
    }

    static FilesAtHand of(JudgingRequest request, Progress progress) {
        long all = 0;
        if (progress.isShown()) {
            for (var input : request.logs()) {
                all += files(input, request);
            }
        }
        return new FilesAtHand(progress, all);
    }

    private static long files(Path input, JudgingRequest request) {
        if (!Files.isDirectory(input)) {
            return 1;
        }
        try (var files = Files.walk(input)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> LogReader.isLog(file, input, request.options()))
                    .count();
        } catch (IOException | UncheckedIOException unreadable) {
            // The reading itself tells it; a bar without its end is the least of it.
            return 0;
        }
    }

    void next(Judgement judgement) {
        var name = judgement.source().file();
        int packed = name.indexOf('!');
        var container = packed < 0 ? name : name.substring(0, packed);
        if (!container.equals(file)) {
            file = container;
            n++;
            progress.at("file " + n + (all < n ? "" : " of " + all));
        }
        progress.step();
    }
}
