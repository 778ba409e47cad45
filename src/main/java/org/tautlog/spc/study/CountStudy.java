package org.tautlog.spc.study;

import java.util.stream.IntStream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.count.CountChart;
import org.tautlog.spc.count.CountLimits;
import org.tautlog.spc.count.CountModel;

/** Charts of counts and fractions. */
final class CountStudy {
    private final StudyRequest asked;

    CountStudy(StudyRequest asked) {
        this.asked = asked;
    }

    Answer<SeriesStudy> of(CountModel model) {
        var counts = asked.column(0);
        var amounts = asked.rows().get(0).values().size() > 1
                ? asked.column(1)
                : IntStream.range(0, counts.length).mapToDouble(i -> 1).toArray();
        return asked.<CountLimits>basis(
                        () -> CountChart.phaseOne(
                                model, counts, amounts, asked.options().counts()),
                        stated -> Answer.missing(
                                Reason.NOT_ASKED,
                                "counts take their spread from their rate; state no standard deviation"))
                .flatMap(basis -> CountChart.chart(
                                basis.limits(), counts, amounts, asked.options().rules())
                        .map(chart -> {
                            var draft = asked.draft(basis, counts.length, asked::place);
                            if (basis.phase() != null) sayNeighbours(draft, basis.phase(), chart);
                            draft.lines("", chart.points().get(counts.length - 1));
                            draft.figure("mean rate", basis.limits().rate());
                            if (asked.kind() == StudyKind.FRACTION_LANEY
                                    || asked.kind() == StudyKind.FAULTS_PER_UNIT_LANEY)
                                draft.figure(
                                        "scatter between points over chance",
                                        basis.limits().scatter());
                            draft.differentLimits(chart);
                            draft.panel(counted(model), false, new PanelLine("point", chart));
                            return draft.study();
                        }));
    }

    private void sayNeighbours(Draft draft, PhaseOne<CountLimits> phase, Chart chart) {
        boolean binomial = asked.kind() == StudyKind.FRACTION
                || asked.kind() == StudyKind.NUMBER
                || asked.kind() == StudyKind.FRACTION_LANEY;
        var kept = phase.kept().stream()
                .mapToObj(chart.points()::get)
                .mapToDouble(point -> (point.value() - point.centre()) / (point.upper() - point.centre()))
                .toArray();
        var found = Autocorrelation.ofDifferences(kept).found().orElse(Autocorrelation.none());
        var wider = binomial ? StudyKind.FRACTION_LANEY : StudyKind.FAULTS_PER_UNIT_LANEY;
        if (asked.kind() == StudyKind.FRACTION_LANEY || asked.kind() == StudyKind.FAULTS_PER_UNIT_LANEY)
            draft.neighbours("the points", found, asked.options().neighbours());
        else draft.countedNeighbours(found, wider);
    }

    private static String counted(CountModel model) {
        return switch (model) {
            case FRACTION, FRACTION_LANEY -> "fractions";
            case NUMBER -> "numbers";
            case FAULTS -> "faults";
            case FAULTS_PER_UNIT, FAULTS_PER_UNIT_LANEY -> "faults for each unit";
        };
    }
}
