package org.tautlog.intake.specification;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.intake.toml.TomlFile;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.problem.Outcome;
import org.tomlj.Toml;

/**
 * The joint-specification file, a TOML file that the plant releases for one joint. Reading is strict: a key that is
 * unknown, missing or makes no sense is a problem with its line and column, and there is no specification then.
 *
 * <pre>
 * [specification]
 * name = "Through-bolt M10, bed plate to head"
 * version = "3"
 * bolt-positions = ["1", "2", "3", "4"]        # optional: without it no engine can be told to lack one
 *
 * [[position]]                                 # optional: where each bolt position lies on the head, all or none
 * bolt = "1"
 * x    = { value = 24.0, unit = "mm" }         # from a datum of the plant's choice: x to the right, y up
 * y    = { value = 118.0, unit = "mm" }
 *
 * [method]                                     # what the tool aims at
 * snug-torque = { target = 20.0, unit = "N·m" }
 * turn        = { target = 360.0, unit = "deg" }
 *
 * [window]                                     # every limit is stated, or "open" on purpose
 * snug-torque       = { low = 18.0, high = 23.0, unit = "N·m" }
 * turn              = { low = 355.0, high = 366.0, unit = "deg" }
 * final-torque      = { low = 60.0, high = 105.0, unit = "N·m" }
 * torque-rate       = { low = 0.25, high = 0.45, unit = "N·m/deg" }
 * prevailing-torque = { high = 3.0, unit = "N·m" }
 *
 * [window.onset]                               # where the yield onset may lie
 * past-snug   = { low = 120.0, high = 260.0, unit = "deg" }
 * past-origin = "open"
 * least-final-gradient-ratio = 0.05
 *
 * [reading]                                    # optional, and each key in it
 * gradient-span = { value = 15.0, unit = "deg" }
 * onset-ratio   = 0.5
 * elastic-ratio = 0.67
 * plastic-ratio = 0.33
 * snug-hold     = { value = 2.0, unit = "deg" }
 * onset-offset  = { value = 10.0, unit = "deg" }
 *
 * [faults]                                     # optional, and each key in it
 * rundown       = "open"
 * already-tight = { value = 30.0, unit = "deg" }
 * seating       = { value = 120.0, unit = "deg" }
 * angle-slip    = { value = 5.0, unit = "deg" }
 * angle-jump    = { value = 5.0, unit = "deg" }
 * spring-back   = { value = 15.0, unit = "deg" }
 * rundown-torque-share  = 0.35
 * stick-slip-share      = 0.10
 * torque-drop-share     = 0.10
 * fall-share            = 0.07
 * stripped-torque-share = 0.60
 * cause-share           = 0.06
 * saturated-samples     = 8
 * least-turn-samples    = 20
 *
 * [findings]                                   # optional: where the plant differs from what is usual
 * review = ["tool-wind-up"]
 * note   = ["soft-seating"]
 *
 * [bolt]                                       # optional: without it no clamp load can be estimated
 * thread          = "M10x1.5"
 * head            = "hexagon"                  # or "socket"
 * bearing-outer   = { value = 15.6, unit = "mm" }
 * bearing-inner   = { value = 10.5, unit = "mm" }
 * engaged-in      = "nut"                      # or "tapped-hole"
 * engaged-modulus = { value = 205.0, unit = "GPa" }
 *
 * [bolt.material]                              # a class, or every value, or a class with values of its own
 * property-class = "10.9"
 * yield-strength = { value = 1022.0, unit = "MPa" }
 * # youngs-modulus, ultimate-strength, expansion, uniform-elongation, hardening-modulus
 *
 * [[bolt.segment]]                             # from the head to the first engaged thread
 * form     = "shank"
 * length   = { value = 378.0, unit = "mm" }
 * diameter = { value = 8.2, unit = "mm" }
 *
 * [[bolt.segment]]
 * form   = "thread"                            # its diameter is the root's unless stated
 * length = { value = 22.0, unit = "mm" }
 *
 * [[layer]]                                    # from under the head, together as long as the segments
 * name           = "block"
 * thickness      = { value = 400.0, unit = "mm" }
 * material       = "cast aluminium"
 * youngs-modulus = { value = 72.0, unit = "GPa" }
 * expansion      = { value = 23.0, unit = "µm/(m·K)" }
 * shape          = "area"                      # or "cone" or "sleeve", with hole-diameter and outer-diameter
 * area           = { value = 900.0, unit = "mm²" }
 *
 * [friction]
 * thread            = 0.11
 * under-head        = 0.11
 * prevailing-torque = { value = 1.6, unit = "N·m" }    # optional, else none
 *
 * [drive]                                      # optional: between angle sensor and bolt head
 * stiffness = { value = 25.0, unit = "N·m/deg" }
 *
 * [warm-up]                                    # optional
 * assembly = { value = 20.0, unit = "°C" }
 * bolt     = { value = 95.0, unit = "°C" }
 * layers   = { value = 100.0, unit = "°C" }    # or { each = [100.0, 95.0], unit = "°C" }
 * torsion-left-share = 0.5                     # optional
 * embedding = { value = 11.0, unit = "µm" }    # optional, else none
 * further-stretch = { value = 0.4, unit = "mm" }       # optional: what the plant reckons; held against the temperatures
 *
 * [tolerance]                                  # optional, and each key in it: what strays from its mean, and how far
 * yield-strength = { standard-deviation = 18.0, unit = "MPa" }
 * friction       = { standard-deviation = 0.006 }
 * turn           = { plus-minus = 2.0, unit = "deg" }
 * # thread-friction, under-head-friction, snug-torque, bolt-stiffness, layer-stiffness, pitch, length, seating,
 * # bolt-temperature, layer-temperature
 * </pre>
 *
 * <p>Torques take every unit of {@link org.tautlog.trace.TorqueUnit}, angles every unit of
 * {@link org.tautlog.trace.AngleUnit}.
 */
public final class SpecificationFile {
    private SpecificationFile() {}

    /**
     * Reads a specification.
     *
     * @param file the file, UTF-8
     * @return the specification, or every problem that the file has
     */
    public static Outcome<JointSpecification> read(Path file) {
        return TomlFile.read(file, SpecificationFile::read);
    }

    /**
     * Reads the text of a specification.
     *
     * @param text the text of the file
     * @param name the file's name for problems
     * @return the specification, or every problem that the text has
     */
    public static Outcome<JointSpecification> read(String text, String name) {
        return TomlFile.read(text, name, SpecificationFile::read);
    }

    /**
     * Writes a specification so that reading gives the same one back.
     *
     * @param specification the specification
     * @return the text of its file, with every rule stated
     */
    public static String write(JointSpecification specification) {
        var text = new StringBuilder("[specification]\n");
        WindowSection.line(text, "name", quoted(specification.name()));
        WindowSection.line(text, "version", quoted(specification.version()));
        if (!specification.boltPositions().isEmpty()) {
            WindowSection.line(
                    text,
                    "bolt-positions",
                    specification.boltPositions().stream()
                            .map(SpecificationFile::quoted)
                            .collect(Collectors.joining(", ", "[", "]")));
        }
        PlaceSection.write(text, specification.boltPlaces());
        WindowSection.write(text, specification.method(), specification.window());
        RuleSection.write(text, specification.reading());
        RuleSection.write(text, specification.faults());
        FindingsSection.write(text, specification.consequences());
        specification.statedJoint().ifPresent(joint -> JointSections.write(text, joint));
        return text.toString();
    }

    private static Optional<JointSpecification> read(StrictTable root) {
        var title = root.section("specification").flatMap(Title::read);
        var method = root.section("method").flatMap(WindowSection::readMethod);
        var window = root.section("window").flatMap(WindowSection::read);
        var reading = root.optionalSection("reading").flatMap(RuleSection::readReading);
        var faults = root.optionalSection("faults").flatMap(RuleSection::readFaults);
        var consequences = root.optionalSection("findings").flatMap(FindingsSection::read);
        var joint = JointSections.read(root);
        var places = PlaceSection.read(root, title.map(Title::boltPositions).orElse(List.of()));
        return root.build(() -> new JointSpecification(
                title.orElseThrow().name(),
                title.orElseThrow().version(),
                method.orElseThrow(),
                window.orElseThrow(),
                reading.orElseGet(ReadingRule::withDefaults),
                faults.orElseGet(FaultRule::withDefaults),
                consequences.orElseGet(Map::of),
                joint.get(),
                title.orElseThrow().boltPositions(),
                places));
    }

    static String quoted(String text) {
        return '"' + Toml.tomlEscape(text).toString() + '"';
    }

    /** The section {@code [specification]}. */
    private record Title(String name, String version, List<String> boltPositions) {
        static Optional<Title> read(StrictTable table) {
            var name = table.text("name");
            var version = table.text("version");
            var positions = table.texts("bolt-positions");
            return table.build(() -> new Title(name, version, positions));
        }
    }
}
