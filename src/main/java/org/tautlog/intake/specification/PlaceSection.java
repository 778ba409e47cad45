package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.BoltSection.millimetres;
import static org.tautlog.intake.specification.WindowSection.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.problem.ProblemCode;

/** The sections {@code [[position]]}: one for each of the {@code bolt-positions}, or none. */
final class PlaceSection {
    private static final String SECTION = "position";

    private PlaceSection() {}

    static List<BoltPlace> read(StrictTable root, List<String> bolts) {
        var places = new ArrayList<BoltPlace>();
        var named = new ArrayList<String>();
        for (var table : root.sections(SECTION)) {
            var bolt = bolt(table, bolts, named);
            named.add(bolt);
            read(table, bolt, places).ifPresent(places::add);
        }
        if (root.has(SECTION) && bolts.isEmpty()) {
            root.problem(
                    ProblemCode.MISSING_KEY,
                    SECTION,
                    "[[position]] is given without the bolt positions that an engine has",
                    "",
                    "add bolt-positions to [specification]");
            return places;
        }
        var left = bolts.stream().filter(bolt -> !named.contains(bolt)).toList();
        if (root.has(SECTION) && !left.isEmpty()) {
            root.problem(
                    ProblemCode.MISSING_KEY,
                    SECTION,
                    "no [[position]] is given for bolt " + String.join(", ", left),
                    "a place for every bolt position or for none",
                    "");
        }
        return places;
    }

    private static String bolt(StrictTable table, List<String> bolts, List<String> named) {
        var bolt = table.text("bolt");
        if (!bolt.isEmpty() && !bolts.isEmpty() && !bolts.contains(bolt)) {
            table.notOneOf("bolt", bolt, bolts);
        }
        if (!bolt.isEmpty() && named.contains(bolt)) {
            table.problem(
                    ProblemCode.BAD_VALUE, "bolt", "bolt '" + bolt + "' is given a second place", "one place each", "");
        }
        return bolt;
    }

    private static Optional<BoltPlace> read(StrictTable table, String bolt, List<BoltPlace> before) {
        double xMm = Measured.value(table, "x", "value", Quantity.LENGTH);
        double yMm = Measured.value(table, "y", "value", Quantity.LENGTH);
        return table.build(() -> new BoltPlace(bolt, xMm, yMm)).filter(place -> isFree(table, place, before));
    }

    private static boolean isFree(StrictTable table, BoltPlace place, List<BoltPlace> before) {
        var taken = before.stream()
                .filter(one -> one.distanceMm(place) < BoltPlace.NEAREST_MM)
                .findFirst();
        taken.ifPresent(one -> table.problem(
                ProblemCode.BAD_VALUE,
                "x",
                "bolts '" + one.bolt() + "' and '" + place.bolt() + "' lie in one place",
                "at least " + BoltPlace.NEAREST_MM + " mm between them",
                ""));
        return taken.isEmpty();
    }

    static void write(StringBuilder text, List<BoltPlace> places) {
        for (var place : places) {
            text.append("\n[[position]]\n");
            line(text, "bolt", SpecificationFile.quoted(place.bolt()));
            line(text, "x", millimetres(place.xMm()));
            line(text, "y", millimetres(place.yMm()));
        }
    }
}
