package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.WindowSection.line;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.warmup.WarmUp;
import org.tautlog.joint.window.StatedWarmUp;
import org.tautlog.problem.ProblemCode;

/** The section {@code [warm-up]}: one temperature for all layers, or each layer's own in their order. */
final class WarmUpSection {
    private WarmUpSection() {}

    static Optional<StatedWarmUp> read(StrictTable table, int layers) {
        double assembly = Measured.value(table, "assembly", "value", Quantity.TEMPERATURE);
        double bolt = Measured.value(table, "bolt", "value", Quantity.TEMPERATURE);
        var hot = table.section("layers").flatMap(inside -> layers(inside, layers));
        double torsion = table.optionalNumber("torsion-left-share").orElse(WarmUp.USUAL_TORSION_LEFT_SHARE);
        double embedding = Measured.valueOr(table, "embedding", Quantity.LENGTH, 0);
        var stretch = table.has("further-stretch")
                ? Measured.value(table, "further-stretch", "value", Quantity.LENGTH)
                : null;
        return table.build(() ->
                new StatedWarmUp(new Temperatures(assembly, bolt, hot.orElseThrow()), torsion, embedding, stretch));
    }

    private static Optional<List<Double>> layers(StrictTable table, int layers) {
        double factor = table.unit(Quantity.TEMPERATURE);
        if (!table.has("each")) {
            double all = table.number("value");
            return table.build(() -> Collections.nCopies(layers, all * factor));
        }
        var each = table.numbers("each");
        if (!each.isEmpty() && each.size() != layers) {
            table.problem(
                    ProblemCode.BAD_VALUE,
                    "each",
                    "each holds " + each.size() + " temperatures",
                    "one for each [[layer]], " + layers,
                    "");
        }
        return table.build(() -> each.stream().map(celsius -> celsius * factor).toList());
    }

    static void write(StringBuilder text, StatedWarmUp warmUp) {
        var temperatures = warmUp.temperatures();
        var layers = temperatures.layersC();
        text.append("\n[warm-up]\n");
        line(text, "assembly", Measured.write("value", temperatures.assemblyC(), "°C"));
        line(text, "bolt", Measured.write("value", temperatures.boltC(), "°C"));
        line(
                text,
                "layers",
                layers.stream().distinct().count() == 1
                        ? Measured.write("value", layers.get(0), "°C")
                        : "{ each = " + layers + ", unit = \"°C\" }");
        line(text, "torsion-left-share", String.valueOf(warmUp.torsionLeftShare()));
        line(text, "embedding", BoltSection.millimetres(warmUp.embeddingMm()));
        warmUp.furtherStretchMm().ifPresent(stretch -> line(text, "further-stretch", BoltSection.millimetres(stretch)));
    }
}
