package org.tautlog.report.evidence;

import java.io.IOException;
import org.tautlog.archive.KeptDecision;
import org.tautlog.report.judged.EngineClampLoadJson;
import org.tautlog.report.judged.JudgementJson;
import org.tautlog.report.judged.ShapesJson;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Times;
import org.tautlog.report.words.Word;
import org.tautlog.review.Listed;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;
import org.tautlog.review.evidence.EngineTightening;
import org.tautlog.review.evidence.SameCause;
import org.tautlog.review.shape.Departure;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;

/** An engine's dossier as one JSON object. Keys never change their meaning; each attempt is written as {@link JudgementJson}. */
public final class DossierJson {
    private DossierJson() {}

    /**
     * Writes a dossier.
     *
     * @param dossier what is known
     * @param provenance what made it
     * @return one JSON object without a line end
     */
    public static String of(EngineDossier dossier, Provenance provenance) {
        return JsonFields.line(json -> {
            json.text("serial", dossier.serial());
            json.text("soundness", Word.of(dossier.soundness()));
            json.text("specification", dossier.specification().name());
            json.text("specificationVersion", dossier.specification().version());
            json.texts("sound", DossierAnswers.sound(dossier).stream());
            json.texts("unknown", DossierAnswers.unknown(dossier).stream());
            json.texts("others", DossierAnswers.others(dossier).stream());
            json.list("positions", dossier.positions(), position -> position(json, position));
            load(json, dossier);
            json.list("decisions", dossier.decisions(), decision -> decision(json, decision));
            json.list("sameCause", dossier.others(), cause -> cause(json, cause));
            json.text("program", provenance.programVersion());
            json.text("safety", SafetyNote.TEXT);
        });
    }

    private static void position(JsonFields json, BoltPosition position) throws IOException {
        json.text("station", position.station());
        json.text("bolt", position.bolt());
        json.text("standing", Word.of(position.standing()));
        if (position.decidedBy().isPresent()) {
            json.count("decidedBy", position.decidedBy().get().entry());
        } else {
            json.none("decidedBy");
        }
        json.list("repeats", position.repeats(), repeat -> {
            json.count("attempt", repeat.attempt());
            json.text("need", Word.of(repeat.need()));
            json.yes("undecided", repeat.undecided());
            json.text("message", DossierAnswers.sentence(position, repeat));
        });
        json.list("attempts", position.attempts(), attempt -> attempt(json, attempt));
    }

    private static void attempt(JsonFields json, EngineTightening attempt) throws IOException {
        json.raw("judgement", JudgementJson.line(attempt.judgement()));
        json.yes("traceKept", attempt.drawn().isPresent());
        ShapesJson.one(
                json,
                attempt.drawn()
                        .map(Listed::shape)
                        .orElseGet(() -> Answer.missing(Reason.EMPTY, "the archive has lost its trace")),
                Departure.hasPlace(attempt.judgement().findings()));
        json.list("said", attempt.said(), said -> {
            json.text("specification", said.specification());
            json.text("specificationVersion", said.version());
            json.text("specificationSha256", said.specificationSha256());
            json.text("program", said.program());
            json.text("verdict", said.verdict().word());
            json.text("rowSha256", said.rowSha256());
        });
    }

    private static void load(JsonFields json, EngineDossier dossier) throws IOException {
        var load = dossier.clampLoad();
        if (load.isEmpty()) {
            json.none(EngineClampLoadJson.KEY);
            return;
        }
        json.object(EngineClampLoadJson.KEY, () -> EngineClampLoadJson.write(json, load.get()));
    }

    static void decision(JsonFields json, KeptDecision kept) throws IOException {
        json.count("entry", kept.entry());
        json.text("time", Times.iso(kept.time()));
        json.text("bolt", kept.decision().bolt());
        json.text("action", kept.decision().action().word());
        json.text("by", kept.decision().by());
        json.text("reason", kept.decision().reason());
        json.yes("stands", kept.standing());
        json.text("sha256", kept.sha256());
    }

    private static void cause(JsonFields json, SameCause cause) throws IOException {
        json.text("code", cause.code().word());
        json.text("scope", Word.of(cause.scope()));
        json.text("name", cause.name());
        json.count("of", cause.of());
        json.list("others", cause.others(), other -> {
            json.text("serial", other.serial());
            json.text("bolt", other.bolt());
        });
    }
}
