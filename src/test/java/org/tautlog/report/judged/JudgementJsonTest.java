package org.tautlog.report.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.judge.Judgement;
import org.tautlog.review.MadeShift;
import org.tautlog.trace.TraceIdentity;

class JudgementJsonTest {
    @Test
    void the_keys_are_exactly_these_in_this_order() throws IOException {
        var json = json(MadeShift.named("FW-000001", 312).judgement());
        assertEquals(
                List.of(
                        "serial",
                        "station",
                        "spindle",
                        "bolt",
                        "attempt",
                        "time",
                        "boltLot",
                        "source",
                        "samples",
                        "signature",
                        "verdict",
                        "findings"),
                keys(json));
        assertEquals(List.of("file", "line", "sha256"), keys(json.get("source")));
        assertEquals(
                List.of(
                        "prevailingTorqueNm",
                        "snugAngleDeg",
                        "snugTorqueNm",
                        "turnDeg",
                        "finalTorqueNm",
                        "peakTorqueNm",
                        "torqueRateNmPerDeg",
                        "elasticOriginDeg",
                        "yieldOnsetAngleDeg",
                        "yieldOnsetTorqueNm",
                        "minGradientRatio",
                        "finalGradientRatio",
                        "pastOnsetDeg",
                        "clampLoadKN",
                        "clampLoadLowKN",
                        "clampLoadHighKN",
                        "apparentFriction",
                        "clampLoadAfterWarmUpKN",
                        "yieldOnsetByOffsetDeg",
                        "yieldOnsetByKneeDeg",
                        "kneeGain",
                        "kneeRatio",
                        "rundownDeg",
                        "springBackDeg",
                        "endState"),
                keys(json.get("signature")));
        assertEquals(
                List.of("code", "severity", "measured", "limit", "unit", "message"),
                keys(json.get("findings").get(0)));
    }

    @Test
    void what_could_not_be_found_is_null_and_never_zero() throws IOException {
        var made = MadeShift.named("FW-000001", 240);
        assertFalse(made.judgement().signature().onset().angleDeg().isFound(), "the case has no onset");
        var signature = json(made.judgement()).get("signature");
        assertTrue(signature.get("yieldOnsetAngleDeg").isNull(), signature.toString());
        assertTrue(signature.get("pastOnsetDeg").isNull(), signature.toString());
        var note = findings(made.judgement(), "feature-missing");
        assertTrue(
                note.contains("yieldOnsetAngleDeg not known: the gradient never fell below half"),
                "the reason stands with the findings: " + note);
    }

    @Test
    void a_judgement_is_one_line_whatever_its_text_holds() throws IOException {
        var evil = "FW\n1\u2028\"</script>";
        var line = JudgementJson.line(MadeShift.named(evil, 312).judgement());
        assertFalse(line.contains("\n"), line);
        assertEquals(evil, new ObjectMapper().readTree(line).get("serial").asText());
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "3,NUMBER",
        "12,NUMBER",
        "03,NUMBER",
        "A3,STRING",
        "3.5,STRING",
        "-1,STRING",
        "99999999999,STRING",
        "'',NULL"
    })
    void a_whole_number_of_a_bolt_is_a_number(String bolt, String type) throws IOException {
        var judgement = MadeShift.named("FW-000001", 312).judgement();
        var id = judgement.identity();
        var other = new Judgement(
                new TraceIdentity(id.serial(), id.station(), id.spindle(), bolt, 1, null, ""),
                judgement.source(),
                judgement.specificationName(),
                judgement.specificationVersion(),
                judgement.signature(),
                judgement.verdict(),
                judgement.findings());
        var json = json(other);
        assertEquals(type, json.get("bolt").getNodeType().name());
        assertTrue(json.get("time").isNull() && json.get("boltLot").isNull(), json.toString());
    }

    @Test
    void the_time_keeps_the_offset_that_the_plant_recorded() throws IOException {
        assertEquals(
                "2026-03-02T06:00:00+01:00",
                json(MadeShift.named("FW-000001", 312).judgement()).get("time").asText());
    }

    private static String findings(Judgement judgement, String code) throws IOException {
        var messages = new StringBuilder();
        for (var finding : json(judgement).get("findings")) {
            if (finding.get("code").asText().equals(code)) {
                messages.append(finding.get("message").asText()).append('\n');
            }
        }
        return messages.toString();
    }

    private static JsonNode json(Judgement judgement) throws IOException {
        return new ObjectMapper().readTree(JudgementJson.line(judgement));
    }

    private static List<String> keys(JsonNode node) {
        var keys = new ArrayList<String>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
