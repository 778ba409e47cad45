package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Window;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.capability.Capability;
import org.tautlog.spc.capability.CapabilityOptions;
import org.tautlog.spc.capability.CapabilityStudy;
import org.tautlog.spc.capability.Shape;
import org.tautlog.spc.capability.SpecLimits;
import org.tautlog.spc.capability.Stability;
import org.tautlog.spc.outlier.ModifiedZ;
import org.tautlog.trace.TraceIdentity;

/**
 * What one feature of one stream was like over the shift. Tightenings with a fault of their own are set aside. It is not in
 * control where its capability study says so, where its level moved for certain, by itself or apart from its station's others,
 * or where its charts give more signals than chance. The charts' limits are those of normal values: where the study found
 * another shape, or none, they do not count.
 *
 * @param stream the station and spindle
 * @param feature what it is about
 * @param n how many tightenings
 * @param median their median, in the feature's unit; null where there are none
 * @param robustDeviation 1.4826 times their median absolute deviation; null where there are none
 * @param offset median less the median of the station's other spindles, over the median of the station's robust deviations, at
 *     least half a step of the recording;
 *     null where there is nothing to compare with
 * @param strays tightenings whose modified z score lies beyond 3.5
 * @param capability whether the window's limits are kept, with bounds and a word on control, or why it cannot be said
 */
public record StreamFigures(
        Stream stream,
        ChartedFeature feature,
        int n,
        @Nullable Double median,
        @Nullable Double robustDeviation,
        @Nullable Double offset,
        List<TraceIdentity> strays,
        Answer<Capability> capability) {
    private static final double TO_SIGMA = 1.4826;

    public StreamFigures {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(capability, "capability");
        strays = List.copyOf(strays);
    }

    static List<StreamFigures> of(
            List<StreamChart> charts, List<Change> changes, List<OwnShift> shifts, Window window) {
        var samples = charts.stream()
                .map(chart -> Sample.of(chart.numbers(), 1, "a median").found().orElse(null))
                .toList();
        var figures = new ArrayList<StreamFigures>();
        for (int i = 0; i < charts.size(); i++) {
            var chart = charts.get(i);
            var sample = samples.get(i);
            figures.add(new StreamFigures(
                    chart.stream(),
                    chart.feature(),
                    chart.values().size(),
                    sample == null ? null : (Double) sample.median(),
                    sample == null ? null : (Double) (TO_SIGMA * sample.medianDeviation()),
                    sample == null ? null : offset(chart, sample, charts, samples),
                    strays(chart),
                    capability(chart, window)
                            .map(study -> study.withStability(control(chart, moved(chart, changes, shifts), study)))));
        }
        return List.copyOf(figures);
    }

    private static @Nullable Double offset(
            StreamChart chart, Sample own, List<StreamChart> charts, List<@Nullable Sample> samples) {
        var medians = new ArrayList<Double>();
        var compared = new ArrayList<>(List.of(chart));
        var spreads = new ArrayList<Double>();
        spreads.add(own.medianDeviation());
        for (int i = 0; i < charts.size(); i++) {
            var other = charts.get(i);
            var sample = samples.get(i);
            if (sample != null
                    && other.feature() == chart.feature()
                    && !other.stream().equals(chart.stream())
                    && other.stream().station().equals(chart.stream().station())) {
                medians.add(sample.median());
                compared.add(other);
                spreads.add(sample.medianDeviation());
            }
        }
        double spread = Math.max(TO_SIGMA * median(spreads), Resolution.stepOf(compared) / 2);
        return medians.isEmpty() || !(spread > 0) ? null : (Double) ((own.median() - median(medians)) / spread);
    }

    private static double median(List<Double> values) {
        return Sample.derived(values.stream().mapToDouble(Double::doubleValue).toArray())
                .median();
    }

    private static List<TraceIdentity> strays(StreamChart chart) {
        return ModifiedZ.of(chart.numbers(), ModifiedZ.USUAL_LIMIT).found().stream()
                .flatMap(scores -> scores.flagged().stream())
                .map(i -> chart.tightenings().get(i))
                .toList();
    }

    private static Answer<Capability> capability(StreamChart chart, Window window) {
        Band band = chart.feature().limits(window);
        if (!band.hasLow() && !band.hasHigh()) {
            return Answer.missing(Reason.NOT_ASKED, "the window sets no limits");
        }
        var limits = new SpecLimits(
                band.hasLow() ? (Double) band.low() : null, band.hasHigh() ? (Double) band.high() : null);
        return CapabilityStudy.process(chart.numbers(), limits, CapabilityOptions.withDefaults());
    }

    private static boolean moved(StreamChart chart, List<Change> changes, List<OwnShift> shifts) {
        return changes.stream()
                        .anyMatch(change -> change.feature() == chart.feature()
                                && change.stream().equals(chart.stream()))
                || shifts.stream()
                        .anyMatch(shift -> shift.holds()
                                && shift.feature() == chart.feature()
                                && shift.stream().equals(chart.stream()));
    }

    /** The study's own word, with all that the shift's charts saw beside it. */
    private static Stability control(StreamChart chart, boolean moved, Capability study) {
        int points = chart.values().size();
        int signals = chart.signals().size();
        var word = study.stability();
        if (moved) {
            word = new Stability(
                            Stability.Word.OUT_OF_CONTROL,
                            points,
                            signals,
                            "its level moved within the shift, for certain")
                    .and(word);
        }
        return study.shape() == Shape.NORMAL
                ? word.and(Stability.of(points, signals, 1 / FalseAlarms.RULES_RUN))
                        .and(Stability.of(points, chart.lastingShifts().size(), 1 / FalseAlarms.AVERAGES_RUN))
                : word;
    }
}
