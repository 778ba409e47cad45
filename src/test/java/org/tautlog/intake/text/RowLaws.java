package org.tautlog.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A row whose cells stay in their line answers as one whose cells are texts. */
class RowLaws {
    private static final NumberForm FORM = new NumberForm('.', false);

    @Property(tries = 500)
    void cells_within_a_line_are_what_they_are_as_texts(@ForAll("lines") String line) {
        var cut = new Cells(';').of(line).orElseThrow();
        var made = Row.of(List.copyOf(cut));
        assertEquals(made, cut);
        for (int i = 0; i < made.size(); i++) {
            assertEquals(made.isEmpty(i), cut.isEmpty(i));
            assertEquals(made.number(i, FORM), cut.number(i, FORM));
            for (var text : made) {
                assertEquals(made.is(i, text), cut.is(i, text));
            }
        }
        assertTrue(cut.isSame(made));
    }

    @Property(tries = 500)
    void rows_that_are_the_same_up_to_a_cell_have_the_same_cells_that_far(
            @ForAll("lines") String one, @ForAll("lines") String other) {
        for (var rows : List.of(List.of(cut(one), cut(other)), List.of(made(one), made(other)))) {
            var first = rows.get(0);
            var second = rows.get(1);
            for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
                if (first.upTo(i).equals(second.upTo(i))) {
                    assertEquals(first.subList(0, i + 1), second.subList(0, i + 1));
                }
            }
        }
    }

    private static Row cut(String line) {
        return new Cells(';').of(line).orElseThrow();
    }

    private static Row made(String line) {
        return Row.of(List.copyOf(cut(line)));
    }

    @Provide
    Arbitrary<String> lines() {
        return Arbitraries.strings()
                .withChars("1;1;.- \ta\u00e9\u2009\ud83d\udd29")
                .ofMaxLength(8);
    }
}
