package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.tautlog.review.stream.Cue;

/**
 * Ranks the causes of one shift of cues: each by how likely the shift would be if it were there, in a size that is not known.
 *
 * <pre>
 * d ~ t(0, M, f)      ln p = -1/2 ln |M| - (f + p)/2 ln(1 + d' M^-1 d / f)
 *
 * a cause        M = C + w^2 (s s' + diag(r s)^2)      w its usual size, s its sensitivities, r how far each is trusted
 * two at once    M = C + both of theirs
 * none of these  M = C + diag(2 spread)^2
 * chance         M = C, here and above with what good sides differ by ({@link Ordinary}) on top
 * one-off        M = 9 C: a stray of good parts; counts as chance, for single tightenings only
 *
 * likelihood = p(d | cause) x share of the cause that shows in this pattern, over the sum of all
 * </pre>
 *
 * <p>All are taken for equally likely beforehand, two at once and none of these together as likely as one cause; these and
 * chance show in each pattern alike. A single tightening was picked for lying furthest out of hundreds, and parts stray
 * further than a normal distribution lets them: so a one-off of good parts is taken for as likely as one cause.
 *
 * <p>Higher friction and lower strength of one lot together move the cues as a stiffer joint does, where no onset is reached.
 * As a new lot brings both along, the two together count there as one cause does, so that neither is named.
 *
 * <p>Source: marginal likelihood of a linear effect of unknown size under a Gaussian prior, and odds as their ratio: Kass
 * and Raftery, Journal of the American Statistical Association 90 (1995) 773-795, from memory; odds of 3 are its bound of
 * positive, of 20 that of strong evidence. The widths and trust are ours.
 */
final class Ranking {
    /** How far a sensitivity of the model may be off, as a share: joints differ from the stated one. */
    private static final double TRUST = 0.25;
    /** The knee's roundness is known least of all. */
    private static final double TRUST_OF_KNEE = 0.6;

    private static final double ONE_OFF_SPREADS = 3;
    private static final double BROAD_SPREADS = 2;
    private static final double EVEN_SHARE = 1.0 / 3;
    private static final double CLEAR = 2;

    private Ranking() {}

    static Diagnosis of(
            Moved moved,
            Sensitivities sensitivities,
            Ordinary ordinary,
            Pattern pattern,
            Against against,
            String what) {
        var causes = Cause.values();
        var effects = Arrays.stream(causes)
                .map(cause -> effect(moved, cause, sensitivities))
                .toList();
        var chance = chance(moved, ordinary, sensitivities);
        var logs = new ArrayList<Double>();
        for (int i = 0; i < causes.length; i++) {
            logs.add(logLikelihood(moved, chance.add(effects.get(i))) + Math.log(causes[i].shareIn(pattern)));
        }
        var best = causes[logs.indexOf(Collections.max(logs))];
        logs.add(logChance(moved, chance, ordinary));
        logs.add(logLikelihood(moved, chance.add(broad(moved))) + Math.log(EVEN_SHARE / 2));
        List<Cause> pair = List.of();
        double likeliest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < causes.length; i++) {
            for (int j = 0; j < i; j++) {
                var both = chance.add(effects.get(i)).add(effects.get(j));
                double log = logLikelihood(moved, both) + Math.log(shareOfBoth(causes[i], causes[j], pattern, best));
                logs.add(log);
                if (log > likeliest) {
                    likeliest = log;
                    pair = List.of(causes[j], causes[i]);
                }
            }
        }
        double highest = logs.stream().mapToDouble(log -> log).max().orElseThrow();
        var shares = logs.stream().mapToDouble(log -> Math.exp(log - highest)).toArray();
        double all = Arrays.stream(shares).sum();
        var ranked = new ArrayList<RankedCause>();
        for (int i = 0; i < causes.length; i++) {
            var solver = decomposed(chance.add(effects.get(i))).getSolver();
            double size = Math.pow(causes[i].usualSize(), 2)
                    * effects(moved, causes[i], sensitivities).dotProduct(solver.solve(moved.shift()));
            ranked.add(new RankedCause(
                    causes[i], shares[i] / all, size, clues(moved, chance, causes[i], size, sensitivities)));
        }
        ranked.sort(Comparator.comparingDouble(RankedCause::likelihood).reversed());
        double other = Arrays.stream(shares, causes.length + 1, shares.length).sum();
        return new Diagnosis(pattern, against, what, ranked, pair, other / all, shares[causes.length] / all, "");
    }

    /**
     * Coating and heat are both new with a bolt lot, so there the two together count as one cause beside any that comes not
     * with bolts; any other two meet by chance.
     */
    private static double shareOfBoth(Cause one, Cause other, Pattern pattern, Cause best) {
        double share = Math.min(one.shareIn(pattern), other.shareIn(pattern));
        boolean ofBolts = one.comesWithBolts() && other.comesWithBolts() && !best.comesWithBolts();
        double pairs = Cause.values().length * (Cause.values().length - 1);
        return pattern == Pattern.ONE_LOT && ofBolts ? share : share / pairs;
    }

    private static RealVector effects(Moved moved, Cause cause, Sensitivities sensitivities) {
        return MatrixUtils.createRealVector(moved.cues().stream()
                .mapToDouble(cue -> sensitivities.of(cause, cue))
                .toArray());
    }

    private static double trust(Cue cue) {
        return cue == Cue.END_GRADIENT ? TRUST_OF_KNEE : TRUST;
    }

    /** What one cause of unknown size adds to the covariance. */
    private static RealMatrix effect(Moved moved, Cause cause, Sensitivities sensitivities) {
        var effects = effects(moved, cause, sensitivities).mapMultiply(cause.usualSize());
        var matrix = effects.outerProduct(effects);
        for (int i = 0; i < effects.getDimension(); i++) {
            matrix.addToEntry(i, i, Math.pow(trust(moved.cues().get(i)) * effects.getEntry(i), 2));
        }
        return matrix;
    }

    /**
     * How likely a shift so far along any one cause is among good sides, 0 to 1.
     *
     * <pre>
     * T^2 = (s' M^-1 d)^2 / s' M^-1 s ~ F(1, f - p + 1)      least p of all causes, times their number (Bonferroni)
     * </pre>
     */
    static double pOfChance(Moved moved, Sensitivities sensitivities, Ordinary ordinary) {
        var solver = decomposed(chance(moved, ordinary, sensitivities)).getSolver();
        var weighed = solver.solve(moved.shift());
        var distribution = FDistribution.of(1, moved.freedom() - moved.cues().size() + 1.0);
        return Cause.values().length
                * Arrays.stream(Cause.values())
                        .map(cause -> effects(moved, cause, sensitivities))
                        .filter(effects -> effects.getNorm() > 0)
                        .mapToDouble(effects -> distribution.survivalProbability(
                                Math.pow(effects.dotProduct(weighed), 2) / effects.dotProduct(solver.solve(effects))))
                        .min()
                        .orElse(1);
    }

    private static double logChance(Moved moved, RealMatrix chance, Ordinary ordinary) {
        double log = logLikelihood(moved, chance) + Math.log(EVEN_SHARE);
        if (!ordinary.oneOff()) {
            return log;
        }
        double stray = logLikelihood(moved, chance.scalarMultiply(ONE_OFF_SPREADS * ONE_OFF_SPREADS));
        return Math.max(log, stray) + Math.log1p(Math.exp(-Math.abs(log - stray)));
    }

    private static RealMatrix chance(Moved moved, Ordinary ordinary, Sensitivities sensitivities) {
        var matrix = moved.covariance();
        for (var one : ordinary.sizes().entrySet()) {
            double times = one.getValue() / one.getKey().usualSize();
            matrix = matrix.add(effect(moved, one.getKey(), sensitivities).scalarMultiply(times * times));
        }
        for (int i = 0; i < moved.cues().size(); i++) {
            double own = ordinary.spreads().getOrDefault(moved.cues().get(i), 0.0);
            matrix.addToEntry(i, i, own * own);
        }
        return matrix;
    }

    private static RealMatrix broad(Moved moved) {
        var spreads = new double[moved.cues().size()];
        for (int i = 0; i < spreads.length; i++) {
            spreads[i] = Math.pow(BROAD_SPREADS * moved.spread(i), 2);
        }
        return MatrixUtils.createRealDiagonalMatrix(spreads);
    }

    private static double logLikelihood(Moved moved, RealMatrix matrix) {
        var decomposed = decomposed(matrix);
        var factor = decomposed.getL();
        double logDeterminant = 0;
        for (int i = 0; i < factor.getRowDimension(); i++) {
            logDeterminant += 2 * Math.log(factor.getEntry(i, i));
        }
        double distance = moved.shift().dotProduct(decomposed.getSolver().solve(moved.shift()));
        double f = moved.freedom();
        return -0.5 * logDeterminant - 0.5 * (f + factor.getRowDimension()) * Math.log1p(distance / f);
    }

    private static CholeskyDecomposition decomposed(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, 1e-10, 0);
    }

    private static List<Clue> clues(
            Moved moved, RealMatrix chance, Cause cause, double size, Sensitivities sensitivities) {
        var clues = new ArrayList<Clue>();
        for (int i = 0; i < moved.cues().size(); i++) {
            var cue = moved.cues().get(i);
            double seen = moved.shift().getEntry(i);
            double foretold = size * sensitivities.of(cause, cue);
            double error = Math.sqrt(chance.getEntry(i, i));
            double miss = Math.abs(seen - foretold) / Math.hypot(error, trust(cue) * foretold);
            boolean moves = Math.abs(seen) > CLEAR * error && Math.abs(foretold) > error && seen * foretold > 0;
            if (miss > CLEAR || moves) {
                clues.add(new Clue(cue, seen, foretold, seen / moved.spread(i), miss <= CLEAR));
            }
        }
        return clues;
    }
}
