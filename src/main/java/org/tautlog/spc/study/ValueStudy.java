package org.tautlog.spc.study;

import java.util.OptionalDouble;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.timeweighted.Cusum;
import org.tautlog.spc.timeweighted.CusumLimits;
import org.tautlog.spc.timeweighted.EwmaChart;
import org.tautlog.spc.timeweighted.EwmaLimits;

/** Charts of single values: themselves, their moving averages and their sums. */
final class ValueStudy {
    private final StudyRequest asked;

    ValueStudy(StudyRequest asked) {
        this.asked = asked;
    }

    Answer<SeriesStudy> individuals() {
        var x = asked.column(0);
        var known = asked.options().known();
        return asked.<IndividualsLimits>basis(
                        () -> IndividualsChart.phaseOne(x, asked.options().individuals()), Answer::of)
                .flatMap(basis -> IndividualsChart.chart(
                                basis.limits(), x, asked.options().rules())
                        .map(pair -> {
                            var draft = asked.draft(basis, x.length, asked::place);
                            if (known == null)
                                draft.neighbours(
                                        "the values",
                                        basis.limits().neighbours(),
                                        asked.options().neighbours());
                            draft.individuals(
                                    basis.limits(), pair.location().points().get(0));
                            draft.panel("single values", true, new PanelLine("value", pair.location()));
                            if (x.length > 1)
                                draft.panel("moving ranges", true, new PanelLine("moving range", pair.spread()));
                            return draft.study();
                        }));
    }

    Answer<SeriesStudy> ewma() {
        var x = asked.column(0);
        return asked.<EwmaLimits>basis(
                        () -> EwmaChart.phaseOne(
                                x,
                                asked.options().individuals(),
                                asked.options().ewma()),
                        stated ->
                                Answer.of(EwmaLimits.of(stated, asked.options().ewma())))
                .flatMap(basis -> EwmaChart.chart(basis.limits(), x).map(chart -> {
                    var draft = asked.draft(basis, x.length, asked::place);
                    sayNeighbours(draft, basis, x);
                    draft.ewma(basis.limits(), chart.points().get(x.length - 1));
                    draft.panel("moving averages", true, new PanelLine("average", chart));
                    draft.onlyLimits(asked.options().rules());
                    return draft.study();
                }));
    }

    Answer<SeriesStudy> cusum() {
        var x = asked.column(0);
        return asked.<CusumLimits>basis(
                        () -> Cusum.phaseOne(
                                x,
                                asked.options().individuals(),
                                asked.options().cusum()),
                        stated ->
                                Answer.of(CusumLimits.of(stated, asked.options().cusum())))
                .flatMap(basis -> Cusum.of(basis.limits(), x).map(sums -> {
                    var draft = asked.draft(basis, x.length, asked::place);
                    sayNeighbours(draft, basis, x);
                    draft.cusum(
                            basis.limits(),
                            asked.frozen() == null
                                    ? OptionalDouble.of(asked.options().reference())
                                    : OptionalDouble.empty());
                    draft.sums(sums);
                    draft.onlyLimits(asked.options().rules());
                    return draft.study();
                }));
    }

    /** Of the values that the limits rest on; limits that were stated or asked.frozen() have said it before. */
    private void sayNeighbours(Draft draft, StudyRequest.Basis<?> basis, double[] x) {
        var phase = basis.phase();
        if (phase == null) return;
        var kept = phase.kept().stream().mapToDouble(i -> x[i]).toArray();
        draft.neighbours(
                "the values",
                Autocorrelation.ofDifferences(kept).found().orElse(Autocorrelation.none()),
                asked.options().neighbours());
    }
}
