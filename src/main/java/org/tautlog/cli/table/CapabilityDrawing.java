package org.tautlog.cli.table;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import org.tautlog.report.chart.CapabilityChart;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Digits;
import org.tautlog.spc.capability.Capability;
import org.tautlog.spc.capability.CapabilityIndex;
import org.tautlog.spc.capability.FractionOutside;
import org.tautlog.spc.capability.MachineCapability;
import org.tautlog.spc.capability.Shape;
import org.tautlog.spc.capability.ShapePlot;
import org.tautlog.spc.capability.SpecLimits;
import org.tautlog.spc.capability.Stability;

/** Capability studies as they are drawn, with what stands above each in words. */
final class CapabilityDrawing {
    private CapabilityDrawing() {}

    static Map<String, CapabilityChart.Drawn> processes(
            Map<String, Answer<Capability>> studies, Map<String, double[]> values) {
        return drawn(studies, values, (study, x) -> {
            var indices = index("Cpk", study.cpk()) + ", " + index("Ppk", study.ppk());
            return drawn(
                    "process capability", study.spec(), study.stability(), study.shape(), indices, study.outside(), x);
        });
    }

    static Map<String, CapabilityChart.Drawn> machines(
            Map<String, Answer<MachineCapability>> studies, Map<String, double[]> values) {
        return drawn(studies, values, (study, x) -> {
            var indices = index("Cm", study.cm()) + ", " + index("Cmk", study.cmk());
            return drawn(
                    "machine capability", study.spec(), study.stability(), study.shape(), indices, study.outside(), x);
        });
    }

    private static <T> Map<String, CapabilityChart.Drawn> drawn(
            Map<String, Answer<T>> studies,
            Map<String, double[]> values,
            BiFunction<T, double[], Answer<CapabilityChart.Drawn>> draw) {
        var drawn = new LinkedHashMap<String, CapabilityChart.Drawn>();
        studies.forEach((name, answer) -> answer.flatMap(study -> draw.apply(study, values.get(name)))
                .found()
                .ifPresent(found -> drawn.put(name, found)));
        return drawn;
    }

    private static Answer<CapabilityChart.Drawn> drawn(
            String title,
            SpecLimits spec,
            Stability stability,
            Shape shape,
            String indices,
            FractionOutside outside,
            double[] values) {
        var sample = Arrays.stream(values).boxed().toList();
        return ShapePlot.of(values, shape, stability.strays())
                .map(plot -> new CapabilityChart.Drawn(
                        title,
                        List.of(
                                "n = " + values.length + ", " + indices + "; outside: "
                                        + CapabilityStudying.words(outside),
                                CapabilityStudying.word(stability) + ": " + stability.said() + "; "
                                        + (plot.line().isEmpty() && plot.reference() == null
                                                ? "no shape holds, so there is no reference interval"
                                                : "line: " + shape.words()
                                                        + " shape; dashed: its 0.135 % and 99.865 % points")),
                        spec,
                        sample,
                        plot));
    }

    private static String index(String name, Answer<CapabilityIndex> answer) {
        return answer.found()
                .map(index -> name + " " + String.format(Locale.ROOT, "%.2f", index.value())
                        + String.format(
                                Locale.ROOT,
                                " (%.2f to %.2f with %s %%)",
                                index.bounds().lower(),
                                index.bounds().upper(),
                                Digits.of(100 * index.bounds().confidence())))
                .orElse("no " + name);
    }
}
