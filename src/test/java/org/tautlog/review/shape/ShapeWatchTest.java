package org.tautlog.review.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.signature.MadeCurve;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

class ShapeWatchTest {
    private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-17T06:00:00+01:00");

    private record Made(Judgement judgement, Curve curve) {}

    private final GoodCurves good = new GoodCurves(9);

    @Test
    void a_stream_is_learning_until_it_has_enough_conforming_curves() {
        var watch = watch(good(Envelope.LEAST_PEERS - 1));
        var stream = watch.review().streams().get(0);
        assertTrue(stream.learning());
        assertEquals(Envelope.LEAST_PEERS - 1, stream.peers());
        assertEquals(0, stream.compared());
        assertEquals(
                "still learning: 23 of 24 conforming peers",
                Envelope.of(good.shapes(23)).whyMissing().orElseThrow());
    }

    @Test
    void the_next_curve_is_compared_with_those_before_it_only() {
        var made = good(60);
        made.set(30, made(30, 1, Verdict.CONFORMING, early()));
        var review = watch(made).review();
        assertEquals(60 - Envelope.LEAST_PEERS, review.compared().size());
        assertEquals(1, review.outliers().size());
        var outlier = review.outliers().get(0);
        assertEquals(serial(30), outlier.tightening().serial());
        assertEquals(28, outlier.departure().peers());
        assertTrue(outlier.adjusted() < 0.01);
    }

    @Test
    void reading_order_does_not_matter() {
        var made = good(40);
        var inOrder = watch(made).review();
        Collections.shuffle(made, new Random(4));
        var shuffled = watch(made).review();
        assertEquals(departures(inOrder), departures(shuffled));
    }

    @Test
    void what_does_not_conform_is_compared_and_never_learned_from_nor_counted_as_a_false_signal() {
        var made = good(30);
        for (int i = 30; i < 90; i++) {
            made.add(made(i, 1, i % 2 == 0 ? Verdict.NONCONFORMING : Verdict.UNJUDGED, early()));
        }
        var review = watch(made).review();
        assertEquals(30, review.streams().get(0).peers());
        assertEquals(60, review.streams().get(0).leaving());
        assertEquals(6, review.unsuspected());
        assertEquals(0, review.outliers().size());
        assertEquals(0.006, review.expected(), 1e-12);
    }

    @Test
    void later_attempts_are_neither_learned_from_nor_compared() {
        var made = good(30);
        made.add(made(30, 2, Verdict.CONFORMING, early()));
        var review = watch(made).review();
        assertEquals(6, review.compared().size());
        assertEquals(
                "a later attempt is no peer of first ones",
                review.of(made.get(30).judgement().identity()).whyMissing().orElseThrow());
    }

    @Test
    void a_curve_without_an_elastic_line_has_no_shape_and_is_counted() {
        var made = good(3);
        var flat = Curve.of(new double[] {0, 100, 200, 300, 400, 500}, new double[] {1, 1, 1, 1, 1, 1});
        made.add(made(3, 1, Verdict.UNJUDGED, flat));
        assertEquals(1, watch(made).review().withoutShape());
    }

    @Test
    void what_an_archive_kept_is_learned_from_so_that_the_first_curve_is_compared() {
        var made = good(40);
        var watch = new ShapeWatch(GoodCurves.METHOD);
        made.subList(0, 32).forEach(one -> watch.learn(one.judgement(), one.curve()));
        watch.learn(made(99, 1, Verdict.REVIEW, early()).judgement(), early());
        made.subList(32, 40).forEach(one -> watch.accept(one.judgement(), one.curve()));
        var review = watch.review();
        assertEquals(8, review.compared().size());
        assertEquals(32, review.compared().get(0).departure().peers());
        var stream = review.streams().get(0);
        assertEquals(32, stream.past());
        assertEquals(40, stream.peers());
    }

    @Test
    void after_a_lasting_change_the_envelope_follows_the_new_parts() {
        var made = good(60);
        for (int i = 60; i < 140; i++) {
            var later = good.next();
            later.kneeDeg -= 60;
            made.add(made(i, 1, Verdict.CONFORMING, later.make()));
        }
        var compared = watch(made).review().compared();
        assertTrue(compared.get(60 - Envelope.LEAST_PEERS).departure().leaves());
        assertFalse(compared.get(compared.size() - 1).departure().leaves());
    }

    private Curve early() {
        return good.with(one -> one.kneeDeg = 330).make();
    }

    private List<Made> good(int n) {
        var made = new ArrayList<Made>();
        for (int i = 0; i < n; i++) {
            MadeCurve curve = good.next();
            made.add(made(i, 1, Verdict.CONFORMING, curve.make()));
        }
        return made;
    }

    private static Made made(int i, int attempt, Verdict verdict, Curve curve) {
        var identity = new TraceIdentity(serial(i), "S40", "2", "5", attempt, START.plusMinutes(i), "A17");
        var signature = SignatureReader.read(curve, GoodCurves.METHOD, ReadingRule.withDefaults());
        var source = new Source("made.csv", 2 + i, "ab12".repeat(16));
        return new Made(new Judgement(identity, source, "made", "1", signature, verdict, List.of()), curve);
    }

    private static String serial(int i) {
        return String.format(Locale.ROOT, "FW-%06d", i + 1);
    }

    private static ShapeWatch watch(List<Made> made) {
        var watch = new ShapeWatch(GoodCurves.METHOD);
        made.forEach(one -> watch.accept(one.judgement(), one.curve()));
        return watch;
    }

    private static List<Departure> departures(ShapeReview review) {
        return review.compared().stream().map(ComparedShape::departure).toList();
    }
}
