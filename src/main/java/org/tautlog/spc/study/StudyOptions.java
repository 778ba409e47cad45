package org.tautlog.spc.study;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.IndividualsSpread;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.SubgroupOptions;
import org.tautlog.spc.chart.SubgroupSpread;
import org.tautlog.spc.count.CountOptions;
import org.tautlog.spc.multivariate.HotellingOptions;
import org.tautlog.spc.stream.StreamsOptions;
import org.tautlog.spc.timeweighted.CusumOptions;
import org.tautlog.spc.timeweighted.EwmaOptions;

/**
 * How a study is made.
 *
 * @param rules the run rules switched on; they watch single values, means, counts and the mean of streams
 * @param width distance of the limits in standard deviations, above 0; null for each chart's usual one
 * @param subgroupSize how many values running make a subgroup, at least 2; null where names make them
 * @param lambda weight of the newest value of moving averages, above 0 up to 1
 * @param reference k of cumulative sums, in standard deviations, above 0
 * @param decision h of cumulative sums, in standard deviations, above 0
 * @param headStart where cumulative sums start
 * @param falseAlarm chance of a false signal that T squared and streams are made for; null for each chart's usual one
 * @param neighbours what to do where neighbouring values resemble each other
 * @param phaseOne how points beyond the limits are left out of them
 * @param known centre and standard deviation taken as known; null where they come from the data
 */
public record StudyOptions(
        Set<RunRule> rules,
        @Nullable Double width,
        @Nullable Integer subgroupSize,
        double lambda,
        double reference,
        double decision,
        CusumOptions.HeadStart headStart,
        @Nullable Double falseAlarm,
        IndividualsOptions.Neighbours neighbours,
        PhaseOneOptions phaseOne,
        @Nullable Known known) {
    private static final double USUAL_WIDTH = 3;

    /**
     * A centre and a standard deviation of single values that are taken as known.
     *
     * @param centre where the process should lie
     * @param sigma standard deviation of single values, above 0
     */
    public record Known(double centre, double sigma) {
        /** Checks the ranges. */
        public Known {
            if (!Double.isFinite(centre))
                throw new IllegalArgumentException("centre is " + centre + "; it must be finite");
            if (!(sigma > 0 && Double.isFinite(sigma)))
                throw new IllegalArgumentException("sigma is " + sigma + "; it must be above 0 and finite");
        }
    }

    /** Checks the ranges and copies the set. */
    public StudyOptions {
        rules = Set.copyOf(rules);
        if (width != null && !(width > 0 && width < 100))
            throw new IllegalArgumentException("width is " + width + "; it must lie between 0 and 100 sigma");
        if (subgroupSize != null && (subgroupSize < 2 || subgroupSize > 1000))
            throw new IllegalArgumentException("subgroup size is " + subgroupSize + "; it must lie from 2 to 1000");
        if (!(lambda > 0 && lambda <= 1))
            throw new IllegalArgumentException("lambda is " + lambda + "; it must lie above 0 and up to 1");
        if (!(reference > 0 && decision > 0))
            throw new IllegalArgumentException(
                    "reference is " + reference + " and decision " + decision + "; both must be above 0");
        if (falseAlarm != null && !(falseAlarm > 0 && falseAlarm < 0.5))
            throw new IllegalArgumentException("false alarm is " + falseAlarm + "; it must lie between 0 and 0.5");
    }

    /** {@return what each chart does unless told otherwise} */
    public static StudyOptions withDefaults() {
        return new StudyOptions(
                RunRule.limitsOnly(),
                null,
                null,
                EwmaOptions.withDefaults().lambda(),
                CusumOptions.withDefaults().reference(),
                CusumOptions.withDefaults().decision(),
                CusumOptions.HeadStart.NONE,
                null,
                IndividualsOptions.Neighbours.WIDEN,
                PhaseOneOptions.withDefaults(),
                null);
    }

    private double widthOr(double usual) {
        return width == null ? usual : width;
    }

    IndividualsOptions individuals() {
        return new IndividualsOptions(
                IndividualsSpread.MEAN_MOVING_RANGE, widthOr(USUAL_WIDTH), rules, neighbours, phaseOne);
    }

    SubgroupOptions subgroups(SubgroupSpread spread) {
        return new SubgroupOptions(spread, widthOr(USUAL_WIDTH), rules, neighbours, phaseOne);
    }

    EwmaOptions ewma() {
        var usual = EwmaOptions.withDefaults();
        return new EwmaOptions(lambda, widthOr(usual.width()), usual.form(), neighbours);
    }

    CusumOptions cusum() {
        return new CusumOptions(reference, decision, headStart, neighbours);
    }

    CountOptions counts() {
        return new CountOptions(widthOr(USUAL_WIDTH), rules, neighbours, phaseOne);
    }

    HotellingOptions hotelling() {
        double usual = HotellingOptions.withDefaults().falseAlarm();
        return new HotellingOptions(falseAlarm == null ? usual : falseAlarm, neighbours, phaseOne);
    }

    StreamsOptions streams() {
        var usual = StreamsOptions.withDefaults();
        return new StreamsOptions(
                falseAlarm == null ? usual.falseAlarm() : falseAlarm, usual.leastValues(), individuals(), phaseOne);
    }

    /** Limits of single values from what is taken as known. */
    IndividualsLimits limits(Known stated) {
        return IndividualsLimits.stated(stated.centre(), stated.sigma(), individuals());
    }
}
