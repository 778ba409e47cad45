package org.tautlog.report.evidence;

import java.io.IOException;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.report.judged.VerdictsCsv;
import org.tautlog.report.words.Times;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.EngineHold;

/** One row for each contained tightening, with why it is in and what was decided; cells are guarded as in {@link VerdictsCsv}. */
public final class ContainmentCsv {
    private static final int OF_A_JUDGEMENT = 9;

    private ContainmentCsv() {}

    /**
     * Writes the table.
     *
     * @param hold the engines that are held
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(EngineHold hold, Appendable out) throws IOException {
        var printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(
                "serial",
                "why",
                "place",
                "cause",
                "verdict",
                "bolt",
                "attempt",
                "time",
                "boltLot",
                "findings",
                "file",
                "line",
                "sha256",
                "decisions");
        for (var containment : hold.places()) {
            for (var one : containment.contained()) {
                row(printer, containment, one);
                printer.print(VerdictsCsv.text(ContainmentAnswers.decided(hold.decisions(one))));
                printer.println();
            }
        }
        printer.flush();
    }

    private static void row(CSVPrinter printer, Containment containment, Contained one) throws IOException {
        printer.print(VerdictsCsv.text(one.serial()));
        printer.print(one.reason().words());
        printer.print(VerdictsCsv.text(containment.place()));
        printer.print(containment.cause());
        if (one.judgement().isPresent()) {
            judgement(printer, one.judgement().get());
        } else {
            for (int i = 0; i < OF_A_JUDGEMENT; i++) {
                printer.print("");
            }
        }
    }

    private static void judgement(CSVPrinter printer, BriefJudgement judgement) throws IOException {
        var identity = judgement.identity();
        var time = identity.time();
        printer.print(judgement.verdict().word());
        printer.print(VerdictsCsv.text(identity.bolt()));
        printer.print(identity.attempt());
        printer.print(time == null ? "" : Times.iso(time));
        printer.print(VerdictsCsv.text(identity.boltLot()));
        printer.print(
                judgement.findings().stream().map(FindingCode::word).distinct().collect(Collectors.joining(" ")));
        printer.print(VerdictsCsv.text(judgement.source().file()));
        printer.print(judgement.source().line());
        printer.print(judgement.source().sha256());
    }
}
