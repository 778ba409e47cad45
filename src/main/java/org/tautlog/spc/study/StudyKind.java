package org.tautlog.spc.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.SubgroupLimits;
import org.tautlog.spc.count.CountLimits;
import org.tautlog.spc.count.CountModel;
import org.tautlog.spc.multivariate.HotellingLimits;
import org.tautlog.spc.stream.StreamsLimits;
import org.tautlog.spc.timeweighted.CusumLimits;
import org.tautlog.spc.timeweighted.EwmaLimits;

/** The charts that can be asked for by name. */
public enum StudyKind {
    /** Single values with moving ranges. */
    INDIVIDUALS("individuals", "single values", IndividualsLimits.class),
    /** Means of subgroups with their ranges. */
    MEAN_RANGE("mean-range", "means and ranges of subgroups", SubgroupLimits.class),
    /** Means of subgroups with their standard deviations. */
    MEAN_DEVIATION("mean-deviation", "means and standard deviations of subgroups", SubgroupLimits.class),
    /** Exponentially weighted moving averages. */
    EWMA("ewma", "exponentially weighted moving averages", EwmaLimits.class),
    /** Cumulative sums. */
    CUSUM("cusum", "cumulative sums", CusumLimits.class),
    /** Hotelling's T squared. */
    T_SQUARED("t2", "Hotelling's T squared of several columns", HotellingLimits.class),
    /** Fractions of items. */
    FRACTION("p", "fractions of the amount", CountLimits.class),
    /** Numbers of items. */
    NUMBER("np", "numbers out of equal amounts", CountLimits.class),
    /** Faults in equal amounts. */
    FAULTS("c", "faults in equal amounts", CountLimits.class),
    /** Faults for each unit. */
    FAULTS_PER_UNIT("u", "faults for each unit of the amount", CountLimits.class),
    /** Fractions with the scatter between points. */
    FRACTION_LANEY("p-laney", "fractions, scatter between points allowed for", CountLimits.class),
    /** Faults for each unit with the scatter between points. */
    FAULTS_PER_UNIT_LANEY("u-laney", "faults for each unit, scatter between points allowed for", CountLimits.class),
    /** Parallel streams. */
    STREAMS("streams", "parallel streams", StreamsLimits.class);

    private final String word;
    private final String title;
    private final Class<? extends Record> limits;

    StudyKind(String word, String title, Class<? extends Record> limits) {
        this.word = word;
        this.title = title;
        this.limits = limits;
    }

    /** {@return the word it is asked for by} */
    public String word() {
        return word;
    }

    /** {@return what it charts, for readers} */
    public String title() {
        return title;
    }

    /** {@return the type of its frozen limits} */
    public Class<? extends Record> limitsType() {
        return limits;
    }

    /**
     * Finds a kind.
     *
     * @param word its word
     * @return the kind, empty for an unknown word
     */
    public static Optional<StudyKind> of(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(word))
                .findFirst();
    }

    /** {@return whether it charts counts with an amount behind each} */
    public boolean counts() {
        return limits == CountLimits.class;
    }

    /**
     * {@return why a row cannot be charted whatever the others hold, empty where it can}
     *
     * @param values the row's values
     */
    public Optional<String> refuses(List<Double> values) {
        return counts()
                ? CountModel.valueOf(name()).refuses(values.get(0), values.size() > 1 ? values.get(1) : 1)
                : Optional.empty();
    }

    /** {@return whether it watches its limits only, whatever run rules are asked for} */
    public boolean limitsOnly() {
        return this == EWMA || this == CUSUM || this == T_SQUARED;
    }

    /** {@return whether it charts subgroups of one value} */
    public boolean subgroups() {
        return limits == SubgroupLimits.class;
    }
}
