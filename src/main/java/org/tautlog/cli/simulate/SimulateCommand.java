package org.tautlog.cli.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.line.SimulatedLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the logs of a simulated line, the truth about them and the files that reading them needs. */
@Command(
        name = "simulate",
        description = {
            "Writes the logs of a simulated engine line with faults placed on purpose.",
            "",
            "In the folder then lie: the logs of stations S40 and S50 in three shapes, joint.toml with the joint"
                    + " specification, layout.toml, and truth.csv with what really happened to each bolt.",
            "The same seed gives the same logs. With --trial the line is in a qualification trial: every bolt without a fault"
                    + " is turned 120 deg further, past its yield onset, and outcomes.csv holds the clamp load measured on it"
                    + " at 40 angles, with a noise of 0.15 kN: what tautlog tune needs."
        },
        mixinStandardHelpOptions = true)
final class SimulateCommand implements Callable<Integer> {
    @Option(
            names = "--engines",
            paramLabel = "N",
            defaultValue = "64",
            description = "How many engines the line builds (default: ${DEFAULT-VALUE}, one shift).")
    private int engines;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Whole number that all chance comes from (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(
            names = "--trial",
            description = "A qualification trial: turned past yield, with outcomes.csv beside the logs.")
    private boolean trial;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder to write to; new or empty.")
    private Path out = Path.of("");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (engines < 1) {
            throw Refusal.wrongUse("--engines is " + engines + "; a line builds at least 1");
        }
        refuseUsed(out);
        long written;
        var line = trial ? SimulatedLine.trial(engines, seed) : SimulatedLine.of(engines, seed);
        try (var logs = trial ? SimulatedLogs.ofTrialIn(out) : SimulatedLogs.in(out);
                var progress =
                        Progress.onTerminal("simulating", spec.commandLine().getErr())) {
            line.forEach(tightening -> {
                logs.accept(tightening);
                progress.step();
            });
            written = logs.finish();
        }
        spec.commandLine()
                .getOut()
                .println(String.format(
                        Locale.ROOT, "%d tightenings of %d engines written to %s", written, engines, out));
        return ExitCode.ALL_CONFORMING.number();
    }

    private static void refuseUsed(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw Refusal.wrongUse(folder + " is a file; name a folder that is new or empty");
        }
        try (var entries = Files.list(folder)) {
            if (entries.findAny().isPresent()) {
                throw Refusal.wrongUse(folder + " is not empty; name a folder that is new or empty");
            }
        }
    }
}
