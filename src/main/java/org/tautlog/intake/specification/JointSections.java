package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.WindowSection.line;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Friction;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.problem.ProblemCode;

/**
 * What a file says of the joint itself: {@code [bolt]}, {@code [[layer]]} and {@code [friction]}, all three or none, and
 * beside them {@code [drive]}, {@code [warm-up]} and {@code [tolerance]}.
 */
final class JointSections {
    private static final List<String> BESIDE = List.of("layer", "friction", "drive", "warm-up", "tolerance");

    private JointSections() {}

    /** Reads the sections at once; the joint is made only when the whole file is known to be sound. */
    static Supplier<@Nullable StatedJoint> read(StrictTable root) {
        var bolt = root.optionalSection("bolt").flatMap(BoltSection::read);
        var tables = root.sections("layer");
        var layers = tables.stream()
                .map(table -> LayerSection.read(table, bolt.orElse(null)))
                .flatMap(Optional::stream)
                .toList();
        var friction = root.optionalSection("friction").flatMap(StatedFriction::read);
        var drive = root.optionalSection("drive").flatMap(JointSections::drive);
        var warmUp =
                root.optionalSection("warm-up").flatMap(table -> WarmUpSection.read(table, Math.max(1, tables.size())));
        var tolerance = root.optionalSection("tolerance").flatMap(ToleranceSection::read);
        missing(root);
        if (!root.has("bolt")) {
            return () -> null;
        }
        return () -> new StatedJoint(
                new BoltedJoint(
                        bolt.orElseThrow(), layers, friction.orElseThrow().friction()),
                friction.orElseThrow().prevailingTorqueNm(),
                drive.orElse(null),
                warmUp.orElse(null),
                tolerance.orElseGet(Map::of));
    }

    private static void missing(StrictTable root) {
        boolean bolt = root.has("bolt");
        for (var key : BESIDE) {
            if (!bolt && root.has(key)) {
                absent(root, key, "'" + key + "' is given without [bolt]", "[bolt]");
            }
        }
        if (bolt && !root.has("layer")) {
            absent(root, "bolt", "[bolt] is given without what it clamps", "[[layer]]");
        }
        if (bolt && !root.has("friction")) {
            absent(root, "bolt", "[bolt] is given without its friction", "[friction]");
        }
        if (bolt && root.has("tolerance") && !root.has("warm-up")) {
            absent(root, "tolerance", "[tolerance] is given without the warm-up that it bears on", "[warm-up]");
        }
    }

    private static void absent(StrictTable root, String key, String what, String section) {
        root.problem(ProblemCode.MISSING_KEY, key, what, "", "add " + section);
    }

    private static Optional<Double> drive(StrictTable table) {
        double stiffness = Measured.value(table, "stiffness", "value", Quantity.TORQUE_RATE);
        if (stiffness <= 0) {
            table.problem(ProblemCode.BAD_VALUE, "stiffness", "stiffness is " + stiffness, "above 0 N·m/deg", "");
        }
        return table.build(() -> stiffness);
    }

    static void write(StringBuilder text, StatedJoint stated) {
        var joint = stated.joint();
        BoltSection.write(text, joint.bolt());
        joint.layers().forEach(layer -> LayerSection.write(text, layer));
        text.append("\n[friction]\n");
        line(text, "thread", String.valueOf(joint.friction().threadMu()));
        line(text, "under-head", String.valueOf(joint.friction().underHeadMu()));
        line(text, "prevailing-torque", Measured.write("value", stated.prevailingTorqueNm(), "N·m"));
        stated.driveNmPerDeg().ifPresent(stiffness -> {
            text.append("\n[drive]\n");
            line(text, "stiffness", Measured.write("value", stiffness, "N·m/deg"));
        });
        stated.warmUp().ifPresent(warmUp -> WarmUpSection.write(text, warmUp));
        ToleranceSection.write(text, stated.tolerance());
    }

    /** The section {@code [friction]}. */
    private record StatedFriction(Friction friction, double prevailingTorqueNm) {
        static Optional<StatedFriction> read(StrictTable table) {
            double thread = table.number("thread");
            double underHead = table.number("under-head");
            double prevailing = Measured.valueOr(table, "prevailing-torque", Quantity.TORQUE, 0);
            return table.build(() -> new StatedFriction(new Friction(thread, underHead), prevailing));
        }
    }
}
