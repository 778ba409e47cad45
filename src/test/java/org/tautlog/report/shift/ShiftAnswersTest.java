package org.tautlog.report.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.line.CausedShift;
import org.tautlog.line.CausedShift.Kind;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.report.page.Evidence;
import org.tautlog.report.page.Provenance;
import org.tautlog.review.ImportRecord;
import org.tautlog.review.MadeShift;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.ShiftReviewer;
import org.tautlog.review.stream.Stream;
import org.tautlog.trace.TraceIdentity;

/** What page 1 answers where a spindle is off all shift long: no step within the shift shows it. */
class ShiftAnswersTest {
    private static final int ENGINES = 40;
    private static final int SIMULATED = 28;
    private static final ImportRecord IMPORTED = new ImportRecord(1, 0, 0, 0, List.of(), List.of());

    @Test
    void a_spindle_whose_tightenings_are_all_faulty_is_to_be_stopped() throws IOException {
        assertStopped(review(identity -> true), "40 of its 40 first attempts");
    }

    /** One good tightening among them changes nothing. */
    @Test
    void a_spindle_with_one_good_tightening_among_faulty_ones_is_to_be_stopped() throws IOException {
        assertStopped(review(identity -> !identity.serial().equals("FW-000007")), "39 of its 40 first attempts");
    }

    @Test
    void a_spindle_with_a_few_faulty_tightenings_goes_on() throws IOException {
        var review = review(identity -> identity.serial().endsWith("7"));
        assertEquals(4, review.counts().of(Verdict.NONCONFORMING));
        assertFalse(page(review).contains("Stop this spindle"));
    }

    /** A transducer a tenth off is seen against the spindles beside it and against the shift before. */
    @Test
    void a_spindle_off_all_shift_long_is_answered_on_page_1_with_what_to_check() throws IOException {
        long seed = 1;
        var touched = CausedShift.touched(seed);
        var before = new ShiftReviewer(FenwaterEngine.specification(), 2);
        CausedShift.first(seed, SIMULATED).forEach(one -> accept(before, one));
        var now = new ShiftReviewer(FenwaterEngine.specification(), 2);
        CausedShift.next(Kind.NOTHING, 0, seed, SIMULATED).stream()
                .filter(one -> !Stream.of(one.trace().identity()).words().equals(touched))
                .forEach(one -> accept(now, one));
        CausedShift.next(Kind.TORQUE_SCALE, 0.1, seed, SIMULATED).forEach(one -> accept(now, one));
        var review = now.review(IMPORTED).since(before.review(IMPORTED).asPast());

        var since = "differs from the earlier shift: torque transducer scale, ";
        var beside =
                "differs from the station's other spindles, all shift long: cannot tell: torque transducer scale, ";
        var changes = ShiftAnswers.changes(review);
        for (var sentence : List.of(touched + ' ' + since, touched + ' ' + beside)) {
            assertEquals(
                    1,
                    changes.stream().filter(line -> line.startsWith(sentence)).count(),
                    changes.toString());
        }
        assertTrue(
                ShiftAnswers.where(review).contains(touched + ": differs from the earlier shift."),
                ShiftAnswers.where(review).toString());
        assertTrue(page(review).contains("Check this spindle against a reference torque transducer"), "what to do");
    }

    private static void accept(ShiftReviewer reviewer, SimulatedTightening one) {
        reviewer.accept(
                Judge.judge(one.trace(), FenwaterEngine.specification()),
                one.trace().curve());
    }

    private static void assertStopped(ShiftReview review, String howMany) throws IOException {
        var changes = ShiftAnswers.changes(review);
        assertTrue(
                changes.stream().anyMatch(line -> line.startsWith("S40/2 differs from what") && line.contains(howMany)),
                changes.toString());
        assertEquals("S40/2", CauseWords.ofTools(review).get(0).what(), "it comes first");
        assertTrue(page(review).contains("Stop this spindle"), "what to do");
    }

    private static ShiftReview review(Predicate<TraceIdentity> faulty) {
        var reviewer = new ShiftReviewer(MadeShift.specification(), 2);
        for (var made : MadeShift.shift(ENGINES)) {
            var identity = made.judgement().identity();
            boolean here = Stream.of(identity).words().equals("S40/2");
            reviewer.accept(judged(made.judgement(), here && faulty.test(identity)), made.curve());
        }
        return reviewer.review(IMPORTED);
    }

    private static Judgement judged(Judgement one, boolean faulty) {
        var finding = new Finding(FindingCode.ANGLE_SLIP, Consequence.NONCONFORMING, null, null, "", "made by hand");
        return new Judgement(
                one.identity(),
                one.source(),
                one.specificationName(),
                one.specificationVersion(),
                one.signature(),
                faulty ? Verdict.NONCONFORMING : Verdict.CONFORMING,
                faulty ? List.of(finding) : List.of());
    }

    private static String page(ShiftReview review) throws IOException {
        var html = new StringWriter();
        var written = OffsetDateTime.parse("2026-03-02T15:00:00+01:00");
        ShiftPage.write(
                review,
                new Provenance("test", written, "joint.toml"),
                new Evidence("verdicts.csv", "a7".repeat(32)),
                html);
        return html.toString();
    }
}
