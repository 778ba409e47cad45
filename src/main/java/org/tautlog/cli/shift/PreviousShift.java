package org.tautlog.cli.shift;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.tautlog.cli.logs.Judging;
import org.tautlog.cli.logs.JudgingRequest;
import org.tautlog.cli.logs.ReadingAccount;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.ReadOptions;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.report.judged.VerdictsReader;
import org.tautlog.review.ShiftReviewer;
import org.tautlog.review.stream.PastShift;

/** The earlier shift that a shift is compared with: a table of verdicts, or logs that are judged again by today's specification. */
final class PreviousShift {
    private PreviousShift() {}

    static PastShift read(Path previous, JointSpecification specification, ReadOptions options, PrintWriter err) {
        if (!Files.exists(previous)) {
            throw Refusal.nothingRead("there is no earlier shift " + previous);
        }
        var name = String.valueOf(previous.getFileName()).toLowerCase(Locale.ROOT);
        if (!Files.isDirectory(previous) && name.startsWith("verdicts") && name.endsWith(".csv")) {
            try (var in = Files.newBufferedReader(previous)) {
                return VerdictsReader.read(in);
            } catch (IOException e) {
                throw Refusal.nothingRead(previous + ": " + e.getMessage());
            }
        }
        var reviewer = new ShiftReviewer(specification, 1);
        var read = Judging.run(
                new JudgingRequest(List.of(previous), Path.of(""), specification, options), err, reviewer::accept);
        return reviewer.review(ReadingAccount.imported(read)).asPast();
    }
}
