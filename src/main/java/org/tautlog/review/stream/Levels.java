package org.tautlog.review.stream;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.TraceIdentity;

/**
 * What is charted of one tightening.
 *
 * @param identity which it is
 * @param bearsFault whether it bears a fault of its own, see {@link SetAside}
 * @param values each feature that is not missing, in its unit
 */
public record Levels(TraceIdentity identity, boolean bearsFault, Map<ChartedFeature, Double> values) {
    public Levels {
        Objects.requireNonNull(identity, "identity");
        values = Map.copyOf(values);
    }

    /**
     * Reads them off a judgement.
     *
     * @param judgement the judgement
     * @return its levels
     */
    public static Levels of(Judgement judgement) {
        var values = new EnumMap<ChartedFeature, Double>(ChartedFeature.class);
        for (var feature : ChartedFeature.values()) {
            var read = feature.of(judgement.signature());
            if (read.isFound()) {
                values.put(feature, read.number());
            }
        }
        return new Levels(judgement.identity(), SetAside.bearsFault(judgement), values);
    }

    /**
     * Reads them off the columns of an archive.
     *
     * @param judgement the judgement in brief
     * @param columns the numbers of its row by {@link #columns()}; NaN where one is missing
     * @return its levels
     */
    public static Levels of(BriefJudgement judgement, ToDoubleFunction<String> columns) {
        var values = new EnumMap<ChartedFeature, Double>(ChartedFeature.class);
        for (var feature : ChartedFeature.values()) {
            double read = feature.of(columns);
            if (!Double.isNaN(read)) {
                values.put(feature, read);
            }
        }
        return new Levels(judgement.identity(), SetAside.bearsFault(judgement.verdict(), judgement.findings()), values);
    }

    /** {@return the columns of an archive that hold what is charted} */
    public static List<String> columns() {
        return Stream.of(ChartedFeature.values())
                .flatMap(feature -> feature.columns().stream())
                .distinct()
                .toList();
    }
}
