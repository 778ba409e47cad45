package org.tautlog.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class LineSourceTest {
    /** Held against {@link String#lines()}, which knows the same line ends. */
    @Property(tries = 500)
    void lines_end_where_the_language_ends_them(@ForAll("texts") String text) throws IOException {
        assertEquals(text.lines().toList(), texts(new LineSource(new StringReader(text), 1000)));
    }

    @Property(tries = 100)
    void a_look_ahead_takes_nothing(@ForAll("texts") String text) throws IOException {
        var lines = new LineSource(new StringReader(text), 1000);
        var ahead = lines.peek(3, 1000);
        assertEquals(
                text.lines().limit(3).toList(), ahead.stream().map(Line::text).toList());
        assertEquals(0, lines.linesTaken());
        assertEquals(text.lines().toList(), texts(lines));
    }

    @Test
    void a_line_without_end_longer_than_memory_is_passed_in_bounded_memory() throws IOException {
        long length = 3L << 30;
        var lines = new LineSource(new Endless(length), 1 << 16);
        var line = lines.next().orElseThrow();
        assertTrue(line.tooLong());
        assertEquals(80, line.text().length());
        assertTrue(lines.next().isEmpty());
    }

    @Test
    void the_line_after_one_that_is_too_long_is_whole() throws IOException {
        var lines = new LineSource(new StringReader("x".repeat(101) + "\n" + "y".repeat(100) + "\n"), 100);
        assertTrue(lines.next().orElseThrow().tooLong());
        var next = lines.next().orElseThrow();
        assertEquals("y".repeat(100), next.text());
        assertEquals(2, next.number());
    }

    private static List<String> texts(LineSource lines) throws IOException {
        var texts = new ArrayList<String>();
        for (var line = lines.next(); line.isPresent(); line = lines.next()) {
            texts.add(line.get().text());
            assertEquals(texts.size(), line.get().number());
        }
        return texts;
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings().withChars("ab\r\n").ofMaxLength(40);
    }

    /** So many letters and no line end. */
    private static final class Endless extends Reader {
        private long left;

        Endless(long length) {
            this.left = length;
        }

        @Override
        public int read(char[] into, int from, int length) {
            int n = (int) Math.min(length, left);
            left -= n;
            return n == 0 ? -1 : n;
        }

        @Override
        public void close() {
            // nothing is open
        }
    }

    /** Only the beginning is kept, so the heap of a test is enough for a line that no heap would hold. */
    @Test
    void a_line_of_4_GiB_without_an_end_is_passed_over_in_a_few_kilobytes() throws IOException {
        long length = 1L << 32;
        var source = new LineSource(endless(length), 1 << 16);
        var line = source.next().orElseThrow();
        assertTrue(line.tooLong());
        assertFalse(line.ended());
        assertTrue(line.text().length() < 100, line.text().length() + " characters kept");
        assertTrue(source.next().isEmpty());
    }

    private static java.io.Reader endless(long length) {
        return new java.io.Reader() {
            private long left = length;

            @Override
            public int read(char[] into, int from, int count) {
                if (left == 0) {
                    return -1;
                }
                int n = (int) Math.min(count, left);
                if (into[from] != 'x' || into[from + n - 1] != 'x') {
                    java.util.Arrays.fill(into, from, from + n, 'x');
                }
                left -= n;
                return n;
            }

            @Override
            public void close() {
                // Nothing to close.
            }
        };
    }
}
