package org.tautlog.report.judged;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.report.words.Times;

/**
 * One judgement as a result of the open joining model, for systems that take such results.
 *
 * <p>Source: OPC 40450-1 (OPC UA for Joining Systems) on the result base of OPC 40001-101. The names of the fields and the
 * numbers of {@code ResultEvaluation} and {@code PhysicalQuantity} are from memory; hold them against the published model
 * before use. A verdict of review or unjudged is neither of OK and not OK, and so not decidable.
 */
public final class JoiningResultJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final int TORQUE = 2;
    private static final int ANGLE = 3;

    private JoiningResultJson() {}

    /**
     * Writes one judgement.
     *
     * @param judgement the judgement
     * @return one JSON object without a line end
     */
    public static String line(Judgement judgement) {
        var text = new StringWriter();
        try (var json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            json.writeObjectFieldStart("ResultMetaData");
            metaData(json, judgement);
            json.writeEndObject();
            json.writeArrayFieldStart("ResultContent");
            json.writeStartObject();
            json.writeArrayFieldStart("OverallResultValues");
            value(json, judgement, SignatureField.FINAL_TORQUE, TORQUE, "N·m");
            value(json, judgement, SignatureField.SNUG_TORQUE, TORQUE, "N·m");
            value(json, judgement, SignatureField.TURN, ANGLE, "deg");
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void metaData(JsonGenerator json, Judgement judgement) throws IOException {
        var identity = judgement.identity();
        json.writeStringField(
                "ResultId",
                judgement.source().sha256() + ':' + judgement.source().line());
        json.writeStringField("PartId", identity.serial());
        var time = identity.time();
        if (time != null) {
            json.writeStringField("CreationTime", Times.iso(time));
        }
        json.writeNumberField("ResultEvaluation", evaluation(judgement.verdict()));
        json.writeObjectFieldStart("ResultEvaluationDetails");
        json.writeStringField(
                "Text",
                judgement.findings().stream()
                        .map(finding -> finding.message())
                        .reduce((a, b) -> a + "; " + b)
                        .orElse(""));
        json.writeEndObject();
        json.writeStringField("Name", identity.words());
        json.writeArrayFieldStart("AssociatedEntities");
        entity(json, "station", identity.station());
        entity(json, "spindle", identity.spindle());
        entity(json, "bolt position", identity.bolt());
        entity(json, "bolt lot", identity.boltLot());
        json.writeEndArray();
    }

    private static int evaluation(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> 1;
            case NONCONFORMING -> 2;
            case REVIEW, UNJUDGED -> 3;
        };
    }

    private static void entity(JsonGenerator json, String name, String id) throws IOException {
        if (!id.isEmpty()) {
            json.writeStartObject();
            json.writeStringField("Name", name);
            json.writeStringField("EntityId", id);
            json.writeEndObject();
        }
    }

    private static void value(JsonGenerator json, Judgement judgement, SignatureField field, int quantity, String unit)
            throws IOException {
        var number = field.written(judgement.signature());
        if (number.isPresent()) {
            json.writeStartObject();
            json.writeStringField("Name", field.key());
            json.writeNumberField("PhysicalQuantity", quantity);
            json.writeNumberField("MeasuredValue", number.get());
            json.writeObjectFieldStart("EngineeringUnits");
            json.writeObjectFieldStart("DisplayName");
            json.writeStringField("Text", unit);
            json.writeEndObject();
            json.writeEndObject();
            json.writeEndObject();
        }
    }
}
