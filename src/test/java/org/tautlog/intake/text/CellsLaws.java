package org.tautlog.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;

/** Held against Commons CSV, which the fast path for lines without quotes passes by. */
class CellsLaws {
    @Property(tries = 500)
    void a_line_without_quotes_is_cut_as_the_library_cuts_it(@ForAll("cells") List<String> cells) throws IOException {
        var line = String.join(";", cells);
        var format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(';')
                .setIgnoreEmptyLines(false)
                .get();
        try (var parser = CSVParser.parse(line, format)) {
            var record = parser.getRecords();
            var expected = line.isEmpty()
                    ? List.of("")
                    : record.get(0).stream().map(String::strip).toList();
            assertEquals(Optional.of(expected), new Cells(';').of(line));
        }
    }

    @Property(tries = 500)
    void what_the_library_prints_is_cut_back_into_the_same_cells(@ForAll("quoted") List<String> cells)
            throws IOException {
        var line = new StringBuilder();
        try (var printer = new CSVPrinter(
                line, CSVFormat.DEFAULT.builder().setRecordSeparator("").get())) {
            printer.printRecord(cells);
        }
        assertEquals(Optional.of(cells), new Cells(',').of(line.toString()));
    }

    @Provide
    Arbitrary<List<String>> cells() {
        return Arbitraries.strings()
                .withChars("abc0.-+, \t'#")
                .ofMaxLength(6)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    @Provide
    Arbitrary<List<String>> quoted() {
        return Arbitraries.strings()
                .withChars("ab\",;' x")
                .ofMinLength(1)
                .ofMaxLength(6)
                .filter(text -> text.equals(text.strip()))
                .list()
                .ofMinSize(2)
                .ofMaxSize(6);
    }
}
