package org.tautlog.report.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.report.judged.JudgementJson;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.review.ImportRecord;
import org.tautlog.review.MadeShift;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.ShiftReviewer;
import org.xml.sax.InputSource;

class ShiftPageTest {
    private static final Provenance PROVENANCE =
            new Provenance("0.1.0", OffsetDateTime.parse("2026-03-02T15:00:00+01:00"), "joint.toml");
    private static final Evidence EVIDENCE = new Evidence("verdicts.csv", "a7".repeat(32));
    private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

    @Test
    void a_page_needs_nothing_beside_it() throws IOException {
        var page = page(MadeShift.review(60, 12));
        Files.writeString(Path.of("target/shift-made.html"), page);
        assertFalse(page.contains("<script"), "scripts");
        assertFalse(Pattern.compile("(src|href)=\"(?!#)").matcher(page).find(), "links out of the page");
        assertFalse(page.contains("@import") || page.contains("url(http"), "styles from elsewhere");
    }

    @Test
    void every_drawing_is_well_formed_and_every_id_is_given_once() throws Exception {
        var page = page(MadeShift.review(60, 12));
        var drawings = SVG.matcher(page);
        int seen = 0;
        while (drawings.find()) {
            seen++;
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(drawings.group())));
        }
        assertTrue(seen > 20, "the check saw " + seen + " drawings");
        var ids = Pattern.compile(" id=\"([^\"]+)\"")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertEquals(new HashSet<>(ids).size(), ids.size(), "ids, each given once");
    }

    @Test
    void the_answers_come_first_and_hold_the_numbers_of_the_review() throws IOException {
        var review = MadeShift.review(60, 12);
        var page = page(review);
        assertTrue(
                page.contains(review.counts().nonconforming() + " tightenings do not conform, on "
                        + review.enginesHeld().size() + " engines"),
                page.substring(page.indexOf("<dl"), page.indexOf("</dl>")));
        assertTrue(page.indexOf("Is anything unsafe?") < page.indexOf("What changed?"), "order of the questions");
        assertTrue(page.indexOf(SafetyNote.TEXT) < page.indexOf("Tightenings that need a person"), "place of the note");
        assertTrue(page.contains("Torque rate of S40/3 rose from"), "the drift is told");
    }

    @Test
    void hostile_text_stays_text() throws IOException {
        var evil = "<img src=x onerror=alert(1)>\"'&";
        var made = MadeShift.named(evil, 300);
        var reviewer = new ShiftReviewer(MadeShift.specification(), 5);
        reviewer.accept(made.judgement(), made.curve());
        var problem = new Problem(ProblemCode.BAD_ROW, Where.line(evil, 3), "a row holds " + evil, "", "");
        var page = page(reviewer.review(new ImportRecord(1, 0, 1, 1, List.of(problem), List.of(problem))));
        assertFalse(page.contains("<img"), "markup from a log");
        assertTrue(page.contains("&lt;img src=x"), "the text itself is shown");
    }

    @Test
    void the_list_is_bounded_and_says_how_many_more_there_are() throws IOException {
        var review = MadeShift.review(60, 2);
        var page = page(review);
        assertEquals(2, page.split("<article ", -1).length - 1);
        assertTrue(page.contains(review.unlisted() + " more are in <code>verdicts.csv</code>"), "the rest is named");
    }

    @Test
    void a_shift_without_faults_says_so_calmly() throws IOException {
        var made = MadeShift.named("FW-000001", 360);
        var reviewer = new ShiftReviewer(MadeShift.specification(), 5);
        reviewer.accept(made.judgement(), made.curve());
        var page = page(reviewer.review(new ImportRecord(1, 0, 1, 0, List.of(), List.of())));
        assertTrue(page.contains("No tightening was found nonconforming."), "the answer");
        assertFalse(page.contains("Nothing out of the ordinary."), "nothing was tested");
        assertTrue(page.contains("levels could not be tested"), "the actions");
    }

    @Test
    void an_empty_shift_is_not_a_good_shift() throws IOException {
        var page = page(new ShiftReviewer(MadeShift.specification(), 5)
                .review(new ImportRecord(0, 0, 0, 0, List.of(), List.of())));
        assertTrue(page.contains("Nothing was judged"), "the answer");
    }

    @Test
    void numbers_in_the_page_are_those_of_the_json() throws IOException {
        var made = MadeShift.named("FW-000001", 312.25);
        var reviewer = new ShiftReviewer(MadeShift.specification(), 5);
        reviewer.accept(made.judgement(), made.curve());
        var page = page(reviewer.review(new ImportRecord(1, 0, 1, 0, List.of(), List.of())));
        var json = JudgementJson.line(made.judgement());
        for (var key : List.of("turnDeg", "finalTorqueNm", "snugTorqueNm")) {
            var found = Pattern.compile('"' + key + "\":([0-9.]+)").matcher(json);
            assertTrue(found.find(), json);
            var shown = String.format(Locale.ROOT, "%.1f", Double.parseDouble(found.group(1)));
            assertTrue(page.contains("<td class=\"num\">" + shown + "</td>"), key + " " + shown);
        }
    }

    @Test
    void the_figures_beside_the_page_are_those_of_the_page() throws IOException {
        var review = MadeShift.review(60, 2);
        var page = page(review);
        var out = new StringWriter();
        ShiftJson.write(review, out);
        var json = new com.fasterxml.jackson.databind.ObjectMapper().readTree(out.toString());
        int seen = 0;
        for (var stream : json.get("streams")) {
            if (stream.hasNonNull("ppk")) {
                seen++;
                var shown = String.format(
                        Locale.ROOT, "%.2f (", stream.get("ppk").get("value").doubleValue());
                assertTrue(page.contains(shown), shown);
            }
        }
        assertTrue(seen > 8, "saw " + seen);
        assertEquals("S40", json.get("cases").get(0).get("station").textValue());
        assertTrue(page.contains("S40/3 moved apart from its station"), "the same case on the page");
        assertEquals(
                review.counts().nonconforming(),
                json.get("verdicts").get("nonconforming").intValue());
    }

    @Test
    void one_tightening_or_values_all_equal_get_a_plain_statement() throws IOException {
        var reviewer = new ShiftReviewer(MadeShift.specification(), 5);
        for (int i = 0; i < 30; i++) {
            var made = MadeShift.named("FW-" + i, 360);
            reviewer.accept(made.judgement(), made.curve());
        }
        var page = page(reviewer.review(new ImportRecord(1, 0, 30, 0, List.of(), List.of())));
        assertTrue(page.contains("No limits: all 30 values equal"), "the reason");
        assertTrue(page.contains("No spindle moved apart"), "no accusation");
    }

    private static String page(ShiftReview review) throws IOException {
        var out = new StringWriter();
        ShiftPage.write(review, PROVENANCE, EVIDENCE, out);
        return out.toString();
    }
}
