package org.tautlog.cli.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPairGenerator;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.Archive;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.Stamp;
import org.tautlog.cli.ArchivedShift;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.cli.MadeLogs;
import org.tautlog.judge.Judge;
import org.tautlog.review.MadeShift;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

/** From logs to kept evidence: import, decide, verify, seal and tidy as their users meet them. */
class ArchiveCommandsTest {
    @TempDir
    Path folder;

    @Test
    void logs_are_kept_once_however_often_they_are_imported() throws IOException {
        var log = MadeLogs.mixed(folder.resolve("logs"));
        var archive = folder.resolve("evidence").toString();
        var first = CommandLineRun.of("import", log.toString(), "--archive", archive);
        assertEquals(0, first.exitCode(), first.err());
        assertTrue(
                first.out()
                        .matches(
                                "kept in .* as batch \\S+: 3 traces of 1 new file \\(0 already there\\), 3 verdicts; 0 traces and 0 files rejected;"
                                        + " in \\d+\\.\\d s, \\d+ traces a second\\R"),
                first.out());
        var second = CommandLineRun.of("import", log.toString(), "--archive", archive);
        assertEquals(0, second.exitCode(), second.err());
        assertEquals(
                "nothing new: all of it is in " + archive + " already",
                second.out().strip());
        try (var query = Archive.open(Path.of(archive)).query()) {
            assertEquals(3, query.counts().value().orElseThrow().traces());
            assertEquals(1, query.judgements("=FW<b>\"3").value().orElseThrow().size());
        }
    }

    @Test
    void a_decision_is_recorded_and_a_mistyped_serial_refused_with_the_nearest() throws IOException {
        var archive = imported();
        var decided = CommandLineRun.of(
                "decide", "FW-000002", "quarantine", "--archive", archive, "--by", "A. Reviewer", "--reason", "short");
        assertEquals(0, decided.exitCode(), decided.err());
        assertEquals(
                "entry 2: FW-000002 quarantine, by A. Reviewer", decided.out().strip());
        var mistyped = CommandLineRun.of(
                "decide", "FW-00002", "accept", "--archive", archive, "--by", "A. Reviewer", "--reason", "fine");
        assertEquals(2, mistyped.exitCode());
        assertTrue(mistyped.err().contains("the archive knows no engine FW-00002; nearest: FW-000002"), mistyped.err());
        var unknown = CommandLineRun.of(
                "decide", "FW-000002", "scrap", "--archive", archive, "--by", "A. Reviewer", "--reason", "fine");
        assertEquals(2, unknown.exitCode());
        assertTrue(unknown.err().contains("accept, re-tighten, replace, quarantine, release"), unknown.err());
    }

    @Test
    void verify_tells_a_whole_archive_from_one_that_was_altered() throws IOException {
        var archive = imported();
        var whole = CommandLineRun.of("verify", "--archive", archive);
        assertEquals(0, whole.exitCode(), whole.out());
        assertTrue(whole.out().startsWith("whole and unaltered: 1 batch, "), whole.out());
        assertTrue(
                whole.out()
                        .contains("not shown: that nothing was taken off the end of the chain;"
                                + " that needs --key and a --seal kept elsewhere"),
                whole.out());
        try (var paths = Files.walk(Path.of(archive))) {
            var traces = paths.filter(path -> path.endsWith("traces-1.parquet"))
                    .findFirst()
                    .orElseThrow();
            var bytes = Files.readAllBytes(traces);
            bytes[bytes.length / 2] ^= 1;
            Files.write(traces, bytes);
        }
        var altered = CommandLineRun.of("verify", "--archive", archive);
        assertEquals(1, altered.exitCode());
        assertTrue(altered.out().contains("traces-1.parquet: the file's bytes were altered"), altered.out());
        assertTrue(altered.out().contains("NOT as it was kept"), altered.out());
    }

    @Test
    void a_key_or_a_name_that_cannot_be_used_is_wrong_use() throws Exception {
        var archive = imported();
        var pair = KeyPairGenerator.getInstance("RSA").generateKeyPair();
        var rsa = pem("PRIVATE KEY", pair.getPrivate().getEncoded());
        var none = folder.resolve("none.key").toString();
        var foreign = CommandLineRun.of("seal", "--archive", archive, "--key", rsa, "--by", "A");
        assertEquals(2, foreign.exitCode());
        assertTrue(
                foreign.err().contains("PRIVATE-KEY.pem cannot be used as a key: the text holds no Ed25519"),
                foreign.err());
        assertEquals(
                2,
                CommandLineRun.of("seal", "--archive", archive, "--key", none, "--by", "A")
                        .exitCode());
        assertEquals(
                2,
                CommandLineRun.of("verify", "--archive", archive, "--key", rsa).exitCode());
        var blank = CommandLineRun.of("seal", "--archive", archive, "--key", rsa, "--by", " ");
        assertEquals(2, blank.exitCode());
        assertTrue(blank.err().contains("--by is ' '; one line with a name is needed"), blank.err());
    }

    @Test
    void a_seal_is_made_and_checked_with_the_keys_of_two_files() throws Exception {
        var archive = imported();
        var keys = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        var privateKey = pem("PRIVATE KEY", keys.getPrivate().getEncoded());
        var publicKey = pem("PUBLIC KEY", keys.getPublic().getEncoded());
        var sealed = CommandLineRun.of("seal", "--archive", archive, "--key", privateKey, "--by", "Q. Auditor");
        assertEquals(0, sealed.exitCode(), sealed.err());
        var checked = CommandLineRun.of("verify", "--archive", archive, "--key", publicKey);
        assertEquals(0, checked.exitCode(), checked.out());
        assertTrue(
                checked.out().contains("by Q. Auditor: signed by the key given, its state is on the chain"),
                checked.out());
        var wrong = CommandLineRun.of("verify", "--archive", archive, "--seal", "elsewhere.txt");
        assertEquals(2, wrong.exitCode());
    }

    @Test
    void a_broken_chain_is_told_by_who_decides_tidies_and_seals() throws Exception {
        var archive = imported();
        String[] decision = {
            "decide", "FW-000002", "quarantine", "--archive", archive, "--by", "A. Reviewer", "--reason", "short"
        };
        assertEquals("", CommandLineRun.of(decision).err());
        var ledger = Path.of(archive, "ledger.jsonl");
        Files.writeString(ledger, Files.readString(ledger).replace("short", "shirt"));
        var decided = CommandLineRun.of(decision);
        assertEquals(0, decided.exitCode(), decided.err());
        assertTrue(decided.err().contains("ledger.jsonl:2: the entry does not fit its hash"), decided.err());
        assertEquals(1, CommandLineRun.of("tidy", "--archive", archive).exitCode());
        var keys = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        var privateKey = pem("PRIVATE KEY", keys.getPrivate().getEncoded());
        var sealed = CommandLineRun.of("seal", "--archive", archive, "--key", privateKey, "--by", "Q. Auditor");
        assertEquals(2, sealed.exitCode(), sealed.toString());
        assertTrue(sealed.err().contains("the chain is broken at ledger.jsonl:2"), sealed.err());
    }

    @Test
    void tidy_merges_what_several_imports_brought() throws IOException {
        var archive = imported();
        var second = MadeLogs.mixed(folder.resolve("more"));
        CommandLineRun.of("import", second.toString(), "--archive", archive);
        var tidied = CommandLineRun.of("tidy", "--archive", archive);
        assertEquals(0, tidied.exitCode(), tidied.err());
        assertTrue(tidied.out().contains("merged 2 batches into 1"), tidied.out());
        assertEquals(0, CommandLineRun.of("verify", "--archive", archive).exitCode());
    }

    @Test
    void a_folder_that_is_no_archive_is_told_in_one_sentence() {
        var run = CommandLineRun.of(
                "verify", "--archive", folder.resolve("nowhere").toString());
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("there is no archive "), run.err());
        assertFalse(run.err().contains("Exception") || run.err().contains("--debug"), run.err());
        assertEquals(
                2,
                CommandLineRun.of("engine", "FW-000001", "--archive", folder.toString())
                        .exitCode());
    }

    @Test
    void judging_again_adds_verdicts_and_keeps_the_earlier_ones() throws IOException {
        var archive = imported();
        var stated = Files.readString(folder.resolve("logs/joint.toml"));
        var next = folder.resolve("joint-4.toml");
        Files.writeString(
                next, stated.replace("version = \"3\"", "version = \"4\"").replaceFirst("low = 345.0", "low = 364.0"));
        var judged = CommandLineRun.of("rejudge", next.toString(), "--archive", archive);
        assertEquals(0, judged.exitCode(), judged.toString());
        assertTrue(judged.out().contains("2 verdicts by Fenwater main through-bolt version 4"), judged.out());
        var again = CommandLineRun.of("rejudge", next.toString(), "--archive", archive);
        assertTrue(again.out().contains("nothing new"), again.out());
        assertFalse(again.out().contains("that one stands"), again.out());
        var old = folder.resolve("logs/joint.toml").toString();
        var older = CommandLineRun.of("rejudge", old, "--archive", archive);
        assertTrue(
                older.out().contains("version 4 judged too, that one stands, as it was first used later"), older.out());
        var dossier = new ObjectMapper()
                .readTree(CommandLineRun.of("engine", "FW-000001", "--archive", archive, "--json")
                        .out());
        var said = dossier.at("/positions/0/attempts/0/said");
        assertEquals(2, said.size(), said.toString());
        assertEquals("conforming", said.at("/0/verdict").textValue());
        assertEquals("nonconforming", said.at("/1/verdict").textValue());
        assertEquals(0, CommandLineRun.of("verify", "--archive", archive).exitCode());
    }

    @Test
    void a_version_that_judged_before_with_other_contents_is_refused() throws IOException {
        var archive = imported();
        var other = folder.resolve("other.toml");
        Files.writeString(
                other, Files.readString(folder.resolve("logs/joint.toml")).replaceFirst("low = 345.0", "low = 346.0"));
        var run = CommandLineRun.of("rejudge", other.toString(), "--archive", archive);
        assertEquals(2, run.exitCode(), run.toString());
        assertTrue(run.err().contains("give the changed file a new version"), run.err());
    }

    @Test
    void programs_read_what_happened_to_an_archive_as_json() throws Exception {
        var log = MadeLogs.good(folder.resolve("logs")).toString();
        var archive = folder.resolve("evidence").toString();
        var kept = json("import", log, "--archive", archive, "--json");
        assertEquals(2, kept.get("traces").intValue());
        assertEquals(64, kept.at("/newSources/0/sha256").textValue().length());
        var again = json("import", log, "--archive", archive, "--json");
        assertEquals("", again.get("batch").textValue());
        assertEquals(1, again.get("knownSources").size());
        var decided = json(
                "decide", "FW-000001", "accept", "--archive", archive, "--by", "A \"B\"", "--reason", "=1\n", "--json");
        assertEquals("=1\n", decided.get("reason").textValue());
        var keys = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        var privateKey = pem("PRIVATE KEY", keys.getPrivate().getEncoded());
        var sealed = json("seal", "--archive", archive, "--key", privateKey, "--by", "Q. Auditor", "--json");
        assertTrue(Files.exists(Path.of(sealed.get("file").textValue())), sealed.toString());
        var verified = json("verify", "--archive", archive, "--json");
        assertTrue(verified.get("whole").booleanValue(), verified.toString());
        assertEquals("not-checked", verified.at("/seals/0/signed").textValue());
        assertEquals(
                0, json("tidy", "--archive", archive, "--json").get("problems").size());
    }

    /** A serial of two lines comes out of no CSV log; an archive that another reader fed may hold one. */
    @Test
    void a_serial_is_taken_for_what_it_is_by_every_command() throws IOException {
        var archive = ArchivedShift.of(folder, MadeLogs.write(folder.resolve("logs"), ArchivedShift.hostile()));
        var serials = new ArrayList<>(ArchivedShift.HOSTILE);
        serials.add("two\nlines\u202e");
        keep(archive, MadeShift.named("two\nlines\u202e", 300));
        for (var serial : serials) {
            var told = CommandLineRun.of(
                    "decide", serial, "quarantine", "--archive", archive, "--by", "A. Reviewer", "--reason", serial);
            assertEquals(0, told.exitCode(), told.err());
            assertEquals(1, told.out().lines().count(), told.out());
            var contained = CommandLineRun.of("contain", "--serial", serial, "--archive", archive, "--json");
            assertTrue(texts(contained, "engines").contains(serial), contained.toString());
        }
        CommandLineRun.of("tidy", "--archive", archive);
        for (var serial : serials) {
            var dossier = CommandLineRun.of("engine", serial, "--archive", archive, "--json");
            var json = new ObjectMapper().readTree(dossier.out());
            assertEquals(serial, json.get("serial").textValue());
            assertEquals(serial, json.at("/decisions/0/reason").textValue());
            assertEquals(1, json.get("decisions").size(), "decisions of other serials");
        }
        var verified = CommandLineRun.of("verify", "--archive", archive);
        assertEquals(0, verified.exitCode(), verified.toString());
        try (var entries = Files.lines(Path.of(archive, "ledger.jsonl"))) {
            assertEquals(2 + serials.size() + 1, entries.count(), "two imports, the decisions, one merge");
        }
        var out = folder.resolve("reports").toString();
        var shift = CommandLineRun.of("shift", "--archive", archive, "--no-pdf", "--out", out);
        assertTrue(shift.out().startsWith(serials.size() + " tightenings on " + serials.size()), shift.toString());
    }

    private void keep(String archive, MadeShift.Made made) throws IOException {
        var text = Files.readString(folder.resolve("logs/joint.toml"));
        var used = new SpecificationUsed("Fenwater main through-bolt", "3", text);
        var file = new SourceFile("other.csv", "0".repeat(64));
        var trace = new Trace(made.judgement().identity(), new Source(file.file(), 1, file.sha256()), made.curve());
        try (var importer = Archive.open(Path.of(archive))
                .importer(new Stamp("other", OffsetDateTime.parse("2026-03-02T14:10:00+01:00")), used)) {
            importer.source(file);
            importer.trace(trace);
            importer.judgement(Judge.judge(trace, MadeShift.specification()));
            importer.commit();
        }
    }

    private static List<String> texts(CommandLineRun run, String key) throws IOException {
        var texts = new ArrayList<String>();
        new ObjectMapper().readTree(run.out()).get(key).forEach(text -> texts.add(text.textValue()));
        return texts;
    }

    private static JsonNode json(String... words) throws IOException {
        var run = CommandLineRun.of(words);
        assertEquals(0, run.exitCode(), run.toString());
        return new ObjectMapper().readTree(run.out());
    }

    private String imported() throws IOException {
        var log = MadeLogs.good(folder.resolve("logs"));
        var archive = folder.resolve("evidence").toString();
        var run = CommandLineRun.of("import", log.toString(), "--archive", archive);
        assertEquals(0, run.exitCode(), run.err());
        return archive;
    }

    private String pem(String kind, byte[] key) throws IOException {
        var file = folder.resolve(kind.replace(' ', '-') + ".pem");
        var body =
                Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.UTF_8)).encodeToString(key);
        Files.writeString(file, "-----BEGIN " + kind + "-----\n" + body + "\n-----END " + kind + "-----\n");
        return file.toString();
    }
}
