package org.tautlog.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;
import org.tautlog.trace.TraceIdentity;

/** A containment as one JSON object. Keys never change their meaning; an end that is open is null. */
public final class ContainmentJson {
    private static final int CHANGE_DECIMALS = 5;
    private static final JsonFactory FACTORY = JsonFactory.builder().build();

    private ContainmentJson() {}

    /**
     * Writes a containment.
     *
     * @param suspicion what it started from
     * @param containments the brackets
     * @param provenance what made it
     * @return one JSON object without a line end
     */
    public static String of(String suspicion, List<Containment> containments, Provenance provenance) {
        var text = new StringWriter();
        try (var json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("suspicion", suspicion);
            json.writeArrayFieldStart("engines");
            for (var serial : ContainmentAnswers.engines(containments)) {
                json.writeString(serial);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("brackets");
            for (var containment : containments) {
                bracket(json, containment);
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

    private static void bracket(JsonGenerator json, Containment one) throws IOException {
        json.writeStartObject();
        json.writeStringField("place", one.place());
        json.writeStringField("cause", one.cause());
        end(json, "lastGood", one.lastGood().orElse(null));
        end(json, "firstGood", one.firstGood().orElse(null));
        json.writeFieldName("change");
        if (one.change().isPresent()) {
            var change = one.change().get();
            json.writeStartObject();
            json.writeStringField("feature", change.feature().key());
            json.writeNumberField(
                    "before", SignatureField.rounded(change.point().before(), CHANGE_DECIMALS));
            json.writeNumberField("after", SignatureField.rounded(change.point().after(), CHANGE_DECIMALS));
            json.writeStringField("serial", change.first().serial());
            json.writeNumberField("earliest", change.point().earliest());
            json.writeNumberField("latest", change.point().latest());
            json.writeEndObject();
        } else {
            json.writeNull();
        }
        json.writeNumberField("goodRun", Containment.GOOD_RUN);
        json.writeNumberField("clockMarginMinutes", one.clockMargin().toMinutes());
        json.writeNumberField("searched", one.searched());
        json.writeArrayFieldStart("contained");
        for (var contained : one.contained()) {
            contained(json, contained);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("lots");
        for (var lot : one.lots()) {
            json.writeStartObject();
            json.writeStringField("lot", lot.lot());
            json.writeNumberField("inside", lot.inside());
            json.writeNumberField("outside", lot.outside());
            json.writeNumberField("enginesOutside", lot.enginesOutside());
            json.writeArrayFieldStart("stationsOutside");
            for (var station : lot.stationsOutside()) {
                json.writeString(station);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void end(JsonGenerator json, String key, @Nullable TraceIdentity identity) throws IOException {
        json.writeFieldName(key);
        if (identity == null) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        json.writeStringField("serial", identity.serial());
        json.writeStringField("bolt", identity.bolt());
        json.writeNumberField("attempt", identity.attempt());
        var time = identity.time();
        json.writeStringField("time", time == null ? null : Times.iso(time));
        json.writeEndObject();
    }

    private static void contained(JsonGenerator json, Contained one) throws IOException {
        json.writeStartObject();
        json.writeStringField("serial", one.serial());
        json.writeStringField("reason", Word.of(one.reason()));
        json.writeFieldName("judgement");
        if (one.judgement().isPresent()) {
            json.writeRawValue(JudgementJson.line(one.judgement().get()));
        } else {
            json.writeNull();
        }
        json.writeEndObject();
    }
}
