package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.tautlog.archive.Archive;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.evidence.DossierAnswers;
import org.tautlog.review.evidence.DossierReader;
import org.tautlog.review.evidence.EngineDossier;

/** Gathers an engine's dossier from an archive, and tells it in a few lines. */
final class DossierRun {
    private static final int MOST_GUESSES = 5;

    private DossierRun() {}

    static EngineDossier of(Archive archive, String serial) throws IOException {
        try (var query = archive.query()) {
            query.startMeanwhile();
            var specifications = ArchivedSpecifications.in(query);
            var dossier = DossierReader.read(
                    query, specifications.used(), specifications.readable(), specifications.problems(), serial);
            if (dossier.isEmpty()) {
                throw Refusal.nothingRead(absent(query, serial));
            }
            return dossier.get();
        }
    }

    static String absent(ArchiveQuery query, String serial) throws IOException {
        var near = query.nearestSerials(serial, MOST_GUESSES).value().orElse(List.of());
        return "the archive knows no engine " + Terminal.harmless(serial)
                + (near.isEmpty() ? "" : "; nearest: " + Terminal.harmless(String.join(", ", near)));
    }

    static void print(EngineDossier dossier, PrintWriter out) {
        out.println(Terminal.harmless(dossier.serial()) + ": "
                + dossier.tightenings().size() + " tightenings on "
                + dossier.positions().size() + " bolt positions");
        print("Is this engine sound?", DossierAnswers.sound(dossier), out);
        print("What is not known?", DossierAnswers.unknown(dossier), out);
        print("Who else?", DossierAnswers.others(dossier), out);
    }

    private static void print(String question, Iterable<String> answer, PrintWriter out) {
        out.println(question);
        answer.forEach(sentence -> out.println("  " + Terminal.harmless(sentence)));
    }
}
