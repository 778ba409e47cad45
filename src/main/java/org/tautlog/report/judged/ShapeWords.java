package org.tautlog.report.judged;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.report.chart.ShapeChart;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.ShiftClock;
import org.tautlog.review.Listed;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.shape.ComparedShape;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.Envelope;
import org.tautlog.review.shape.ShapeComparison;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.shape.ShapeStream;
import org.tautlog.review.stream.Stream;

/** What the shapes of curves say beside each other, in sentences made of the review's own numbers. */
public final class ShapeWords {
    private static final int MOST_LEARNING = 12;
    /** Standard deviations beyond which a number means no more than far. */
    private static final double MOST_TOLD = 20;

    private static final int MOST_LISTED = 20;
    private static final int MOST_DRAWN = 6;

    private ShapeWords() {}

    /** Where one curve departs from its peers, or that it does not, or why that is not known. */
    static String sentence(Listed listed) {
        return listed.shape()
                .found()
                .map(found -> Sentence.capital(words(found.departure(), listed.shapeHasPlace())) + '.')
                .orElseGet(() -> "Not held against an envelope of peers: "
                        + listed.shape().whyMissing().orElse("") + '.');
    }

    /**
     * Where one curve departs from its peers as the part of a sentence; quiet about the place where it has none.
     *
     * @param departure how far it departs, and where
     * @param hasPlace whether the place means something
     * @return the words, without capital and full stop
     */
    public static String words(Departure departure, boolean hasPlace) {
        if (hasPlace) {
            return words(departure);
        }
        return departure.leaves()
                ? "its curve leaves the envelope of " + departure.peers()
                        + " peers; where it does is not known, as degrees that turned no bolt tilt the line that it is"
                        + " measured by"
                : "its curve stays within the envelope of " + departure.peers() + " peers";
    }

    private static String words(Departure departure) {
        var limit = departure.distance() > MOST_TOLD
                ? "far beyond the limit of " + Figures.of(departure.limit(), 1) + " standard deviations"
                : Figures.of(departure.distance(), 1) + " standard deviations, the limit is "
                        + Figures.of(departure.limit(), 1);
        var at = Figures.of(departure.atDeg(), 0) + " deg";
        if (!departure.leaves()) {
            return "its curve stays within the envelope of " + departure.peers()
                    + " peers; furthest from their middle at " + at + " past the elastic origin, by " + limit;
        }
        return "its curve leaves the envelope of " + departure.peers() + " peers from "
                + Figures.of(departure.fromDeg(), 0) + " to " + Figures.of(departure.toDeg(), 0)
                + " deg past the elastic origin (" + departure.zone().title() + "): "
                + Figures.of(Math.abs(departure.excessNm()), 1) + " N·m too "
                + (departure.excessNm() > 0 ? "much" : "little") + " at " + at + ", " + limit;
    }

    /**
     * How many curves of a shift leave their envelopes, beside what chance gives, and which streams are still being learned.
     *
     * @param shapes the curves of a shift
     * @return the sentences, at least one
     */
    public static String summary(ShapeReview shapes) {
        var learning = shapes.streams().stream().filter(ShapeStream::learning).toList();
        return (shapes.unsuspected() == 0
                        ? "No curve could be held against an envelope."
                        : "Of " + Figures.count(shapes.unsuspected(), "conforming curve", "conforming curves")
                                + " held against the envelope of those before it, "
                                + shapes.outliers().size()
                                + " left it; chance alone gives about " + Figures.of(shapes.expected(), 1)
                                + ". A dossier holds a curve against later ones too, so the two may differ.")
                + past(shapes.streams())
                + (learning.isEmpty() ? "" : ' ' + learning(learning));
    }

    private static String past(List<ShapeStream> streams) {
        int past = streams.stream().mapToInt(ShapeStream::past).sum();
        return past == 0
                ? ""
                : " Learned from " + Figures.count(past, "conforming curve", "conforming curves")
                        + " of before the shift, out of the archive, and on from there.";
    }

    private static String learning(List<ShapeStream> learning) {
        return "Still learning, with fewer than " + Envelope.LEAST_PEERS + " conforming curves: "
                + learning.stream()
                        .limit(MOST_LEARNING)
                        .map(one -> name(one) + " (" + one.peers() + ')')
                        .collect(Collectors.joining(", "))
                + (learning.size() > MOST_LEARNING ? " and " + (learning.size() - MOST_LEARNING) + " more" : "") + '.';
    }

    private static String name(ShapeStream one) {
        return one.stream().words() + (one.bolt().isEmpty() ? "" : " bolt " + one.bolt());
    }

    /** The drawing of a curve that leaves its envelope; empty where it does not, or where its place means nothing. */
    static String chart(Listed listed, String id) {
        return listed.shapeHasPlace() ? chart(listed.shape().found(), id) : "";
    }

    private static String chart(Optional<ShapeComparison> shape, String id) {
        return shape.filter(found -> found.departure().leaves())
                .map(found -> ShapeChart.svg(found, id, Sentence.capital(words(found.departure()))))
                .orElse("");
    }

    /**
     * Puts what the curves of a shift show into the model of its page.
     *
     * @param model what the page shows, by the names that its template uses
     * @param review the shift
     */
    public static void addTo(Map<String, Object> model, ShiftReview review) {
        var outliers = review.shapes().outliers();
        var clock = ShiftClock.of(review);
        model.put("shapes", summary(review.shapes()));
        model.put(
                "shapeOutliers",
                outliers.stream().limit(MOST_LISTED).map(one -> row(one, clock)).toList());
        model.put("shapeOutliersLeft", Math.max(0, outliers.size() - MOST_LISTED));
        model.put("shapeOneIn", Envelope.ONE_IN);
        model.put("shapeLeast", Envelope.LEAST_PEERS);
        model.put("shapeMost", Envelope.MOST_PEERS);
        model.put(
                "shapeCharts",
                outliers.stream()
                        .limit(MOST_DRAWN)
                        .map(one -> Map.of(
                                "name",
                                one.tightening().serial() + " bolt "
                                        + one.tightening().bolt() + ", "
                                        + Stream.of(one.tightening()).words(),
                                "svg",
                                chart(one.comparison(), "shape" + outliers.indexOf(one))))
                        .toList());
    }

    private static Map<String, Object> row(ComparedShape one, ShiftClock clock) {
        var identity = one.tightening();
        var departure = one.departure();
        return Map.of(
                "serial", identity.serial(),
                "bolt", identity.bolt(),
                "stream", Stream.of(identity).words(),
                "time", clock.words(identity.time()),
                "zone", departure.zone().title(),
                "from", Figures.of(departure.fromDeg(), 0),
                "to", Figures.of(departure.toDeg(), 0),
                "excess", Figures.of(departure.excessNm(), 1),
                "distance",
                        (departure.distance() > MOST_TOLD
                                        ? "over " + Figures.of(MOST_TOLD, 0)
                                        : Figures.of(departure.distance(), 1))
                                + " of " + Figures.of(departure.limit(), 1),
                "adjusted", one.adjusted() < 0.001 ? "below 0.001" : Figures.of(one.adjusted(), 3));
    }
}
