package org.tautlog.review.stream;

import java.util.List;
import java.util.Objects;
import org.tautlog.joint.window.Window;
import org.tautlog.judge.Judgement;

/**
 * All that a shift's streams say when they are watched side by side.
 *
 * @param charts charts of single values, stream by stream
 * @param changes levels that moved, surest first
 * @param seriesSearched how many series were searched for those; the level of proof is shared among them
 * @param figures level, spread and capability of every stream and feature, in the charts' order
 * @param stations charts of all spindles of a station together
 * @param shifts what each stream did apart from the others of its station, in the order of station and feature
 * @param cases the spindles of which any step holds, worst first
 * @param unusual tightenings that stand out only when all features are taken together, most unusual first
 * @param lots bolt lots compared, surest difference first
 * @param cues what tells causes apart, tightening by tightening in order of time
 * @param falseAlarms how many signals chance gives on so many charts
 */
public record StreamReview(
        List<StreamChart> charts,
        List<Change> changes,
        int seriesSearched,
        List<StreamFigures> figures,
        List<StationChart> stations,
        List<OwnShift> shifts,
        List<SpindleCase> cases,
        List<Unusual> unusual,
        List<LotEffect> lots,
        List<CueReading> cues,
        FalseAlarms falseAlarms) {
    public StreamReview {
        charts = List.copyOf(charts);
        changes = List.copyOf(changes);
        figures = List.copyOf(figures);
        stations = List.copyOf(stations);
        shifts = List.copyOf(shifts);
        cases = List.copyOf(cases);
        unusual = List.copyOf(unusual);
        lots = List.copyOf(lots);
        cues = List.copyOf(cues);
        Objects.requireNonNull(falseAlarms, "falseAlarms");
    }

    /**
     * Reviews the streams of a shift.
     *
     * @param judgements all judgements of the shift, in reading order
     * @param window the limits that capability is told against
     * @return what the streams say
     */
    public static StreamReview of(List<Judgement> judgements, Window window) {
        var charts = StreamCharts.of(judgements);
        var own = OwnShifts.in(charts);
        var changes = LevelChanges.in(charts);
        return new StreamReview(
                charts,
                changes,
                LevelChanges.searched(charts),
                StreamFigures.of(charts, changes, own.shifts(), window),
                own.charts(),
                own.shifts(),
                SpindleCase.of(own.shifts()),
                Unusual.of(charts, own.shifts()),
                LotEffect.of(charts),
                CueReading.of(judgements),
                FalseAlarms.of(charts, own.charts(), own.shifts()));
    }

    /**
     * {@return whether a step of its own holds for a stream's feature}
     *
     * @param stream the station and spindle
     * @param feature which feature
     */
    public boolean moved(Stream stream, ChartedFeature feature) {
        return shifts.stream()
                .anyMatch(shift -> shift.holds()
                        && shift.feature() == feature
                        && shift.stream().equals(stream));
    }
}
