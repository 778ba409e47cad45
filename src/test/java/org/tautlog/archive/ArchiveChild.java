package org.tautlog.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;

/** A process of its own that works on an archive, and says each thing that it was told is done; made to be killed. */
final class ArchiveChild {
    static final int ENGINES_A_FILE = 2;

    private ArchiveChild() {}

    public static void main(String[] words) throws IOException {
        var folder = Path.of(words[1]);
        switch (words[0]) {
            case "import" -> imports(folder, Integer.parseInt(words[2]), Integer.parseInt(words[3]));
            case "fill" -> fill(folder);
            case "read" -> read(folder);
            default -> throw new IllegalArgumentException(words[0]);
        }
    }

    /** A child for a test: this very Java, this very class path. */
    static List<String> command(String... words) {
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx400m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                ArchiveChild.class.getName()));
        command.addAll(List.of(words));
        return command;
    }

    static String fileName(int number) {
        return "file-" + number + ".csv";
    }

    private static void imports(Path folder, int first, int last) throws IOException {
        var archive = Archive.create(folder);
        try (var query = archive.query()) {
            query.serials();
        }
        System.out.println("ready");
        for (int number = first; number < last; number++) {
            Tightenings.take(archive, fileName(number), number * ENGINES_A_FILE, ENGINES_A_FILE);
            System.out.println("imported " + number);
            var decision = new Decision(
                    Tightenings.serial(number), "", DecisionAction.ACCEPT, "A. Reviewer", "decision " + number);
            archive.decide(decision, Tightenings.STAMP);
            System.out.println("decided " + number);
            if (number % 3 == 2) {
                archive.tidy(Tightenings.STAMP);
            }
        }
    }

    /** Imports until the disk is full, then looks what is there. */
    private static void fill(Path folder) throws IOException {
        var archive = Archive.create(folder);
        int number = 0;
        try {
            while (number < 2_000) {
                Tightenings.take(archive, fileName(number), number * 40, 40);
                number++;
            }
            System.out.println("never full");
        } catch (IOException full) {
            System.out.println("refused " + full.getMessage());
        }
        var verification = archive.verify();
        System.out.println("problems " + verification.problems());
        try (var query = archive.query()) {
            System.out.println("imported " + number + " there "
                    + query.sources().value().orElseThrow().size());
        }
    }

    private static void read(Path folder) throws IOException {
        var archive = Archive.open(folder);
        try (var query = archive.query()) {
            System.out.println(
                    "traces " + query.traces("FW-000001").value().orElseThrow().size());
        }
        System.out.println("problems " + archive.verify().problems());
        System.out.println(
                "same " + Tightenings.take(archive, "monday.csv", 1, 1).changedNothing());
        try {
            Tightenings.take(archive, "tuesday.csv", 2, 1);
            System.out.println("written");
        } catch (IOException refused) {
            System.out.println("refused " + refused.getMessage());
        }
    }
}
