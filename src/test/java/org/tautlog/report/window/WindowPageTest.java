package org.tautlog.report.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.Figures;
import org.tautlog.review.MadeWindow;
import org.tautlog.review.WindowReview;
import org.xml.sax.InputSource;

class WindowPageTest {
    private static final Provenance PROVENANCE =
            new Provenance("0.1.0", OffsetDateTime.parse("2026-03-02T15:00:00+01:00"), "joint.toml");
    private static final WindowReview REVIEW = MadeWindow.review();

    @Test
    void a_page_needs_nothing_beside_it_and_its_drawings_are_well_formed() throws Exception {
        var page = page(REVIEW);
        assertFalse(page.contains("<script"), "scripts");
        assertFalse(Pattern.compile("(src|href)=\"(?!#)").matcher(page).find(), "links out of the page");
        var drawings = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL).matcher(page);
        int seen = 0;
        while (drawings.find()) {
            seen++;
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(drawings.group())));
        }
        assertEquals(6, seen, "drawings");
    }

    @Test
    void each_drawing_has_a_title_with_its_unit_and_says_how_many_were_drawn() throws IOException {
        var figures = Pattern.compile("<figure><figcaption><strong>([^<]+)</strong> n = (\\d+)</figcaption><svg")
                .matcher(page(REVIEW))
                .results()
                .map(found -> found.group(1) + ": " + found.group(2))
                .toList();
        assertEquals(
                List.of(
                        "Clamp load over the turn, kN: 2000",
                        "Predicted torque-angle envelope, N·m: 2000",
                        "Clamp load before and after, kN: 2000",
                        "Bolt by bolt, kN: 800",
                        "As tightened, % of the variance: 2000",
                        "Cold after the first warm-up, % of the variance: 2000"),
                figures);
    }

    @Test
    void bending_under_the_head_and_embedding_stand_beside_the_draws() throws IOException {
        var side = REVIEW.sideEffects();
        var page = page(REVIEW);
        assertTrue(page.contains(String.format(
                Locale.ROOT,
                "adds %.0f MPa of bending at the under-head fillet, %.1f %% of yield",
                side.bendingMPa(),
                100 * side.bendingShareOfYield())));
        assertTrue(page.contains("Embedding: faces that flatten by the stated 0 µm take 0.0 kN"));
    }

    /** Bars bear their numbers themselves, and those are the study's. */
    @Test
    void the_bars_say_what_each_factor_does() throws IOException {
        var page = page(REVIEW);
        for (var quantity : List.of(Quantity.FINAL_PRELOAD, Quantity.COLD_PRELOAD)) {
            var strongest = REVIEW.result().drivers(quantity).get(0);
            var words = String.format(
                            Locale.ROOT,
                            "%.0f %%, %+.2f kN",
                            100 * strongest.varianceShare(),
                            strongest.effectPerDeviation() / 1000)
                    .replace('-', '\u2212');
            assertTrue(page.contains(strongest.factor().title() + ' ' + words), words + " in the description");
            assertTrue(page.contains(">" + words + "</text>"), words + " beside the bar");
        }
    }

    @Test
    void the_answers_hold_the_numbers_of_the_study_and_the_note_stands_before_them_all() throws IOException {
        var page = page(REVIEW);
        assertTrue(page.contains(Figures.percent(REVIEW.result().yieldedAtWarmUpShare()) + " on the first warm-up"));
        assertTrue(page.contains(REVIEW.result().scatterLeft().sentence()));
        assertTrue(page.indexOf(SafetyNote.TEXT) < page.indexOf("<h2>"), "place of the note");
        assertTrue(page.contains("It was not held against recorded tightenings."));
    }

    /** The aim of the method must not be promised where one draw misses it. */
    @Test
    void the_aim_is_said_to_hold_only_where_every_draw_keeps_it() {
        var said = WindowAnswers.aim(REVIEW).get(1);
        assertEquals(REVIEW.result().everyBoltYieldsHotAndNoneBefore(), said.contains("holds in all"), said);
    }

    @Test
    void with_logs_the_page_says_how_many_each_window_would_have_failed() throws IOException {
        var spread = MadeWindow.spread();
        var review = REVIEW.with(spread);
        var page = page(review);
        assertTrue(page.contains("Against " + spread.tightenings() + " recorded tightenings"));
        assertTrue(page.contains(
                spread.outside(review.specification().window()) + " would have failed the released window"));
    }

    @Test
    void hostile_names_stay_text() throws IOException {
        var from = REVIEW.specification();
        var evil = new JointSpecification(
                "<img src=x onerror=alert(1)>",
                from.version(),
                from.method(),
                from.window(),
                from.reading(),
                from.faults(),
                from.consequences(),
                from.statedJointOrNull(),
                from.boltPositions(),
                from.boltPlaces());
        var page = page(new WindowReview(
                evil, REVIEW.study(), REVIEW.result(), REVIEW.envelope(), REVIEW.given(), REVIEW.proposed(), null));
        assertFalse(page.contains("<img"), "markup from a specification");
    }

    @Test
    void the_json_has_every_quantity_and_reads_as_json() throws IOException {
        var names = new HashSet<String>();
        try (var parser = new JsonFactory().createParser(WindowJson.of(REVIEW.with(MadeWindow.spread())))) {
            for (var token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if ("quantity".equals(parser.currentName()) && token.isScalarValue()) {
                    names.add(parser.getText());
                }
            }
        }
        assertEquals(Quantity.values().length, names.size());
        assertTrue(names.containsAll(Set.of("final-preload", "cold-preload")), names::toString);
    }

    private static String page(WindowReview review) throws IOException {
        var text = new StringWriter();
        WindowPage.write(review, PROVENANCE, text);
        return text.toString().replace('\u00a0', ' ');
    }
}
