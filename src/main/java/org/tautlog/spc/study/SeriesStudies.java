package org.tautlog.spc.study;

import java.util.List;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.SubgroupSpread;
import org.tautlog.spc.count.CountModel;

/** Makes the chart asked for by name: limits from the rows themselves (phase 1), stated, or frozen before (phase 2). */
public final class SeriesStudies {
    private SeriesStudies() {}

    /**
     * Makes a study with limits from the rows, or from what the options state as known.
     *
     * @param kind the chart
     * @param columns names of a row's values
     * @param rows the rows in time order, all with as many values as there are columns
     * @param options how it is made
     * @return the study, or why there is none
     */
    public static Answer<SeriesStudy> phaseOne(
            StudyKind kind, List<String> columns, List<StudyRow> rows, StudyOptions options) {
        return study(new StudyRequest(kind, columns, rows, options, null));
    }

    /**
     * Holds rows against frozen limits.
     *
     * @param frozen the limits
     * @param columns names of a row's values
     * @param rows the rows in time order, all with as many values as there are columns
     * @param options which run rules watch, and how subgroups are made
     * @return the study, or why there is none
     */
    public static Answer<SeriesStudy> phaseTwo(
            FrozenLimits frozen, List<String> columns, List<StudyRow> rows, StudyOptions options) {
        return study(new StudyRequest(frozen.kind(), columns, rows, options, frozen));
    }

    private static Answer<SeriesStudy> study(StudyRequest asked) {
        if (asked.rows().isEmpty()) return Answer.missing(Reason.EMPTY, "no rows to chart");
        return switch (asked.kind()) {
            case INDIVIDUALS -> new ValueStudy(asked).individuals();
            case MEAN_RANGE -> new SubgroupStudy(asked).of(SubgroupSpread.RANGE);
            case MEAN_DEVIATION -> new SubgroupStudy(asked).of(SubgroupSpread.STANDARD_DEVIATION);
            case EWMA -> new ValueStudy(asked).ewma();
            case CUSUM -> new ValueStudy(asked).cusum();
            case T_SQUARED -> new TSquaredStudy(asked).study();
            case FRACTION -> new CountStudy(asked).of(CountModel.FRACTION);
            case NUMBER -> new CountStudy(asked).of(CountModel.NUMBER);
            case FAULTS -> new CountStudy(asked).of(CountModel.FAULTS);
            case FAULTS_PER_UNIT -> new CountStudy(asked).of(CountModel.FAULTS_PER_UNIT);
            case FRACTION_LANEY -> new CountStudy(asked).of(CountModel.FRACTION_LANEY);
            case FAULTS_PER_UNIT_LANEY -> new CountStudy(asked).of(CountModel.FAULTS_PER_UNIT_LANEY);
            case STREAMS -> StreamStudy.of(asked.rows(), asked.options(), asked.frozen());
        };
    }
}
