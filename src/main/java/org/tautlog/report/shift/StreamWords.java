package org.tautlog.report.shift;

import java.util.List;
import java.util.stream.Collectors;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.ShiftClock;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.stream.FalseAlarms;
import org.tautlog.review.stream.LotEffect;
import org.tautlog.review.stream.OwnShift;
import org.tautlog.review.stream.ShiftComparison;
import org.tautlog.review.stream.SpindleCase;
import org.tautlog.review.stream.StationChart;
import org.tautlog.spc.Interval;

/** What streams say side by side, in sentences made of the review's own numbers. */
final class StreamWords {
    private StreamWords() {}

    /** One spindle apart from its station's others: features, sizes, bounds, since when. */
    static String moved(SpindleCase one, ShiftClock clock) {
        var first = one.shifts().get(0);
        return one.stream().words() + " moved apart from "
                + (first.ofStreams() == 2
                        ? "its station's only other spindle (which of the two, a difference cannot say)"
                        : "its station's " + (first.ofStreams() - 1) + " other spindles")
                + ": " + one.shifts().stream().map(StreamWords::size).collect(Collectors.joining(", "))
                + "; since " + clock.words(first.first())
                + (first.earliest().equals(first.latest())
                        ? ""
                        : " (between " + clock.words(first.earliest()) + " and " + clock.words(first.latest()) + ")")
                + '.';
    }

    /** The size of one step with its bounds. */
    static String size(OwnShift shift) {
        int decimals = Figures.decimals(shift.feature());
        var size = shift.step().size();
        return shift.feature().title() + (size.value() > 0 ? " rose by " : " fell by ")
                + Figures.of(Math.abs(size.value()), decimals) + ' '
                + shift.feature().unit() + " ("
                + absolute(size.bounds(), size.value() < 0, decimals) + ')';
    }

    static String lot(LotEffect effect) {
        int decimals = Figures.decimals(effect.feature());
        return Sentence.capital(effect.feature().title()) + " of lot " + effect.lot() + " lies "
                + Figures.of(Math.abs(effect.difference()), decimals) + ' '
                + effect.feature().unit()
                + (effect.difference() > 0 ? " above" : " below") + " that of the other lots ("
                + absolute(effect.bounds(), effect.difference() < 0, decimals) + "), on " + effect.alike() + " of "
                + effect.spindles() + " spindles alike.";
    }

    static String falseAlarms(FalseAlarms alarms, ShapeReview shapes) {
        return alarms.charts() + " charts with " + alarms.points() + " points: beyond limits or by a run "
                + alarms.seenByRules() + " signals, where chance alone gives about "
                + Figures.of(alarms.expectedByRules(), 0) + "; by weighted averages " + alarms.seenByAverages()
                + ", chance about " + Figures.of(alarms.expectedByAverages(), 0)
                + "; of one spindle on its station's charts " + alarms.seenOfOne() + ", chance about "
                + Figures.of(alarms.expectedOfOne(), 0) + "; of curves beyond their peers' envelope "
                + shapes.outliers().size() + ", chance about " + Figures.of(shapes.expected(), 1)
                + ". A signal on one chart is therefore not yet a finding.";
    }

    /** Whether spindles of a station resemble themselves from engine to engine, and what their common charts make of it. */
    static String neighbours(List<StationChart> stations) {
        var alike = stations.stream()
                .flatMap(station -> station.chart().found().stream()
                        .map(chart -> chart.limits().neighbours())
                        .filter(found -> found.allowed() > 0)
                        .map(found -> station.feature().title()
                                + (station.station().isEmpty() ? "" : " at station " + station.station()) + " (r "
                                + Figures.of(found.lagOne(), 2) + ')'))
                .toList();
        return "On the stations' charts of all spindles "
                + (alike.isEmpty()
                        ? "no spindle's difference from the others resembles the one before beyond chance."
                        : "a spindle's difference from the others resembles the one before in "
                                + String.join(", ", alike) + "; sums and runs there are widened for it.");
    }

    /** Whether anything changed since an earlier shift, in one sentence. */
    static String sincePrevious(ShiftComparison comparison) {
        int changed = comparison.holding().size();
        return "Since the earlier shift: "
                + (comparison.tests() == 0
                        ? "nothing could be compared."
                        : changed == 0
                                ? "no level or spread changed for certain."
                                : Figures.count(changed, "level or spread", "levels or spreads")
                                        + " changed, listed below.");
    }

    static String change(ShiftComparison.FeatureChange change) {
        int decimals = Figures.decimals(change.feature());
        var level = change.level();
        return Sentence.capital(change.feature().title()) + " of "
                + change.stream().words() + ": median "
                + Figures.of(level.before(), decimals) + ", now " + Figures.of(level.after(), decimals) + ' '
                + change.feature().unit() + ", a shift of " + Figures.of(level.shift(), decimals) + " ("
                + absolute(level.bounds(), false, decimals) + ')'
                + (change.spreadHolds()
                        ? change.levelHolds() ? "; its spread changed too" : "; its spread changed"
                        : "")
                + '.';
    }

    private static String absolute(Interval bounds, boolean turned, int decimals) {
        return turned
                ? Figures.of(-bounds.upper(), decimals) + " to " + Figures.of(-bounds.lower(), decimals)
                : Figures.of(bounds.lower(), decimals) + " to " + Figures.of(bounds.upper(), decimals);
    }
}
