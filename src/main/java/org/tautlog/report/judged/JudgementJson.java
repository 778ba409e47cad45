package org.tautlog.report.judged;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.report.words.Rounded;
import org.tautlog.report.words.Times;
import org.tautlog.signature.Signature;
import org.tautlog.trace.Source;

/**
 * One judgement as one line of JSON. Keys never change their meaning; a number that could not be found is null, and a
 * finding says why.
 */
public final class JudgementJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final Pattern WHOLE_NUMBER = Pattern.compile("\\d{1,9}");
    private static final int FINDING_DECIMALS = 5;

    private JudgementJson() {}

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
            identity(json, judgement);
            source(json, judgement.source());
            json.writeNumberField("samples", judgement.signature().samples());
            signature(json, judgement.signature());
            json.writeStringField("verdict", judgement.verdict().word());
            json.writeArrayFieldStart("findings");
            for (var finding : judgement.findings()) {
                finding(json, finding);
            }
            for (var finding : missing(judgement)) {
                finding(json, finding);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** Notes on the nulls that no finding of the judge explains, one for each reason. */
    private static List<Finding> missing(Judgement judgement) {
        var fields = new LinkedHashMap<String, List<String>>();
        for (var field : SignatureField.values()) {
            var why = field.whyMissing(judgement.signature());
            if (!why.isEmpty()
                    && judgement.findings().stream()
                            .noneMatch(finding -> finding.message().contains(why))) {
                fields.computeIfAbsent(why, unused -> new ArrayList<>()).add(field.key());
            }
        }
        var code = FindingCode.FEATURE_MISSING;
        return fields.entrySet().stream()
                .map(entry -> new Finding(
                        code,
                        code.usual(),
                        null,
                        null,
                        "",
                        String.join(", ", entry.getValue()) + " not known: " + entry.getKey()))
                .toList();
    }

    private static void identity(JsonGenerator json, Judgement judgement) throws IOException {
        var identity = judgement.identity();
        json.writeStringField("serial", identity.serial());
        textOrNull(json, "station", identity.station());
        textOrNull(json, "spindle", identity.spindle());
        if (WHOLE_NUMBER.matcher(identity.bolt()).matches()) {
            json.writeNumberField("bolt", Integer.parseInt(identity.bolt()));
        } else {
            textOrNull(json, "bolt", identity.bolt());
        }
        json.writeNumberField("attempt", identity.attempt());
        var time = identity.time();
        textOrNull(json, "time", time == null ? "" : Times.iso(time));
        textOrNull(json, "boltLot", identity.boltLot());
    }

    private static void source(JsonGenerator json, Source source) throws IOException {
        json.writeObjectFieldStart("source");
        json.writeStringField("file", source.file());
        json.writeNumberField("line", source.line());
        textOrNull(json, "sha256", source.sha256());
        json.writeEndObject();
    }

    private static void signature(JsonGenerator json, Signature signature) throws IOException {
        json.writeObjectFieldStart("signature");
        for (var field : SignatureField.values()) {
            json.writeFieldName(field.key());
            var number = field.written(signature);
            if (number.isPresent()) {
                json.writeNumber(number.get());
            } else {
                json.writeNull();
            }
        }
        json.writeStringField("endState", signature.onset().endState().word());
        json.writeEndObject();
    }

    private static void finding(JsonGenerator json, Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", finding.code().word());
        json.writeStringField("severity", finding.severity().word());
        numberOrNull(json, "measured", finding.measured());
        numberOrNull(json, "limit", finding.limit());
        textOrNull(json, "unit", finding.unit());
        json.writeStringField("message", finding.message());
        json.writeEndObject();
    }

    private static void textOrNull(JsonGenerator json, String key, String text) throws IOException {
        if (text.isEmpty()) {
            json.writeNullField(key);
        } else {
            json.writeStringField(key, text);
        }
    }

    private static void numberOrNull(JsonGenerator json, String key, @Nullable Double number) throws IOException {
        json.writeFieldName(key);
        if (number == null || !Double.isFinite(number)) {
            json.writeNull();
        } else {
            json.writeNumber(Rounded.of(number, FINDING_DECIMALS));
        }
    }
}
