package org.tautlog.spc;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;

/**
 * Integrates smooth functions by Gauss-Legendre quadrature, 20 nodes a panel.
 *
 * <pre> integral = sum over panels of half width sum weight[i] f(middle + half width node[i]) </pre>
 */
public final class Quadrature {
    private static final int NODES = 20;
    private static final double[] NODE;
    private static final double[] WEIGHT;

    static {
        var rule = new LegendreRuleFactory().getRule(NODES);
        NODE = rule.getFirst();
        WEIGHT = rule.getSecond();
    }

    private Quadrature() {}

    /**
     * {@return the integral}
     *
     * @param f the function, smooth within each panel
     * @param from lower end, finite
     * @param to upper end, finite
     * @param panels how many equal parts, at least 1
     */
    public static double integrate(DoubleUnaryOperator f, double from, double to, int panels) {
        double half = (to - from) / panels / 2;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = from + (2 * panel + 1) * half;
            for (int i = 0; i < NODES; i++) sum += WEIGHT[i] * f.applyAsDouble(middle + half * NODE[i]);
        }
        return sum * half;
    }
}
