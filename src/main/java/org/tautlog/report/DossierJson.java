package org.tautlog.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.tautlog.archive.KeptDecision;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;
import org.tautlog.review.evidence.EngineTightening;
import org.tautlog.review.evidence.SameCause;

/** An engine's dossier as one JSON object. Keys never change their meaning; each attempt is written as {@link JudgementJson}. */
public final class DossierJson {
    private static final JsonFactory FACTORY = JsonFactory.builder().build();

    private DossierJson() {}

    /**
     * Writes a dossier.
     *
     * @param dossier what is known
     * @param provenance what made it
     * @return one JSON object without a line end
     */
    public static String of(EngineDossier dossier, Provenance provenance) {
        var text = new StringWriter();
        try (var json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("serial", dossier.serial());
            json.writeStringField("soundness", Word.of(dossier.soundness()));
            json.writeStringField("specification", dossier.specification().name());
            json.writeStringField(
                    "specificationVersion", dossier.specification().version());
            sentences(json, "sound", DossierAnswers.sound(dossier));
            sentences(json, "unknown", DossierAnswers.unknown(dossier));
            sentences(json, "others", DossierAnswers.others(dossier));
            json.writeArrayFieldStart("positions");
            for (var position : dossier.positions()) {
                position(json, position);
            }
            json.writeEndArray();
            load(json, dossier);
            json.writeArrayFieldStart("decisions");
            for (var decision : dossier.decisions()) {
                decision(json, decision);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("sameCause");
            for (var cause : dossier.others()) {
                cause(json, cause);
            }
            json.writeEndArray();
            json.writeStringField("program", provenance.programVersion());
            json.writeStringField("safety", SafetyNote.TEXT);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void position(JsonGenerator json, BoltPosition position) throws IOException {
        json.writeStartObject();
        json.writeStringField("station", position.station());
        json.writeStringField("bolt", position.bolt());
        json.writeStringField("standing", Word.of(position.standing()));
        json.writeArrayFieldStart("repeats");
        for (var repeat : position.repeats()) {
            json.writeStartObject();
            json.writeNumberField("attempt", repeat.attempt());
            json.writeStringField("need", Word.of(repeat.need()));
            json.writeBooleanField("undecided", repeat.undecided());
            json.writeStringField("message", DossierAnswers.sentence(position, repeat));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("attempts");
        for (var attempt : position.attempts()) {
            attempt(json, attempt);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void attempt(JsonGenerator json, EngineTightening attempt) throws IOException {
        json.writeStartObject();
        json.writeFieldName("judgement");
        json.writeRawValue(JudgementJson.line(attempt.judgement()));
        json.writeBooleanField("traceKept", attempt.drawn().isPresent());
        json.writeArrayFieldStart("said");
        for (var said : attempt.said()) {
            json.writeStartObject();
            json.writeStringField("specification", said.specification());
            json.writeStringField("specificationVersion", said.version());
            json.writeStringField("specificationSha256", said.specificationSha256());
            json.writeStringField("program", said.program());
            json.writeStringField("verdict", said.verdict().word());
            json.writeStringField("rowSha256", said.rowSha256());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void load(JsonGenerator json, EngineDossier dossier) throws IOException {
        json.writeFieldName(EngineClampLoadJson.KEY);
        var load = dossier.clampLoad();
        if (load.isEmpty()) {
            json.writeNull();
            return;
        }
        EngineClampLoadJson.write(json, load.get());
    }

    private static void decision(JsonGenerator json, KeptDecision kept) throws IOException {
        json.writeStartObject();
        json.writeNumberField("entry", kept.entry());
        json.writeStringField("time", Times.iso(kept.time()));
        json.writeStringField("bolt", kept.decision().bolt());
        json.writeStringField("action", kept.decision().action().word());
        json.writeStringField("by", kept.decision().by());
        json.writeStringField("reason", kept.decision().reason());
        json.writeBooleanField("stands", kept.standing());
        json.writeStringField("sha256", kept.sha256());
        json.writeEndObject();
    }

    private static void cause(JsonGenerator json, SameCause cause) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", cause.code().word());
        json.writeStringField("scope", Word.of(cause.scope()));
        json.writeStringField("name", cause.name());
        json.writeNumberField("of", cause.of());
        json.writeArrayFieldStart("others");
        for (var other : cause.others()) {
            json.writeStartObject();
            json.writeStringField("serial", other.serial());
            json.writeStringField("bolt", other.bolt());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void sentences(JsonGenerator json, String key, List<String> sentences) throws IOException {
        json.writeArrayFieldStart(key);
        for (var sentence : sentences) {
            json.writeString(sentence);
        }
        json.writeEndArray();
    }
}
