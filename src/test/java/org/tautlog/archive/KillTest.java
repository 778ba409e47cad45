package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.ArchiveChild.ENGINES_A_FILE;
import static org.tautlog.archive.ArchiveChild.fileName;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Writers are killed, without a word, at moments that nobody chose: what they said was done is done, nothing is there
 * twice, and whoever comes next just works. {@code -Dtautlog.kills=200} kills more than the few of every build.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("tautlog.kills", 4);
    private static final int MOST_PROMISES = 8;
    private static final int LONGEST_STEP_MS = 120;

    @TempDir
    Path folder;

    @Test
    void a_killed_writer_loses_nothing_it_promised_and_leaves_nothing_twice() throws Exception {
        var random = new Random(20260302);
        var promised = new HashSet<String>();
        int next = 0;
        int leftovers = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            promised.addAll(kill(next, random.nextInt(MOST_PROMISES), random.nextInt(LONGEST_STEP_MS)));
            leftovers = check(promised);
            while (promised.contains("imported " + next)) {
                next++;
            }
        }
        var archive = Archive.open(folder);
        archive.tidy(Tightenings.STAMP);
        assertEquals(List.of(), archive.verify().problems());
        check(promised);
        assertTrue(promised.size() > KILLS / 2, "the writers promised too little to be caught at it: " + promised);
        System.out.println(
                "kills " + KILLS + ", promises kept " + promised.size() + ", leftovers cleared " + leftovers);
    }

    /** Kills a writer some while after it made so many promises, in whatever comes next. */
    private Set<String> kill(int first, int promises, int delayMs) throws IOException, InterruptedException {
        var child = new ProcessBuilder(
                        ArchiveChild.command("import", folder.toString(), String.valueOf(first), "100000"))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var said = new BufferedReader(child.inputReader(StandardCharsets.UTF_8))) {
            assertEquals("ready", said.readLine());
            var heard = new HashSet<String>();
            while (heard.size() < promises) {
                heard.add(said.readLine());
            }
            Thread.sleep(delayMs);
            child.toHandle().destroyForcibly();
            child.waitFor();
            said.lines().forEach(heard::add);
            return heard;
        }
    }

    private int check(Set<String> promised) throws IOException {
        var archive = Archive.open(folder);
        var verification = archive.verify();
        assertTrue(verification.isWhole(), () -> verification.problems().toString());
        try (var query = archive.query()) {
            var sources = query.sources().value().orElseThrow().stream()
                    .map(SourceFile::file)
                    .toList();
            assertEquals(new HashSet<>(sources).size(), sources.size(), "a source is there twice");
            var counts = query.counts().value().orElseThrow();
            assertEquals(sources.size() * ENGINES_A_FILE * 8, counts.traces());
            assertEquals(sources.size() * ENGINES_A_FILE * 8, counts.judgements());
            assertEquals(sources.size() * ENGINES_A_FILE, counts.serials());
            var decisions = query.decisions("").value().orElseThrow().stream()
                    .map(kept -> kept.decision().reason())
                    .collect(Collectors.toSet());
            for (var promise : promised) {
                int number = Integer.parseInt(promise.substring(promise.indexOf(' ') + 1));
                assertTrue(
                        promise.startsWith("imported")
                                ? sources.contains(fileName(number))
                                : decisions.contains("decision " + number),
                        () -> promise + " was promised and is not there");
            }
        }
        return verification.problems().size();
    }
}
