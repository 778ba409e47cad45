package org.tautlog.spc.study;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.multivariate.HotellingChart;
import org.tautlog.spc.multivariate.HotellingLimits;

/** Hotelling's T squared of several columns. */
final class TSquaredStudy {
    private final StudyRequest asked;

    TSquaredStudy(StudyRequest asked) {
        this.asked = asked;
    }

    Answer<SeriesStudy> study() {
        boolean grouped =
                !asked.rows().get(0).subgroup().isEmpty() || asked.options().subgroupSize() != null;
        var groups = grouped ? asked.grouped() : null;
        var x = groups == null
                ? asked.rows().stream().map(TSquaredStudy::features).toArray(double[][]::new)
                : groups.values().stream().map(TSquaredStudy::mean).toArray(double[][]::new);
        return asked.<HotellingLimits>basis(
                        () -> groups == null
                                ? HotellingChart.phaseOne(x, asked.options().hotelling())
                                : HotellingChart.phaseOneOfSubgroups(
                                        groups.values().stream()
                                                .map(members -> members.stream()
                                                        .map(TSquaredStudy::features)
                                                        .toArray(double[][]::new))
                                                .toArray(double[][][]::new),
                                        asked.options().hotelling()),
                        stated -> Answer.missing(
                                Reason.NOT_ASKED,
                                "T squared needs a covariance; a standard deviation does not state it"))
                .flatMap(basis -> HotellingChart.chart(
                                basis.limits(),
                                x,
                                asked.frozen() == null ? HotellingLimits.Phase.ONE : HotellingLimits.Phase.TWO)
                        .map(chart -> {
                            var draft = asked.draft(
                                    basis,
                                    asked.rows().size(),
                                    groups == null ? asked::place : List.copyOf(groups.keySet())::get);
                            if (basis.phase() != null) sayNeighbours(draft, basis.phase(), groups);
                            draft.figure("upper limit", chart.points().get(0).upper());
                            draft.figure(
                                    "upper limit for new points", basis.limits().phaseTwoLimit());
                            draft.figure(
                                    "mean in control", chart.points().get(0).centre());
                            draft.panel("T squared", false, new PanelLine("T squared", chart));
                            draft.parts(asked.columns(), index -> HotellingChart.parts(basis.limits(), x[index]));
                            draft.onlyLimits(asked.options().rules());
                            return draft.study();
                        }));
    }

    private void sayNeighbours(
            Draft draft, PhaseOne<HotellingLimits> phase, @Nullable Map<String, List<StudyRow>> groups) {
        var points = groups == null
                ? asked.rows().stream().map(List::of).toList()
                : groups.values().stream().toList();
        var kept = phase.kept().stream()
                .mapToObj(points::get)
                .flatMap(List::stream)
                .map(TSquaredStudy::features)
                .toArray(double[][]::new);
        var found = HotellingChart.neighbours(kept);
        for (int j = 0; j < found.size(); j++)
            draft.neighbours(
                    asked.columns().get(j), found.get(j), asked.options().neighbours());
    }

    private static double[] features(StudyRow row) {
        return row.values().stream().mapToDouble(v -> v).toArray();
    }

    private static double[] mean(List<StudyRow> members) {
        var mean = new double[members.get(0).values().size()];
        for (var row : members)
            for (int j = 0; j < mean.length; j++) mean[j] += row.values().get(j) / members.size();
        return mean;
    }
}
