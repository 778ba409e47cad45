package org.tautlog.report.judged;

import java.io.IOException;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.ShapeComparison;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Answer;

/** Where curves depart from their peers, as JSON fields: of one tightening, and of a shift. */
public final class ShapesJson {
    private ShapesJson() {}

    /**
     * One curve: {@code shape} or null, and {@code whyNoShape}, empty where there is one.
     *
     * @param json the fields of its tightening
     * @param shape how it compares with its peers
     * @param hasPlace whether the place of a departure means something
     * @throws IOException where it cannot be written
     */
    public static void one(JsonFields json, Answer<ShapeComparison> shape, boolean hasPlace) throws IOException {
        var found = shape.found();
        if (found.isEmpty()) {
            json.none("shape");
        } else {
            departure(json, found.get().departure(), hasPlace);
        }
        json.text("whyNoShape", shape.whyMissing().orElse(""));
    }

    /**
     * A shift: how many were compared, how far each envelope was learned, which conforming curves left theirs.
     *
     * @param json the fields of the shift
     * @param shapes the curves of the shift
     * @throws IOException where it cannot be written
     */
    public static void shift(JsonFields json, ShapeReview shapes) throws IOException {
        json.object("shapes", () -> {
            json.count("compared", shapes.unsuspected());
            json.count("withoutShape", shapes.withoutShape());
            json.list("streams", shapes.streams(), one -> {
                json.stream(one.stream());
                json.text("bolt", one.bolt());
                json.count("peers", one.peers());
                json.count("past", one.past());
                json.yes("learning", one.learning());
                json.count("compared", one.compared());
                json.count("leaving", one.leaving());
            });
            json.worst("outliers", shapes.outliers(), one -> {
                json.text("serial", one.tightening().serial());
                json.text("bolt", one.tightening().bolt());
                json.stream(Stream.of(one.tightening()));
                json.number("adjustedP", one.adjusted());
                departure(json, one.departure(), true);
            });
        });
    }

    private static void departure(JsonFields json, Departure departure, boolean hasPlace) throws IOException {
        json.object("shape", () -> {
            json.count("peers", departure.peers());
            json.yes("leaves", departure.leaves());
            json.number("distance", departure.distance());
            json.number("limit", departure.limit());
            json.number("p", departure.p());
            json.number("atDeg", hasPlace ? departure.atDeg() : null);
            json.number("fromDeg", hasPlace ? departure.fromDeg() : null);
            json.number("toDeg", hasPlace ? departure.toDeg() : null);
            json.number("excessNm", hasPlace ? departure.excessNm() : null);
            json.text("zone", hasPlace ? Word.of(departure.zone()) : null);
        });
    }
}
