package org.tautlog.spc.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.chart.SubgroupChart;
import org.tautlog.spc.chart.SubgroupLimits;
import org.tautlog.spc.chart.SubgroupSpread;

/** Charts of subgroups: means with ranges or standard deviations. */
final class SubgroupStudy {
    private final StudyRequest asked;

    SubgroupStudy(StudyRequest asked) {
        this.asked = asked;
    }

    Answer<SeriesStudy> of(SubgroupSpread spread) {
        var groups = new LinkedHashMap<String, List<Double>>();
        if (asked.rows().get(0).values().size() > 1) asked.rows().forEach(row -> groups.put(row.place(), row.values()));
        else
            asked.grouped()
                    .forEach((name, members) -> groups.put(
                            name,
                            members.stream().map(row -> row.values().get(0)).toList()));
        if (groups.isEmpty())
            return Answer.missing(
                    Reason.TOO_FEW,
                    asked.rows().size() + " values do not fill one subgroup of "
                            + asked.options().subgroupSize());
        var x = groups.values().stream()
                .map(group -> group.stream().mapToDouble(v -> v).toArray())
                .toArray(double[][]::new);
        return asked.<SubgroupLimits>basis(
                        () -> SubgroupChart.phaseOne(x, asked.options().subgroups(spread)),
                        stated -> Answer.of(new SubgroupLimits(
                                stated.centre(), stated.sigma(), stated.width(), spread, 1, 0, 0, stated.neighbours())))
                .flatMap(basis -> SubgroupChart.chart(
                                basis.limits(), x, asked.options().rules())
                        .map(pair -> {
                            int values = IntStream.range(0, x.length)
                                    .map(i -> x[i].length)
                                    .sum();
                            var draft = asked.draft(basis, values, List.copyOf(groups.keySet())::get);
                            if (asked.options().known() == null)
                                draft.neighbours(
                                        "the means",
                                        basis.limits().neighbours(),
                                        asked.options().neighbours());
                            draft.lines("", pair.location().points().get(x.length - 1));
                            draft.lines(
                                    spread == SubgroupSpread.RANGE ? " of ranges" : " of deviations",
                                    pair.spread().points().get(x.length - 1));
                            draft.figure(
                                    "standard deviation within", basis.limits().sigma());
                            draft.differentLimits(pair.location());
                            draft.panel("means of subgroups", true, new PanelLine("mean", pair.location()));
                            draft.panel(
                                    spread == SubgroupSpread.RANGE ? "ranges" : "standard deviations",
                                    true,
                                    new PanelLine(
                                            spread == SubgroupSpread.RANGE ? "range" : "deviation", pair.spread()));
                            return draft.study();
                        }));
    }
}
