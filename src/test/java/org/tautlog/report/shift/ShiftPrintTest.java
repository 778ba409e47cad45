package org.tautlog.report.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.tautlog.judge.Verdict;
import org.tautlog.report.judged.VerdictsCsv;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.paper.PdfUa;
import org.tautlog.report.words.Rounded;
import org.tautlog.review.ImportRecord;
import org.tautlog.review.MadeShift;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.ShiftReviewer;

class ShiftPrintTest {
    private static final Provenance PROVENANCE =
            new Provenance("0.1.0", OffsetDateTime.parse("2026-03-02T15:00:00+01:00"), "joint.toml");
    private static final Evidence EVIDENCE = new Evidence("verdicts.csv", "a7".repeat(32));

    private static final List<String> HOSTILE = List.of(
            "../../etc/passwd",
            "'; DROP TABLE traces; --",
            "<script>alert(1)</script>",
            "&lt;b&gt;",
            "=HYPERLINK(\"x\")",
            "a\"b'c\\d",
            "${1+1} #{2} <#if>",
            "url(http://127.0.0.1/x)");

    @Test
    void every_page_says_whose_shift_it_is_on_what_it_stands_and_its_number() throws IOException {
        try (var pdf = print(MadeShift.review(30, 12))) {
            int pages = pdf.getNumberOfPages();
            assertTrue(pages > 5, pages + " pages");
            for (int page = 1; page <= pages; page++) {
                var text = text(pdf, page);
                assertTrue(text.contains("Fenwater main through-bolt, 2026-03-02 06:00 to"), "whose, on page " + page);
                assertTrue(text.contains("verdicts.csv, sha-256 " + EVIDENCE.sha256()), "on what, on page " + page);
                assertTrue(text.contains("Page " + page + " of " + pages), "number of page " + page);
            }
        }
    }

    @Test
    void a_reader_who_listens_gets_all_of_it() throws IOException {
        var out = new ByteArrayOutputStream();
        ShiftPage.print(MadeShift.review(30, 12), PROVENANCE, EVIDENCE, out);
        assertEquals(List.of(), PdfUa.broken(out.toByteArray()), "PDF/UA-1");
    }

    @Test
    void the_safety_note_stands_on_the_first_page() throws IOException {
        try (var pdf = print(MadeShift.review(30, 12))) {
            var first = text(pdf, 1).replaceAll("\\s+", " ");
            assertTrue(first.contains("Safety. " + SafetyNote.TEXT), first);
            assertTrue(first.contains("Is anything unsafe?"), first);
        }
    }

    @Test
    void page_print_table_and_json_show_the_same_numbers() throws IOException {
        var review = MadeShift.review(30, 12);
        var page = plain(page(review));
        var print = plain(text(print(review), 0));
        var json = new ObjectMapper().readTree(json(review));
        var table = new StringWriter();
        try (var verdicts = new VerdictsCsv(table, review.shapes())) {
            for (var made : MadeShift.shift(30)) {
                verdicts.add(made.judgement());
            }
        }
        var rows = table.toString().lines().skip(1).toList();
        for (var verdict : Verdict.values()) {
            int count = review.counts().of(verdict);
            var words = count + " " + verdict.word();
            assertEquals(
                    count,
                    rows.stream()
                            .filter(row -> row.startsWith(verdict.word() + ','))
                            .count(),
                    "in the table: " + words);
            assertEquals(count, json.at("/verdicts/" + verdict.word()).asInt(-1), "in the JSON: " + words);
            assertTrue(page.contains(words), "on the page: " + words);
            assertTrue(print.contains(words), "in print: " + words);
        }
        int compared = 0;
        for (var listed : review.listed()) {
            var end = listed.judgement().signature().end();
            var torque = String.format(
                    Locale.ROOT, "final torque %.1f N·m", end.torqueNm().number());
            var turn = String.format(
                    Locale.ROOT, "turn past snug %.1f deg", end.turnDeg().number());
            for (var words : List.of(torque, turn)) {
                assertTrue(page.contains(words), "on the page: " + words);
                assertTrue(print.contains(words), "in print: " + words);
                compared++;
            }
            var row = rows.stream()
                    .filter(one -> one.contains(','
                            + listed.judgement().identity().serial()
                            + ','
                            + listed.judgement().identity().bolt()
                            + ','))
                    .findFirst()
                    .orElseThrow();
            assertTrue(row.contains(',' + Rounded.of(end.torqueNm().number(), 3).toPlainString() + ','), row);
        }
        assertTrue(compared >= 4, compared + " figures compared");
    }

    @Test
    void hostile_serials_stay_text_in_print() throws IOException {
        var reviewer = new ShiftReviewer(MadeShift.specification(), 20);
        for (var serial : HOSTILE) {
            var made = MadeShift.named(serial, 300);
            reviewer.accept(made.judgement(), made.curve());
        }
        int n = HOSTILE.size();
        var review = reviewer.review(new ImportRecord(1, 0, n, 0, List.of(), List.of()));
        var text = text(print(review), 0).replaceAll("\\s", "");
        for (var serial : HOSTILE) {
            assertTrue(text.contains(serial.replaceAll("\\s", "")), serial);
        }
    }

    @Test
    void a_serial_of_characters_that_no_page_may_hold_shows_that_it_has_them() throws IOException {
        var reviewer = new ShiftReviewer(MadeShift.specification(), 20);
        var made = MadeShift.named("FW\u0001\uD800-9", 300);
        reviewer.accept(made.judgement(), made.curve());
        var review = reviewer.review(new ImportRecord(1, 0, 1, 0, List.of(), List.of()));
        assertTrue(page(review).contains("FW\uFFFD\uFFFD-9"), "on the page");
        assertTrue(text(print(review), 0).contains("FW[U+FFFD][U+FFFD]-9"), "in print");
    }

    /** Text without markup, and with single blanks. */
    private static String plain(String text) {
        return Pattern.compile("<svg.*?</svg>|<style>.*?</style>|<[^>]*>", Pattern.DOTALL)
                .matcher(text)
                .replaceAll(" ")
                .replaceAll("\\s+", " ");
    }

    private static String page(ShiftReview review) throws IOException {
        var out = new StringWriter();
        ShiftPage.write(review, PROVENANCE, EVIDENCE, out);
        return out.toString();
    }

    private static String json(ShiftReview review) throws IOException {
        var out = new StringWriter();
        ShiftJson.write(review, out);
        return out.toString();
    }

    private static PDDocument print(ShiftReview review) throws IOException {
        var out = new ByteArrayOutputStream();
        ShiftPage.print(review, PROVENANCE, EVIDENCE, out);
        Files.write(Path.of("target/shift-made.pdf"), out.toByteArray());
        return Loader.loadPDF(out.toByteArray());
    }

    /** The text of a page, or of all where the page is 0. */
    private static String text(PDDocument pdf, int page) throws IOException {
        var stripper = new PDFTextStripper();
        if (page > 0) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
        }
        return stripper.getText(pdf);
    }
}
