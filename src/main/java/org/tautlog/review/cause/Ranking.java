package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Ranks the causes of one shift of cues: each by how likely the shift would be if it were there, in a size that is not known.
 *
 * <pre>
 * d ~ t(0, M, f)      ln p = -1/2 ln |M| - (f + p)/2 ln(1 + d' M^-1 d / f)
 *
 * a cause        M = C + w^2 (s s' + diag(r s)^2)      w its usual size, s its sensitivities, r how far each is trusted
 * two at once    M = C + both of theirs
 * none of these  M = C + diag(2 spread)^2
 * chance         M = C; for a lot, here and above, what good lots differ by on top
 *
 * likelihood = p(d | cause) x share of the cause that shows in this pattern, over the sum of all
 * </pre>
 *
 * <p>All are taken for equally likely beforehand, two at once and none of these together as likely as one cause; these and
 * chance show in each pattern alike.
 *
 * <p>Higher friction and lower strength of one lot together move the cues as a stiffer joint does, where no onset is reached:
 * then the one cause is named that explains both.
 *
 * <p>Source: marginal likelihood of a linear effect of unknown size under a Gaussian prior, and odds as their ratio: Kass
 * and Raftery, Journal of the American Statistical Association 90 (1995) 773-795, from memory; odds of 3 are its bound of
 * positive evidence. The widths and trust are ours.
 */
final class Ranking {
    /** How far a sensitivity of the model may be off, as a share: joints differ from the stated one. */
    private static final double TRUST = 0.25;
    /** The knee's roundness is known least of all. */
    private static final double TRUST_OF_KNEE = 0.6;

    /** Lots that are as they should be differ by so much of a cause's usual size: friction 2 %, strength 1 %. */
    private static final double GOOD_LOTS = 0.25;

    private static final double BROAD_SPREADS = 2;
    private static final double EVEN_SHARE = 1.0 / 3;
    private static final double CLEAR = 2;

    private Ranking() {}

    static Diagnosis of(Moved moved, Sensitivities sensitivities, Pattern pattern, String what) {
        var causes = Cause.values();
        var effects = Arrays.stream(causes)
                .map(cause -> effect(moved, cause, sensitivities))
                .toList();
        var chance = chance(moved, pattern, sensitivities);
        var logs = new ArrayList<Double>();
        for (int i = 0; i < causes.length; i++) {
            logs.add(logLikelihood(moved, chance.add(effects.get(i))) + Math.log(causes[i].shareIn(pattern)));
        }
        logs.add(logLikelihood(moved, chance) + Math.log(EVEN_SHARE));
        logs.add(logLikelihood(moved, chance.add(broad(moved))) + Math.log(EVEN_SHARE / 2));
        double pairs = causes.length * (causes.length - 1);
        for (int i = 0; i < causes.length; i++) {
            for (int j = 0; j < i; j++) {
                var both = chance.add(effects.get(i)).add(effects.get(j));
                logs.add(logLikelihood(moved, both)
                        + Math.log(Math.min(causes[i].shareIn(pattern), causes[j].shareIn(pattern)) / pairs));
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
        return new Diagnosis(pattern, what, ranked, other / all, shares[causes.length] / all, "");
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

    /** What is there without any cause: scatter, and between lots what good lots differ by in friction and strength. */
    private static RealMatrix chance(Moved moved, Pattern pattern, Sensitivities sensitivities) {
        if (pattern != Pattern.ONE_LOT) {
            return moved.covariance();
        }
        var ordinary =
                effect(moved, Cause.FRICTION, sensitivities).add(effect(moved, Cause.BOLT_STRENGTH, sensitivities));
        return moved.covariance().add(ordinary.scalarMultiply(GOOD_LOTS * GOOD_LOTS));
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
