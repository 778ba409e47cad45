package org.tautlog.report.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.tautlog.archive.Imported;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.SealCheck;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.Tidied;
import org.tautlog.archive.Verification;
import org.tautlog.problem.Problem;
import org.tautlog.report.words.Times;
import org.tautlog.report.words.Word;

/** What happened to an archive, as one JSON object a line. Keys never change their meaning. */
public final class ArchiveJson {
    private ArchiveJson() {}

    /**
     * An import.
     *
     * @param imported what it did
     * @param rejected what could not be kept, with its places
     * @return one line: batch (empty where nothing was new), traces, judgements, newSources, knownSources, problems
     */
    public static String of(Imported imported, List<Problem> rejected) {
        var json = object().put("batch", imported.batch())
                .put("traces", imported.traces())
                .put("judgements", imported.judgements());
        sources(json.putArray("newSources"), imported.newSources());
        sources(json.putArray("knownSources"), imported.knownSources());
        problems(json, rejected);
        return json.toString();
    }

    /**
     * A check.
     *
     * @param found what it found
     * @return one line: whole, entries, head, batches, files, rows, provenEntries, unplacedBatches, problems, seals
     */
    public static String of(Verification found) {
        var json = object().put("whole", found.isWhole())
                .put("entries", found.entries())
                .put("head", found.head())
                .put("batches", found.batches())
                .put("files", found.files())
                .put("rows", found.rows())
                .put("provenEntries", found.provenEntries())
                .put("unplacedBatches", found.unplacedBatches());
        problems(json, found.problems());
        var seals = json.putArray("seals");
        for (SealCheck check : found.seals()) {
            seals.addObject()
                    .put("file", check.file())
                    .put("time", Times.iso(check.seal().time()))
                    .put("by", check.seal().by())
                    .put("signed", Word.of(check.signed()))
                    .put("onChain", check.onChain());
        }
        return json.toString();
    }

    /**
     * A tidying.
     *
     * @param tidied what it did
     * @return one line: entered, cleared, merged, into, problems
     */
    public static String of(Tidied tidied) {
        var json = object().put("entered", tidied.entered())
                .put("merged", tidied.merged())
                .put("into", tidied.into());
        var cleared = json.putArray("cleared");
        tidied.cleared().forEach(cleared::add);
        problems(json, tidied.problems());
        return json.toString();
    }

    /**
     * A decision.
     *
     * @param kept the decision as it stands in the ledger
     * @return one line: entry, time, serial, bolt (empty for the whole engine), action, by, reason, sha256
     */
    public static String of(KeptDecision kept) {
        var decision = kept.decision();
        return object().put("entry", kept.entry())
                .put("time", Times.iso(kept.time()))
                .put("serial", decision.serial())
                .put("bolt", decision.bolt())
                .put("action", decision.action().word())
                .put("by", decision.by())
                .put("reason", decision.reason())
                .put("sha256", kept.sha256())
                .toString();
    }

    /**
     * A seal.
     *
     * @param file the file of its text; its signature lies beside it
     * @param by who sealed
     * @return one line: file, by
     */
    public static String ofSeal(String file, String by) {
        return object().put("file", file).put("by", by).toString();
    }

    private static void sources(ArrayNode into, List<SourceFile> sources) {
        sources.forEach(source -> into.addObject().put("file", source.file()).put("sha256", source.sha256()));
    }

    private static void problems(ObjectNode json, List<Problem> problems) {
        var into = json.putArray("problems");
        for (var problem : problems) {
            into.addObject()
                    .put("code", problem.code().word())
                    .put("file", problem.where().file())
                    .put("line", problem.where().line())
                    .put("message", problem.sentence());
        }
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
