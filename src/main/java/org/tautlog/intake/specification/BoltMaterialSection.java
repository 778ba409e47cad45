package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.WindowSection.line;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.BoltMaterial;
import org.tautlog.joint.MetricThread;
import org.tautlog.joint.PropertyClass;

/**
 * The section {@code [bolt.material]}: a property class, stated values, or a class with some of its values replaced, such as
 * the mean yield strength of the lots really bought.
 */
final class BoltMaterialSection {
    private BoltMaterialSection() {}

    static Optional<BoltMaterial> read(StrictTable table, @Nullable MetricThread thread) {
        boolean ofClass = table.has("property-class");
        var known = ofClass ? table.parsed("property-class", PropertyClass::of).orElse(null) : null;
        var usual = known == null || thread == null ? null : known.material(thread);
        // A class that was stated and is not known leaves one problem, and not one more for each value it would give.
        var stated = new Stated(table, ofClass);
        double modulus =
                stated.value("youngs-modulus", Quantity.STRESS, usual == null ? Double.NaN : usual.youngsModulusMPa());
        double yield =
                stated.value("yield-strength", Quantity.STRESS, usual == null ? Double.NaN : usual.yieldStrengthMPa());
        // Where a lot's yield strength is stated alone, its tensile strength moves along.
        double ultimate = stated.value(
                "ultimate-strength",
                Quantity.STRESS,
                usual == null ? Double.NaN : usual.ultimateStrengthMPa() + yield - usual.yieldStrengthMPa());
        double expansion =
                stated.value("expansion", Quantity.EXPANSION, usual == null ? Double.NaN : usual.expansionPerK());
        double elongation = ofClass && !table.has("uniform-elongation")
                ? usual == null ? Double.NaN : usual.uniformElongation()
                : table.number("uniform-elongation");
        double hardening = Measured.valueOr(
                table,
                "hardening-modulus",
                Quantity.STRESS,
                usual == null ? (ultimate - yield) / elongation : usual.hardeningModulusMPa());
        if (ofClass && usual == null) {
            return table.abandon();
        }
        return table.build(() -> new BoltMaterial(modulus, yield, ultimate, expansion, elongation, hardening));
    }

    /** The values stated one by one, each needed where no class gives it. */
    private record Stated(StrictTable table, boolean ofClass) {
        double value(String key, Quantity quantity, double usual) {
            return ofClass
                    ? Measured.valueOr(table, key, quantity, usual)
                    : Measured.value(table, key, "value", quantity);
        }
    }

    static void write(StringBuilder text, BoltMaterial material, MetricThread thread) {
        text.append("\n[bolt.material]\n");
        var like = Arrays.stream(PropertyClass.values())
                .filter(known -> known.material(thread)
                        .withYieldStrengthMPa(material.yieldStrengthMPa())
                        .equals(material))
                .findFirst();
        if (like.isPresent()) {
            line(text, "property-class", '"' + like.get().designation() + '"');
            line(text, "yield-strength", Measured.write("value", material.yieldStrengthMPa(), "MPa"));
            return;
        }
        line(text, "youngs-modulus", Measured.write("value", material.youngsModulusMPa(), "MPa"));
        line(text, "yield-strength", Measured.write("value", material.yieldStrengthMPa(), "MPa"));
        line(text, "ultimate-strength", Measured.write("value", material.ultimateStrengthMPa(), "MPa"));
        line(text, "expansion", Measured.write("value", material.expansionPerK(), "1/K"));
        line(text, "uniform-elongation", String.valueOf(material.uniformElongation()));
        line(text, "hardening-modulus", Measured.write("value", material.hardeningModulusMPa(), "MPa"));
    }
}
