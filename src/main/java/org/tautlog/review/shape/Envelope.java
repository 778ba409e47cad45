package org.tautlog.review.shape;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Where the shapes of good curves run: a middle, and a band around it that one more good curve leaves anywhere along its
 * length once in {@value #ONE_IN}.
 *
 * <pre>
 * d(i) = (e(i) - mean(i)) / (s(i) sqrt(1 + 1/n(i)))          D = max over i of |d(i)|
 * P(D > k) = 1 - F(k)^m                                       F(k) = P(|t| less than k)
 * </pre>
 *
 * e is the shape, mean and s those of the peers at step i, t has n - 2 degrees of freedom. As neighbouring steps resemble
 * each other, m is not the number of steps: it is told from the peers themselves, each left out in turn, so that half of them
 * lie within their median distance. Only that median is taken from the peers and the t distribution tells the rest, since a
 * few dozen curves cannot show what happens once in a thousand. More than {@value #MOST_DEGREES} degrees of freedom are
 * never used: bolts near their yield have longer tails than the normal distribution.
 *
 * <p>The rate holds for curves that come from the same lot of parts as the peers; a change of the parts is seen, as it
 * should be, until the peers are of the new lot.
 *
 * <p>Source: one factor times the pointwise deviation, set by the greatest standardised deviation: Olshen, Biden, Wyatt and
 * Sutherland, Annals of Statistics 17 (1989) 1419-1440, from memory; they draw the greatest deviation by bootstrap. The t
 * distribution in its place and the largest degrees of freedom are ours, measured on simulated lines.
 */
public final class Envelope {
    /** One good curve in so many leaves the band. */
    public static final int ONE_IN = 1000;

    /** How the reason begins why there is no envelope yet. */
    public static final String LEARNING = "still learning";

    /** Fewer peers than this, and the band is still being learned. */
    public static final int LEAST_PEERS = 24;

    /** More peers than this are not used; the latest count. */
    public static final int MOST_PEERS = 64;

    private static final int MOST_DEGREES = 16;
    private static final double MOST_PLACES = 1e6;

    private final int peers;
    private final Course course;
    private final TDistribution distribution;
    private final double places;
    private final double limit;

    private Envelope(int peers, Course course, double medianDistance) {
        this.peers = peers;
        this.course = course;
        distribution = TDistribution.of(Math.min(MOST_DEGREES, peers - 2));
        places = Math.max(1, Math.min(MOST_PLACES, Math.log(0.5) / logInside(medianDistance)));
        double beyondOne = -Math.expm1(Math.log1p(-1.0 / ONE_IN) / places);
        limit = distribution.inverseSurvivalProbability(beyondOne / 2);
    }

    /**
     * Learns an envelope.
     *
     * @param peers shapes of conforming tightenings, with the same steps; of too many the last {@value #MOST_PEERS} count
     * @return the envelope; missing while it is still being learned
     */
    public static Answer<Envelope> of(List<Shape> peers) {
        int n = peers.size();
        if (n < LEAST_PEERS) {
            return Answer.missing(Reason.TOO_FEW, LEARNING + ": " + n + " of " + LEAST_PEERS + " conforming peers");
        }
        var last = peers.subList(Math.max(0, n - MOST_PEERS), n);
        var steps = Spread.along(last);
        var own = last.stream().mapToDouble(shape -> ownDistance(shape, steps)).toArray();
        return Answer.of(new Envelope(
                last.size(), Course.of(steps, LEAST_PEERS), Sample.derived(own).median()));
    }

    /** {@return how many curves it was learned from} */
    public int peers() {
        return peers;
    }

    /** {@return the distance that one good curve in {@value #ONE_IN} exceeds anywhere} */
    public double limit() {
        return limit;
    }

    /** {@return how many steps were met; not each of them has enough peers} */
    public int size() {
        return course.size();
    }

    /**
     * {@return whether enough peers have a step for it to be known}
     *
     * @param step the step, from 0
     */
    public boolean known(int step) {
        return course.known(step);
    }

    /**
     * {@return the middle of the peers at a step, deg of the own elastic line}
     *
     * @param step a known step
     */
    public double middleDeg(int step) {
        return course.middleDeg(step);
    }

    /**
     * {@return how far the band goes to either side of the middle at a step, deg of the own elastic line}
     *
     * @param step a known step
     */
    public double halfWidthDeg(int step) {
        return limit * course.deviationDeg(step);
    }

    /**
     * Holds a curve against the envelope. It must not be one of the peers.
     *
     * @param shape the curve's shape
     * @return where it lies furthest out; missing where they have no step in common
     */
    public Answer<Departure> departure(Shape shape) {
        int at = course.furthest(shape);
        if (at < 0) {
            return Answer.missing(Reason.TOO_FEW, "no part of the curve is known of enough peers");
        }
        double distance = Math.abs(course.distance(shape, at));
        return Answer.of(new Departure(
                peers,
                distance,
                limit,
                -Math.expm1(places * logInside(distance)),
                shape.angleDeg(at),
                shape.angleDeg(edge(shape, at, -1)) - shape.stepDeg() / 2,
                shape.angleDeg(edge(shape, at, 1)) + shape.stepDeg() / 2,
                shape.torqueNm(shape.equivalentDeg(at)) - shape.torqueNm(middleDeg(at)),
                shape.zone(at)));
    }

    /** The last step beyond the limit on the same side. */
    private int edge(Shape shape, int at, int direction) {
        double side = Math.signum(course.distance(shape, at));
        int step = at;
        while (side * course.distance(shape, step + direction) > limit) {
            step += direction;
        }
        return step;
    }

    /** Logarithm of the share within a distance at one place. */
    private double logInside(double distance) {
        return Math.log1p(-2 * distribution.survivalProbability(distance));
    }

    /** How far one of the peers lies from the others. */
    private static double ownDistance(Shape shape, List<Spread> steps) {
        var others = Course.of(Spread.without(steps, shape), LEAST_PEERS - 1);
        int at = others.furthest(shape);
        return at < 0 ? 0 : Math.abs(others.distance(shape, at));
    }
}
