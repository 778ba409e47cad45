package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.WindowSection.line;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.Engagement;
import org.tautlog.joint.HeadForm;
import org.tautlog.joint.MetricThread;
import org.tautlog.problem.ProblemCode;

/** The section {@code [bolt]} with its lengths, {@code [[bolt.segment]]}. */
final class BoltSection {
    private static final Map<String, HeadForm> HEADS =
            new TreeMap<>(Map.of("hexagon", HeadForm.HEXAGON, "socket", HeadForm.SOCKET));
    private static final Map<String, Engagement.Mate> MATES =
            new TreeMap<>(Map.of("nut", Engagement.Mate.NUT, "tapped-hole", Engagement.Mate.TAPPED_HOLE));
    private static final Map<String, BoltSegment.Form> FORMS =
            new TreeMap<>(Map.of("shank", BoltSegment.Form.SHANK, "thread", BoltSegment.Form.THREAD));

    private BoltSection() {}

    static Optional<Bolt> read(StrictTable table) {
        var thread = table.parsed("thread", MetricThread::of).orElse(null);
        var head = table.neededChoice("head", HEADS);
        double outer = Measured.value(table, "bearing-outer", "value", Quantity.LENGTH);
        double inner = Measured.value(table, "bearing-inner", "value", Quantity.LENGTH);
        var mate = table.neededChoice("engaged-in", MATES);
        double modulus = Measured.value(table, "engaged-modulus", "value", Quantity.STRESS);
        var material = table.section("material").flatMap(inside -> BoltMaterialSection.read(inside, thread));
        var segments = table.sections("segment").stream()
                .map(inside -> segment(inside, thread))
                .flatMap(Optional::stream)
                .toList();
        if (!table.has("segment")) {
            table.problem(
                    ProblemCode.MISSING_KEY,
                    "segment",
                    "the bolt has no [[bolt.segment]]",
                    "its free length from head to nut, section by section",
                    "add one for each section");
        }
        return table.build(() -> new Bolt(
                Objects.requireNonNull(thread),
                segments,
                material.orElseThrow(),
                head.orElseThrow(),
                outer,
                inner,
                new Engagement(mate.orElseThrow(), modulus)));
    }

    /** A threaded length needs no diameter: it is the root's. */
    private static Optional<BoltSegment> segment(StrictTable table, @Nullable MetricThread thread) {
        var form = table.neededChoice("form", FORMS);
        double length = Measured.value(table, "length", "value", Quantity.LENGTH);
        boolean ofThread = form.filter(BoltSegment.Form.THREAD::equals).isPresent() && !table.has("diameter");
        double diameter = ofThread
                ? thread == null ? Double.NaN : thread.rootDiameterMm()
                : Measured.value(table, "diameter", "value", Quantity.LENGTH);
        if (ofThread && thread == null) {
            return table.abandon();
        }
        return table.build(() -> new BoltSegment(length, diameter, form.orElseThrow()));
    }

    static void write(StringBuilder text, Bolt bolt) {
        text.append("\n[bolt]\n");
        line(text, "thread", '"' + bolt.thread().designation() + '"');
        line(text, "head", word(HEADS, bolt.headForm()));
        line(text, "bearing-outer", millimetres(bolt.bearingOuterMm()));
        line(text, "bearing-inner", millimetres(bolt.bearingInnerMm()));
        line(text, "engaged-in", word(MATES, bolt.engagement().mate()));
        line(text, "engaged-modulus", Measured.write("value", bolt.engagement().youngsModulusMPa(), "MPa"));
        BoltMaterialSection.write(text, bolt.material(), bolt.thread());
        for (var segment : bolt.segments()) {
            text.append("\n[[bolt.segment]]\n");
            line(text, "form", word(FORMS, segment.form()));
            line(text, "length", millimetres(segment.lengthMm()));
            if (!segment.equals(BoltSegment.thread(segment.lengthMm(), bolt.thread()))) {
                line(text, "diameter", millimetres(segment.diameterMm()));
            }
        }
    }

    static String millimetres(double value) {
        return Measured.write("value", value, "mm");
    }

    static <E> String word(Map<String, E> words, E meaning) {
        return words.entrySet().stream()
                .filter(entry -> Objects.equals(entry.getValue(), meaning))
                .map(entry -> '"' + entry.getKey() + '"')
                .findFirst()
                .orElseThrow();
    }
}
