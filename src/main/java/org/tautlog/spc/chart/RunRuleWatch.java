package org.tautlog.spc.chart;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Watches a chart point by point in constant memory and says which run rules each point breaks. Not thread-safe. */
public final class RunRuleWatch {
    private static final double LIMIT_SIGMAS = 3;

    private final EnumSet<RunRule> rules;
    private int sideRun;
    private int side;
    private int steadyRun;
    private int direction;
    private int alternatingRun;
    private int withinRun;
    private int beyondRun;
    /** Sides (-1, 0, 1) of the last points beyond 2 and 1 sigma, newest first. */
    private final int[] beyondTwo = new int[3];

    private final int[] beyondOne = new int[5];
    private boolean started;
    private double before;

    /**
     * Starts a watch.
     *
     * @param rules the rules to hold points against; may be empty
     */
    public RunRuleWatch(Set<RunRule> rules) {
        this.rules = rules.isEmpty() ? EnumSet.noneOf(RunRule.class) : EnumSet.copyOf(rules);
    }

    /**
     * Takes the next point of a chart with limits at three sigma.
     *
     * @param z distance from the centre line in standard deviations, a finite number
     * @return the rules whose pattern this point completes
     */
    public Set<RunRule> next(double z) {
        return next(z, Math.abs(z) > LIMIT_SIGMAS);
    }

    /**
     * Takes the next point.
     *
     * @param z distance from the centre line in standard deviations, a finite number
     * @param beyond whether it lies beyond the chart's own limits
     * @return the rules whose pattern this point completes
     */
    public Set<RunRule> next(double z, boolean beyond) {
        if (!Double.isFinite(z)) throw new IllegalArgumentException("z is " + z + "; it must be a finite number");
        runs(z);
        EnumSet<RunRule> broken = null;
        for (var rule : rules) {
            if (!breaks(rule, beyond)) continue;
            if (broken == null) broken = EnumSet.of(rule);
            else broken.add(rule);
        }
        return broken == null ? Set.of() : Collections.unmodifiableSet(broken);
    }

    private boolean breaks(RunRule rule, boolean beyond) {
        return switch (rule) {
            case BEYOND_LIMITS -> beyond;
            case NINE_ONE_SIDE -> sideRun >= 9;
            case EIGHT_ONE_SIDE -> sideRun >= 8;
            case SIX_STEADY -> steadyRun >= 6;
            case FOURTEEN_ALTERNATING -> alternatingRun >= 14;
            case TWO_OF_THREE -> likeTheLast(beyondTwo) >= 2;
            case FOUR_OF_FIVE -> likeTheLast(beyondOne) >= 4;
            case FIFTEEN_WITHIN -> withinRun >= 15;
            case EIGHT_BEYOND -> beyondRun >= 8;
        };
    }

    private void runs(double z) {
        int nowSide = (int) Math.signum(z);
        sideRun = nowSide == 0 ? 0 : nowSide == side ? sideRun + 1 : 1;
        side = nowSide;
        int nowDirection = started ? Double.compare(z, before) : 0;
        nowDirection = z == before ? 0 : Integer.signum(nowDirection);
        steadyRun = nowDirection == 0 ? 1 : nowDirection == direction ? steadyRun + 1 : started ? 2 : 1;
        alternatingRun = nowDirection == 0 ? 1 : nowDirection == -direction ? alternatingRun + 1 : started ? 2 : 1;
        direction = nowDirection;
        withinRun = Math.abs(z) < 1 ? withinRun + 1 : 0;
        beyondRun = Math.abs(z) > 1 ? beyondRun + 1 : 0;
        push(beyondTwo, Math.abs(z) > 2 ? nowSide : 0);
        push(beyondOne, Math.abs(z) > 1 ? nowSide : 0);
        before = z;
        started = true;
    }

    private static void push(int[] sides, int newest) {
        System.arraycopy(sides, 0, sides, 1, sides.length - 1);
        sides[0] = newest;
    }

    private static int likeTheLast(int[] sides) {
        if (sides[0] == 0) return 0;
        int like = 0;
        for (int side : sides) if (side == sides[0]) like++;
        return like;
    }
}
