package org.tautlog.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

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

    /** Whatever is found where it stands is what the line's own text is cut into; what is not found is still to be had as a line. */
    @Property(tries = 2000)
    void rows_read_where_they_stand_are_those_of_their_lines(
            @ForAll("lines") String one, @ForAll("texts") String text, @ForAll @IntRange(max = 3) int same)
            throws IOException {
        var cells = new Cells(';');
        var first = cells.of(one).orElseThrow();
        var alike = same == 0
                ? RowsAlike.any(first.size(), ';', "#")
                : RowsAlike.after(first, same, first.size(), ';', "#");
        Assume.that(alike.isPresent());
        var standing = new LineSource(new StringReader(text), 12);
        var lines = new LineSource(new StringReader(text), 12);
        for (var line = lines.next(); line.isPresent(); line = lines.next()) {
            var row = standing.look(alike.get());
            var cut = line.get().text().matches("[^\"\0]*")
                    ? cells.of(line.get().text()).orElseThrow()
                    : Row.none();
            boolean is = line.get().ended()
                    && !line.get().tooLong()
                    && cut.size() == first.size()
                    && line.get().text().startsWith(one.substring(0, head(one, same)))
                    && !line.get().text().startsWith("#");
            assertEquals(is, row.isPresent());
            if (is) {
                assertEquals(cut, row.get());
                for (int i = 0; i < cut.size(); i++) {
                    assertEquals(cut.number(i, FORM), row.get().number(i, FORM));
                    assertEquals(cut.isEmpty(i), row.get().isEmpty(i));
                }
                standing.takeRow();
            } else {
                assertEquals(line, standing.next());
            }
            assertEquals(lines.linesTaken(), standing.linesTaken());
        }
        assertEquals(Optional.empty(), standing.look(alike.get()));
        assertEquals(Optional.empty(), standing.next());
    }

    private static int head(String line, int same) {
        int at = 0;
        for (int i = 0; i < same; i++) {
            at = line.indexOf(';', at) + 1;
        }
        return at;
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings().withChars("1;1;1;\n\n\r\"\0# ").ofMaxLength(60);
    }

    @Provide
    Arbitrary<String> lines() {
        return Arbitraries.strings()
                .withChars("1;1;.- \ta\u00e9\u2009\ud83d\udd29")
                .ofMaxLength(8);
    }
}
