package org.tautlog.joint.study;

import java.util.Locale;

/**
 * What rules the scatter of the cold clamp load after the first warm-up.
 *
 * <p>The warm-up clips: a bolt above hot yield less the thermal load comes down to it, a bolt below stays. Scatter falls only
 * where tightening scatters more than hot yield less the thermal load does.
 *
 * <pre>
 * F_cold = min(F_tightened, F_y,hot - dF)      CV of the clipped = CV_y F_y,hot / (F_y,hot - dF)
 * </pre>
 *
 * Source: elementary plasticity.
 *
 * @param rule which scatter rules
 * @param clippedShare share of bolts that reach hot yield
 * @param beforeVariation coefficient of variation of the clamp load as tightened
 * @param afterVariation coefficient of variation of the cold clamp load after the warm-up
 * @param amplification by how much yield scatter grows in the clipped bolts' cold clamp load: F_y,hot / (F_y,hot - dF), means
 */
public record ScatterLeft(
        Rule rule, double clippedShare, double beforeVariation, double afterVariation, double amplification) {
    /** Which scatter rules; the bounds at 5 and 95 % are this study's own. */
    public enum Rule {
        /** Fewer than 5 % reach hot yield: what the tightening left stays. */
        TIGHTENING("the scatter of the tightening stays"),
        /** Some reach hot yield, some do not: the high end is cut by yield, the low end is the tightening's. */
        BOTH("the high end is cut by yield, the low end is still the tightening's"),
        /** More than 95 % reach hot yield: yield strength rules, friction and tool hardly do. */
        YIELD_STRENGTH("yield strength rules");

        private final String words;

        Rule(String words) {
            this.words = words;
        }

        static Rule of(double clippedShare) {
            if (clippedShare < 0.05) return TIGHTENING;
            return clippedShare > 0.95 ? YIELD_STRENGTH : BOTH;
        }
    }

    /**
     * The finding in a sentence, with its numbers.
     *
     * @return English
     */
    public String sentence() {
        return String.format(
                Locale.ROOT,
                "%.1f %% of bolts reach hot yield: %s. Coefficient of variation %.1f %% as tightened, %.1f %% cold after the "
                        + "first warm-up; yield scatter counts %.2f-fold in a clipped bolt.",
                100 * clippedShare,
                rule.words,
                100 * beforeVariation,
                100 * afterVariation,
                amplification);
    }
}
