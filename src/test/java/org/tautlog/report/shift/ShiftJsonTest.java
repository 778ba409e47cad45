package org.tautlog.report.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tautlog.report.judged.ShapeWords;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.MadeShift;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.stream.ChartedFeature;

/** What the page says to people, the figures beside it say to programs. */
class ShiftJsonTest {
    private static final Evidence EVIDENCE = new Evidence("verdicts.csv", "a7".repeat(32));

    private static ShiftReview review;
    private static JsonNode json;
    private static String page;

    @BeforeAll
    static void writes_both() throws IOException {
        var drifting = MadeShift.review(60, 2);
        review = drifting.since(MadeShift.review(40, 2).asPast());
        var figures = new StringWriter();
        ShiftJson.write(review, figures);
        json = new ObjectMapper().readTree(figures.toString());
        var html = new StringWriter();
        var written = OffsetDateTime.parse("2026-03-02T15:00:00+01:00");
        ShiftPage.write(review, new Provenance("test", written, "joint.toml"), EVIDENCE, html);
        page = html.toString();
    }

    @Test
    void spindles_add_up_to_the_shift() {
        for (var verdict : new String[] {"conforming", "review", "unjudged", "nonconforming"}) {
            assertEquals(
                    json.path("verdicts").path(verdict).asInt(),
                    items("spindles")
                            .mapToInt(s -> s.path("verdicts").path(verdict).asInt())
                            .sum(),
                    verdict);
        }
        assertEquals(
                json.path("firstPass").path("attempts").asInt(),
                items("spindles")
                        .mapToInt(s -> s.path("firstPass").path("attempts").asInt())
                        .sum());
        assertEquals(480, json.path("tightenings").asInt());
    }

    @Test
    void curves_held_against_their_peers_are_counted_beside_what_chance_gives() {
        var shapes = review.shapes();
        assertTrue(shapes.unsuspected() > 200, "compared " + shapes.unsuspected());
        assertEquals(shapes.unsuspected(), json.path("shapes").path("compared").asInt());
        assertEquals(8, json.path("shapes").path("streams").size());
        assertEquals(
                shapes.outliers().size(),
                json.path("falseAlarms").path("seenByShape").asInt());
        assertEquals(
                shapes.unsuspected() / 1000.0,
                json.path("falseAlarms").path("expectedByShape").asDouble(),
                1e-6);
        assertTrue(page.contains(ShapeWords.summary(shapes)));
    }

    @Test
    void a_level_that_moved_has_its_size_and_its_time_with_bounds() {
        assertFalse(json.path("changes").isEmpty(), "changes");
        items("changes").forEach(change -> {
            double size = change.path("size").asDouble();
            assertTrue(change.path("sizeLow").asDouble() <= size
                    && size <= change.path("sizeHigh").asDouble());
            assertEquals(change.path("after").asDouble() - change.path("before").asDouble(), size, 1e-4);
            var first = change.path("first").asText();
            assertTrue(change.path("earliest").asText().compareTo(first) <= 0, first);
            assertTrue(change.path("latest").asText().compareTo(first) >= 0, first);
            assertTrue(change.path("p").asDouble() <= change.path("level").asDouble());
            assertTrue(page.contains(" at " + first), first);
        });
    }

    @Test
    void findings_actions_and_engines_held_are_those_of_the_page() {
        assertEquals(review.enginesHeld().size(), json.path("held").size());
        assertEquals(
                CauseWords.ofTools(review).size() + review.actions().size(),
                json.path("actions").size(),
                "tools that are off, then what findings ask for");
        assertEquals(review.tallies().size(), json.path("findings").size());
        items("actions")
                .filter(action -> !action.path("findings").isEmpty())
                .forEach(action -> assertTrue(
                        page.contains(action.path("action").asText()),
                        action.path("action").asText()));
        CauseWords.ofTools(review)
                .forEach(one -> assertTrue(page.contains(CauseWords.check(one)), CauseWords.check(one)));
        items("findings")
                .forEach(finding -> assertTrue(page.contains(
                        "<td class=\"num\">" + finding.path("tightenings").asInt() + "</td>")));
        assertEquals(
                "nonconforming", json.path("listed").path(0).path("verdict").asText());
    }

    @Test
    void signals_that_chance_gives_are_those_of_the_page() {
        var alarms = json.path("falseAlarms");
        var shown = String.format(
                Locale.ROOT,
                "%d signals, where chance alone gives about %.0f",
                alarms.path("seenByRules").asInt(),
                alarms.path("expectedByRules").asDouble());
        assertTrue(page.contains(shown), shown);
        assertTrue(page.contains(
                "shared among the " + alarms.path("levelSeriesSearched").asInt() + " series"));
    }

    @Test
    void shares_of_both_shifts_are_those_of_the_page() {
        var shares = json.path("sincePrevious").path("shares");
        assertEquals(8, shares.size());
        shares.forEach(share -> {
            var now = share.path("now");
            var shown = now.path("conforming").asInt() + " of "
                    + now.path("attempts").asInt();
            assertTrue(page.contains("<td class=\"num\">" + shown + "</td>"), shown);
        });
    }

    @Test
    void a_stream_has_its_limits_or_the_reason_why_not() {
        assertEquals(8 * ChartedFeature.values().length, json.path("streams").size());
        items("streams").forEach(stream -> {
            assertFalse(stream.path("basis").asText().isEmpty(), stream.toString());
            if (!stream.path("centre").isNull()) {
                assertTrue(
                        stream.path("lower").asDouble() < stream.path("upper").asDouble(), stream.toString());
            }
            if (stream.path("ppk").isNull() && stream.path("control").asText().isEmpty()) {
                assertTrue(stream.path("outside").isNull(), stream.toString());
            }
        });
        assertTrue(items("streams").anyMatch(stream -> stream.path("moved").asBoolean()), "one moved");
    }

    private static java.util.stream.Stream<JsonNode> items(String key) {
        return StreamSupport.stream(json.path(key).spliterator(), false);
    }
}
