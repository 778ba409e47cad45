package org.tautlog.cli.logs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.window.TuningJson;
import org.tautlog.report.window.TuningText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tunes the onset thresholds of a specification on qualification bolts. */
@Command(
        name = "tune",
        description = {
            "Tunes the thresholds by which a yield onset is read, on qualification bolts whose clamp load or elongation was measured beside"
                    + " the torque, and says how uncertain that is.",
            "",
            "FILE.csv has the headings serial, bolt, attempt (may be left out: then 1), angle-deg, and clamp-load-kN or"
                    + " elongation-um; a row an angle, some 20 to 40 a bolt, from past the snug point to past yield. The angle must be the recording's"
                    + " own, drive and all: the angle of the bolt's head differs from it by the drive's twist.",
            "The true onset is where the load first falls behind its own straight line by the offset, in analogy to the proof"
                    + " stress of the tensile test (ISO 6892-1, Rp0.2); that a turn stands for a strain is common practice."
                    + " Elongation, measured from end to end, gives clamp load by the stated bolt's resilience and, past yield,"
                    + " by what the turn gives neither to the bolt nor to the drive.",
            "Traces whose recording is unusable are left out, and FILE.csv itself where it lies among LOGS; both are said.",
            "The specification is never written: a qualified person judges what is proposed, and releases it or does not."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog tune trial/ --outcomes trial/outcomes.csv",
            "  tautlog tune trial/ --outcomes loads.csv --spec joint.toml --offset 8",
            "  tautlog simulate --trial --engines 16 --out trial/     makes such a trial"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:every trace and row was read, and thresholds were held against at least one trace",
            "1:the same, but traces or rows were rejected",
            "2:the command line, the joint specification or FILE.csv cannot be used",
            "3:no trace could be used",
            "4:the program itself failed"
        },
        mixinStandardHelpOptions = true)
final class TuneCommand implements Callable<Integer>, Help.Judging {
    @Mixin
    private LogInputs inputs = new LogInputs();

    @Option(
            names = "--outcomes",
            paramLabel = "FILE.csv",
            required = true,
            description = "The clamp loads or elongations measured.")
    private Path outcomes = Path.of("");

    @Option(
            names = "--offset",
            paramLabel = "DEG",
            description =
                    "How far behind its line the load of a true onset falls, as turn (default: the turn of 0.0048 of the"
                            + " stated bolt's diameter as plastic stretch, after ISO 898-1, Rpf; without a stated bolt the"
                            + " specification's onset-offset).")
    private @Nullable Double offsetDeg;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Whole number that the bootstrap draws from (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--json", description = "One JSON object in place of the text.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var tuned = new TuningRequest(inputs, outcomes, offsetDeg, seed).run(line.getErr());
        if (json) {
            line.getOut().println(TuningJson.of(tuned.review()));
        } else {
            TuningText.lines(tuned.review()).forEach(text -> line.getOut().println(Terminal.harmless(text)));
        }
        return tuned.exitCode().number();
    }
}
