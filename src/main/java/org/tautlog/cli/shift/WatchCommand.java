package org.tautlog.cli.shift;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.logs.JudgingRequest;
import org.tautlog.cli.logs.LayoutOption;
import org.tautlog.cli.logs.LogInputs;
import org.tautlog.cli.logs.SpecificationSearch;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.ReportOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps what a line drops into a folder, while it drops it. */
@Command(
        name = "watch",
        description = {
            "Imports logs as the line drops them into a folder and writes the shift's report anew after each import.",
            "",
            "A file is read once its size and time have not changed from one look to the next. Which files were read"
                    + " is kept in watched.tsv with the report, so that a restart reads none twice. Folders below are"
                    + " looked into, links are not followed; JSON is read where a layout.toml says how it lies. Stop it"
                    + " with Ctrl-C: an import that is under way is finished, and the process ends by"
                    + " the signal (130 in a shell, 143 where it was terminated).",
            "",
            "The report is of all that the archive holds; with --calendar, of the shift that runs when it is written,"
                    + " so that a new shift begins a new report; with --shift, of that one."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog watch /exports/S40 --archive evidence/ --out live/ --no-pdf",
            "  tautlog watch drop/ --archive evidence/ --calendar shifts.toml"
        },
        mixinStandardHelpOptions = true)
final class WatchCommand implements Callable<Integer>, Help.Judging {
    private static final long LONGEST_FINISH_S = 300;

    @Parameters(paramLabel = "DIR", description = "The folder that the line drops its logs into.")
    private Path folder = Path.of("");

    @Option(
            names = "--spec",
            paramLabel = "FILE",
            description = "Joint specification; without it joint.toml in the folder.")
    private @Nullable Path specification;

    @Option(
            names = "--every",
            paramLabel = "SECONDS",
            defaultValue = "5",
            description = "Seconds from one look to the next (default: ${DEFAULT-VALUE}).")
    private double everyS;

    @Mixin
    private LayoutOption layout = new LayoutOption();

    @Mixin
    private ArchivedShiftInputs archive = new ArchivedShiftInputs();

    @Mixin
    private ReportOptions reports = new ReportOptions();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (!Files.isDirectory(folder)) {
            throw Refusal.nothingRead("there is no folder " + folder);
        }
        if (!archive.given(new LogInputs())) {
            throw Refusal.wrongUse("name the archive that keeps the logs with --archive DIR");
        }
        if (!(everyS >= 0.1 && everyS <= 3600)) {
            throw Refusal.wrongUse("--every is " + everyS + "; from 0.1 to 3600 seconds are possible");
        }
        var file = specification == null ? SpecificationSearch.beside(List.of(folder)) : specification;
        var request = new JudgingRequest(List.of(folder), file, SpecificationSearch.read(file), layout.readOptions());
        var line = spec.commandLine();
        var run = new WatchRun(folder, request, archive, reports, line.getOut(), line.getErr());
        line.getErr().println("watching " + folder + "; stop with Ctrl-C");
        return untilStopped(run).number();
    }

    private ExitCode untilStopped(WatchRun run) {
        var stop = new CountDownLatch(1);
        var finished = new CountDownLatch(1);
        var hook = new Thread(() -> {
            stop.countDown();
            await(finished, LONGEST_FINISH_S * 1000);
        });
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            return run.run(() -> !await(stop, Math.round(everyS * 1000)));
        } finally {
            finished.countDown();
        }
    }

    private static boolean await(CountDownLatch latch, long milliseconds) {
        try {
            return latch.await(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }
}
