package org.tautlog.report.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.judge.Judgement;
import org.tautlog.review.MadeShift;
import org.tautlog.review.shape.ComparedShape;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.shape.Zone;

class VerdictsCsvTest {
    @Test
    void its_numbers_are_those_of_the_json_to_the_digit() throws IOException {
        for (var made : MadeShift.shift(3)) {
            var row = row(made.judgement());
            var json = new ObjectMapper().readTree(JudgementJson.line(made.judgement()));
            var signature = json.get("signature");
            int compared = 0;
            for (var field : SignatureField.values()) {
                var cell = row.get(field.key());
                assertEquals(
                        signature.get(field.key()).isNull()
                                ? ""
                                : signature.get(field.key()).asText(),
                        cell);
                compared += cell.isEmpty() ? 0 : 1;
            }
            assertTrue(compared >= 10, "the check compared " + compared + " numbers");
            assertEquals(json.get("verdict").asText(), row.get("verdict"));
            assertEquals(json.get("time").asText(), row.get("time"));
            assertEquals(json.get("source").get("sha256").asText(), row.get("sha256"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1"})
    void a_cell_that_a_spreadsheet_would_compute_is_held_back(String serial) throws IOException {
        assertEquals(
                '\'' + serial, row(MadeShift.named(serial, 300).judgement()).get("serial"));
    }

    @Test
    void quotes_commas_and_line_ends_stay_within_their_cell() throws IOException {
        var serial = "FW \"1\", 2\nnext";
        assertEquals(serial, row(MadeShift.named(serial, 300).judgement()).get("serial"));
    }

    @Test
    void the_programs_own_words_are_plain_ascii() throws IOException {
        var row = row(MadeShift.named("FW-000001", 200).judgement());
        assertTrue(row.get("messages").contains("Nm"), row.get("messages"));
        assertTrue(row.get("messages").chars().allMatch(c -> c < 128), row.get("messages"));
    }

    @Test
    void a_curve_that_leaves_its_peers_says_where_and_how_far() throws IOException {
        var judgement = MadeShift.named("FW-000001", 240).judgement();
        assertEquals("", row(judgement).get("shape"));
        var out = row(judgement, shapes(judgement, 6.1));
        assertEquals("leaves", out.get("shape"));
        assertEquals("40", out.get("shapePeers"));
        assertEquals("118.2", out.get("shapeFromDeg"));
        assertEquals("132.5", out.get("shapeToDeg"));
        assertEquals("-2.35", out.get("shapeExcessNm"));
        var within = row(judgement, shapes(judgement, 2.0));
        assertEquals("within", within.get("shape"));
        assertEquals("", within.get("shapeFromDeg"));
        assertEquals(
                "learning",
                row(judgement, without(judgement, "still learning: 3 of 24 conforming peers"))
                        .get("shape"));
        assertEquals(
                "not-compared",
                row(judgement, without(judgement, "the recording ends before its elastic origin"))
                        .get("shape"));
    }

    private static ShapeReview without(Judgement judgement, String why) {
        return new ShapeReview(List.of(), List.of(), Map.of(judgement.identity(), why), 0);
    }

    private static ShapeReview shapes(Judgement judgement, double distance) {
        var departure = new Departure(40, distance, 4.9, 0.0001, 125, 118.2, 132.5, -2.35, Zone.ELASTIC);
        return new ShapeReview(
                List.of(new ComparedShape(judgement.identity(), judgement.verdict(), departure, 1, null)),
                List.of(),
                Map.of(),
                0);
    }

    private static CSVRecord row(Judgement judgement) throws IOException {
        return row(judgement, new ShapeReview(List.of(), List.of(), Map.of(), 0));
    }

    private static CSVRecord row(Judgement judgement, ShapeReview shapes) throws IOException {
        var text = new StringWriter();
        try (var csv = new VerdictsCsv(text, shapes)) {
            csv.add(judgement);
        }
        var rows = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text.toString()))
                .getRecords();
        assertEquals(1, rows.size());
        return rows.get(0);
    }
}
