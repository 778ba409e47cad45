package org.tautlog.review.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.signature.MadeCurve;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.Curve;

/** Curves of good tightenings from one stream: friction, seating, yield, noise and the place where they begin all scatter. */
final class GoodCurves {
    static final TighteningMethod METHOD = new TighteningMethod(20, 360);

    private final SplittableRandom random;

    GoodCurves(long seed) {
        random = new SplittableRandom(seed);
    }

    MadeCurve next() {
        var made = new MadeCurve();
        made.seed = random.nextLong();
        made.rateNmPerDeg = 0.16 * (1 + 0.04 * random.nextGaussian());
        made.prevailingNm = 1.5 + 0.15 * random.nextGaussian();
        made.seatingDeg = 40 + 2 * random.nextGaussian();
        made.startDeg = random.nextDouble(-200, 200);
        made.rundownDeg = random.nextDouble(600, 800);
        made.kneeDeg = 440 + 8 * random.nextGaussian();
        made.kneeWidthDeg = 12;
        made.remainingRatio = 0.3;
        made.noiseShare = 0.004;
        made.stepDeg = 1;
        return made;
    }

    List<Shape> shapes(int n) {
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < n; i++) {
            shapes.add(shape(next().make()));
        }
        return shapes;
    }

    /** The envelope of as many good curves. */
    Envelope envelope(int n) {
        return Envelope.of(shapes(n)).orThrow();
    }

    /** One more good curve with something done to it. */
    MadeCurve with(Consumer<MadeCurve> fault) {
        var made = next();
        fault.accept(made);
        return made;
    }

    static Shape shape(Curve curve) {
        return Shape.of(curve, SignatureReader.read(curve, METHOD, ReadingRule.withDefaults()), METHOD)
                .orThrow();
    }
}
