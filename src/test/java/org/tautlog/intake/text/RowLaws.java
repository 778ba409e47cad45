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

    @Property(tries = 1000)
    void a_row_that_begins_as_another_has_its_cells_that_far(@ForAll("lines") String one, @ForAll("ends") String end) {
        var first = new Cells(';').of(one).orElseThrow();
        var second = new Cells(';').of(one + end).orElseThrow();
        for (int i = 0; i < second.size(); i++) {
            if (second.beginsAs(i, first)) {
                assertEquals(first.subList(0, i + 1), second.subList(0, i + 1));
            }
            // All cells but the last, which the end lengthens, stand in the same places.
            assertTrue(i >= first.size() - 1 || second.beginsAs(i, first));
        }
    }

    @Provide
    Arbitrary<String> ends() {
        return Arbitraries.strings().withChars("1; ").ofMinLength(1).ofMaxLength(3);
    }

    @Provide
    Arbitrary<String> lines() {
        return Arbitraries.strings()
                .withChars("1;1;.- \ta\u00e9\u2009\ud83d\udd29")
                .ofMaxLength(8);
    }
}
