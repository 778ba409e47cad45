package org.tautlog.review.tuning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judge;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.Trace;

/**
 * Tunes the onset thresholds: reads each trace with a measured clamp load by every threshold tried, and keeps the onsets
 * alone.
 */
public final class OnsetTuning {
    /** Two recorders of one turn round their angles apart, and one may miss its very end. */
    private static final double AXIS_SLACK_DEG = 2;

    private record Key(String serial, String bolt, int attempt) {}

    /** Onsets of one trace, criterion by criterion, rule by rule; infinite where there is none. */
    private record Onsets(Map<OnsetCriterion, List<Double>> deg, double measuredDeg) {
        double error(OnsetCriterion criterion, int rule) {
            return Objects.requireNonNull(deg.get(criterion)).get(rule) - measuredDeg;
        }
    }

    private final JointSpecification specification;
    private final double offsetDeg;
    private final long seed;
    private final List<ReadingRule> rules;
    private final Map<Key, MeasuredClampLoad> outcomes = new LinkedHashMap<>();
    private final Set<Key> met = new HashSet<>();
    private final Map<TraceUse, Integer> uses = new EnumMap<>(TraceUse.class);
    private final List<TuningReview.Unused> unused = new ArrayList<>();
    private final List<Onsets> used = new ArrayList<>();
    private final List<Onsets> withoutOnset = new ArrayList<>();
    private final List<Double> uncertaintiesDeg = new ArrayList<>();

    /**
     * Starts with what was measured.
     *
     * @param specification whose thresholds are tuned
     * @param outcomes clamp loads, each of a tightening of its own
     * @param offsetDeg how far behind its line the load of a true onset falls, deg, above 0
     * @param seed the seed of the bootstrap
     */
    public OnsetTuning(
            JointSpecification specification, List<MeasuredClampLoad> outcomes, double offsetDeg, long seed) {
        this.specification = specification;
        this.offsetDeg = offsetDeg;
        this.seed = seed;
        rules = RuleGrid.around(specification.reading());
        outcomes.forEach(one -> this.outcomes.put(new Key(one.serial(), one.bolt(), one.attempt()), one));
    }

    /**
     * Takes one trace; only the onsets of those that were measured are kept.
     *
     * @param trace the trace
     */
    public void accept(Trace trace) {
        var identity = trace.identity();
        var key = new Key(identity.serial(), identity.bolt(), identity.attempt());
        var use = use(trace, key, outcomes.get(key));
        uses.merge(use, 1, Integer::sum);
        if (use != TraceUse.USED && use != TraceUse.NO_OUTCOME) {
            unused.add(new TuningReview.Unused(identity, use));
        }
    }

    private TraceUse use(Trace trace, Key key, @Nullable MeasuredClampLoad measured) {
        if (measured == null) {
            return TraceUse.NO_OUTCOME;
        }
        if (!met.add(key)) {
            return TraceUse.SECOND_TRACE;
        }
        if (Judge.judge(trace, specification).findings().stream().anyMatch(OnsetTuning::unusable)) {
            return TraceUse.UNUSABLE_RECORDING;
        }
        if (!onAxis(trace, measured)) {
            return TraceUse.OTHER_AXIS;
        }
        var onset = LoadOnset.of(measured, offsetDeg);
        if (onset.use() != TraceUse.USED && onset.use() != TraceUse.NO_ONSET) {
            return onset.use();
        }
        var read = SignatureReader.read(trace.curve(), specification.method(), rules);
        if (!read.get(0).elastic().originDeg().isFound()) {
            return TraceUse.NO_ELASTIC_LINE;
        }
        var onsets = onsets(read, onset.onsetDeg().orElse(0));
        if (onset.use() == TraceUse.USED) {
            used.add(onsets);
            uncertaintiesDeg.add(onset.uncertaintyDeg());
        } else {
            withoutOnset.add(onsets);
        }
        return onset.use();
    }

    /** Whatever severity the specification gives it: a curve cut short has lost its end. */
    private static boolean unusable(Finding finding) {
        return switch (finding.code()) {
            case TRUNCATED, SENSOR_SATURATED, RECORDING_SHIFTED, TOO_FEW_SAMPLES, DUPLICATED_RECORDING -> true;
            default -> false;
        };
    }

    private static boolean onAxis(Trace trace, MeasuredClampLoad measured) {
        var curve = trace.curve();
        double low = IntStream.range(0, curve.size())
                .mapToDouble(curve::angleDeg)
                .min()
                .orElse(0);
        double high = IntStream.range(0, curve.size())
                .mapToDouble(curve::angleDeg)
                .max()
                .orElse(0);
        return measured.points().stream()
                .mapToDouble(MeasuredClampLoad.Point::angleDeg)
                .allMatch(deg -> deg >= low - AXIS_SLACK_DEG && deg <= high + AXIS_SLACK_DEG);
    }

    private static Onsets onsets(List<Signature> read, double measuredDeg) {
        var deg = new EnumMap<OnsetCriterion, List<Double>>(OnsetCriterion.class);
        for (var criterion : OnsetCriterion.values()) {
            deg.put(
                    criterion,
                    read.stream()
                            .map(signature ->
                                    criterion.onsetDeg(signature).value().orElse(Double.POSITIVE_INFINITY))
                            .toList());
        }
        return new Onsets(deg, measuredDeg);
    }

    /** {@return what the traces taken so far say} */
    public TuningReview review() {
        var tables = Arrays.stream(OnsetCriterion.values()).map(this::tuning).toList();
        return new TuningReview(
                specification,
                offsetDeg,
                uncertaintiesDeg.isEmpty()
                        ? Double.NaN
                        : LoadOnset.median(uncertaintiesDeg.stream().mapToDouble(Double::doubleValue)),
                seed,
                uses,
                unused,
                outcomes.keySet().stream()
                        .filter(key -> !met.contains(key))
                        .map(OnsetTuning::words)
                        .toList(),
                tables,
                kneeAtGradient(tables));
    }

    private ThresholdTuning tuning(OnsetCriterion criterion) {
        int tried = RuleGrid.tried(criterion);
        var thresholds = IntStream.rangeClosed(1, tried)
                .mapToDouble(rule -> criterion.threshold(rules.get(rule)))
                .toArray();
        var errors = IntStream.rangeClosed(1, tried)
                .mapToObj(rule -> errors(criterion, rule))
                .toArray(double[][]::new);
        var claimed = IntStream.rangeClosed(1, tried)
                .map(rule -> claimed(criterion, rule))
                .toArray();
        return new ThresholdTuning(
                criterion, standing(criterion, 0), new ErrorTable(thresholds, errors).tuned(seed, claimed));
    }

    private Standing standing(OnsetCriterion criterion, int rule) {
        return ErrorTable.standing(
                criterion.threshold(rules.get(rule)), errors(criterion, rule), claimed(criterion, rule));
    }

    private @Nullable Standing kneeAtGradient(List<ThresholdTuning> tunings) {
        return tunings.stream()
                .filter(tuning -> tuning.criterion() == OnsetCriterion.GRADIENT)
                .flatMap(tuning -> tuning.tuned().found().stream())
                .findFirst()
                .map(tuned -> IntStream.rangeClosed(1, RuleGrid.tried(OnsetCriterion.KNEE))
                        .filter(rule ->
                                rules.get(rule).onsetRatio() == tuned.standing().threshold())
                        .findFirst()
                        .orElseThrow())
                .map(rule -> standing(OnsetCriterion.KNEE, rule))
                .orElse(null);
    }

    private double[] errors(OnsetCriterion criterion, int rule) {
        return used.stream()
                .mapToDouble(onsets -> onsets.error(criterion, rule))
                .toArray();
    }

    private int claimed(OnsetCriterion criterion, int rule) {
        return (int) withoutOnset.stream()
                .filter(onsets -> Double.isFinite(onsets.error(criterion, rule)))
                .count();
    }

    private static String words(Key key) {
        return key.serial()
                + (key.bolt().isEmpty() ? "" : " bolt " + key.bolt())
                + (key.attempt() == 1 ? "" : ", attempt " + key.attempt());
    }
}
