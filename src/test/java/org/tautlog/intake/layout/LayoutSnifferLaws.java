package org.tautlog.intake.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.tautlog.intake.text.Line;

/** Whatever the order, the words, the units and the delimiter of a table, it is told where its columns stand. */
class LayoutSnifferLaws {
    @Provide
    Arbitrary<Character> delimiters() {
        return Arbitraries.of(';', '\t', ',', '|');
    }

    @Provide
    Arbitrary<String> torqueUnits() {
        return Arbitraries.of("Nm", "N·m", "lbf·ft", "in-lb", "kgf·m", "daN·m", "cNm", "ozf·in");
    }

    @Provide
    Arbitrary<String> angleUnits() {
        return Arbitraries.of("deg", "°", "rad", "gon", "turns");
    }

    @Property(tries = 200)
    void columns_in_any_order_are_told_with_their_units(
            @ForAll("delimiters") char delimiter,
            @ForAll("torqueUnits") String torque,
            @ForAll("angleUnits") String angle,
            @ForAll boolean unitsInARow,
            @ForAll @IntRange(max = 4) int headings,
            @ForAll long order) {
        var names = new ArrayList<>(List.of("Serial", "Bolt", "Angle", "Torque", "Current"));
        Collections.shuffle(names, new Random(order));
        var units = names.stream()
                .map(name -> name.equals("Angle") ? angle : name.equals("Torque") ? torque : "")
                .toList();
        var lines = new ArrayList<String>();
        IntStream.range(0, headings).forEach(i -> lines.add("Parameter " + i + ": " + i));
        lines.add(joined(
                IntStream.range(0, 5)
                        .mapToObj(i ->
                                names.get(i) + (unitsInARow || units.get(i).isEmpty() ? "" : " [" + units.get(i) + "]"))
                        .toList(),
                delimiter));
        if (unitsInARow) {
            lines.add(joined(units, delimiter));
        }
        IntStream.range(0, 20)
                .forEach(i -> lines.add(joined(
                        names.stream()
                                .map(name -> name.equals("Serial") ? "FW-1" : number(i))
                                .toList(),
                        delimiter)));
        var layout = LayoutSniffer.complete(LogLayout.unstated(), "a.csv", numbered(lines))
                .value()
                .orElseThrow();
        assertEquals(delimiter, layout.delimiter());
        assertEquals(headings + 1, layout.headerLine());
        assertEquals(unitsInARow ? headings + 2 : 0, layout.unitsLine());
        told(layout, SampleQuantity.ANGLE, names.indexOf("Angle"), angle);
        told(layout, SampleQuantity.TORQUE, names.indexOf("Torque"), torque);
        assertEquals(names.indexOf("Serial"), layout.identityColumns().get(IdentityField.SERIAL));
        assertEquals(LogShape.LONG_TABLE, layout.shape());
    }

    private static void told(FileLayout layout, SampleQuantity quantity, int column, String unit) {
        var found = layout.samples().get(quantity);
        assertEquals(column, found.column());
        assertEquals(quantity.quantity().orElseThrow().factor(unit).orElseThrow(), found.factor());
    }

    private static String number(int i) {
        return String.format(Locale.ROOT, "%d.25", i);
    }

    private static String joined(List<String> cells, char delimiter) {
        return cells.stream().collect(Collectors.joining(String.valueOf(delimiter)));
    }

    private static List<Line> numbered(List<String> lines) {
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new Line(lines.get(i), i + 1, true, false))
                .toList();
    }
}
