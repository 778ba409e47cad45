package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.BoltSection.millimetres;
import static org.tautlog.intake.specification.WindowSection.line;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.LayerShape;
import org.tautlog.problem.ProblemCode;

/** One section {@code [[layer]]}. */
final class LayerSection {
    private enum Shape {
        CONE,
        SLEEVE,
        AREA
    }

    private static final Map<String, Shape> SHAPES =
            new TreeMap<>(Map.of("cone", Shape.CONE, "sleeve", Shape.SLEEVE, "area", Shape.AREA));

    private LayerSection() {}

    static Optional<Layer> read(StrictTable table, @Nullable Bolt bolt) {
        var name = table.text("name");
        double thickness = Measured.value(table, "thickness", "value", Quantity.LENGTH);
        var material = table.text("material");
        double modulus = Measured.value(table, "youngs-modulus", "value", Quantity.STRESS);
        double expansion = Measured.value(table, "expansion", "value", Quantity.EXPANSION);
        var shape = table.neededChoice("shape", SHAPES);
        boolean ofArea = shape.filter(Shape.AREA::equals).isPresent();
        double area = ofArea ? Measured.value(table, "area", "value", Quantity.AREA) : Double.NaN;
        double hole = ofArea ? Double.NaN : Measured.value(table, "hole-diameter", "value", Quantity.LENGTH);
        double outer = ofArea ? Double.NaN : Measured.value(table, "outer-diameter", "value", Quantity.LENGTH);
        boolean cone = shape.filter(Shape.CONE::equals).isPresent();
        if (cone && bolt != null && hole >= bolt.bearingOuterMm()) {
            table.problem(
                    ProblemCode.BAD_VALUE,
                    "hole-diameter",
                    "hole-diameter is " + hole + " mm",
                    "below the head's bearing-outer of " + bolt.bearingOuterMm() + " mm",
                    "");
        }
        return table.build(() -> new Layer(
                name,
                thickness,
                new LayerMaterial(material, modulus, expansion),
                switch (shape.orElseThrow()) {
                    case CONE -> new LayerShape.Cone(hole, outer);
                    case SLEEVE -> new LayerShape.Sleeve(hole, outer);
                    case AREA -> new LayerShape.StatedArea(area);
                }));
    }

    static void write(StringBuilder text, Layer layer) {
        text.append("\n[[layer]]\n");
        line(text, "name", SpecificationFile.quoted(layer.name()));
        line(text, "thickness", millimetres(layer.thicknessMm()));
        line(text, "material", SpecificationFile.quoted(layer.material().name()));
        line(text, "youngs-modulus", Measured.write("value", layer.material().youngsModulusMPa(), "MPa"));
        line(text, "expansion", Measured.write("value", layer.material().expansionPerK(), "1/K"));
        if (layer.shape() instanceof LayerShape.StatedArea stated) {
            line(text, "shape", "\"area\"");
            line(text, "area", Measured.write("value", stated.areaMm2(), "mm²"));
        } else if (layer.shape() instanceof LayerShape.Cone cone) {
            ring(text, "cone", cone.holeDiameterMm(), cone.outerDiameterMm());
        } else if (layer.shape() instanceof LayerShape.Sleeve sleeve) {
            ring(text, "sleeve", sleeve.holeDiameterMm(), sleeve.outerDiameterMm());
        }
    }

    private static void ring(StringBuilder text, String shape, double holeMm, double outerMm) {
        line(text, "shape", '"' + shape + '"');
        line(text, "hole-diameter", millimetres(holeMm));
        line(text, "outer-diameter", millimetres(outerMm));
    }
}
