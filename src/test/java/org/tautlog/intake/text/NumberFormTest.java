package org.tautlog.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberFormTest {
    @ParameterizedTest(name = "{0} with decimal mark {1} is {2}")
    @CsvSource(delimiter = '~', textBlock = """
            12.5      ~ . ~ 12.5
            -0.25     ~ . ~ -0.25
            +3        ~ . ~ 3
            5.1E-0005 ~ . ~ 5.1E-5
            1e3       ~ . ~ 1000
            .5        ~ . ~ 0.5
            5.        ~ . ~ 5
            12,5      ~ , ~ 12.5
            1.234,5   ~ , ~ 1234.5
            1.234.567,5 ~ , ~ 1234567.5
            1,234.5   ~ . ~ 1234.5
            1 234,5   ~ , ~ 1234.5
            1'234.5   ~ . ~ 1234.5
            1'234     ~ . ~ 1234
            −5        ~ . ~ -5
            1,5E2     ~ , ~ 150
            """)
    void a_number_is_read_with_its_marks(String cell, char mark, double expected) {
        assertEquals(OptionalDouble.of(expected), new NumberForm(mark, false).parse(cell));
    }

    @ParameterizedTest(name = "{0} with decimal mark {1}")
    @CsvSource(delimiter = '~', nullValues = "none", textBlock = """
            NaN       ~ .
            Infinity  ~ .
            1e999     ~ .
            0x1F      ~ .
            1.5d      ~ .
            1f        ~ .
            ---       ~ .
            1,5       ~ .
            1.234     ~ ,
            1,234     ~ .
            12,34.5   ~ .
            1234,567.5 ~ .
            1.23.4,5  ~ ,
            1,2,3     ~ ,
            '1        ~ .
            1'        ~ .
            1.2.3     ~ .
            - 5       ~ .
            5 Nm      ~ .
            ١٢        ~ .
            """)
    void what_could_be_another_number_or_none_is_refused(String cell, char mark) {
        assertEquals(OptionalDouble.empty(), new NumberForm(mark, false).parse(cell));
    }

    @ParameterizedTest
    @CsvSource({"1.234, 1234", "1.234.567, 1234567"})
    void a_stated_mark_between_thousands_needs_no_decimals(String cell, double expected) {
        assertEquals(OptionalDouble.of(expected), new NumberForm(',', true).parse(cell));
    }

    @Property
    void a_number_reads_the_same_in_every_country(@ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
        for (var country : new Locale[] {Locale.US, Locale.GERMANY, Locale.FRANCE}) {
            var mark = country.equals(Locale.US) ? '.' : ',';
            var text = String.format(country, "%,.3f", value);
            assertEquals(
                    Double.parseDouble(String.format(Locale.ROOT, "%.3f", value)),
                    new NumberForm(mark, false).parse(text).orElseThrow(),
                    0.0,
                    text);
        }
    }
}
