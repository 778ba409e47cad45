package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

/**
 * The ways in which exports write one and the same tightening, each read into the same trace without a layout file. The
 * dialects are common practice, no source; units by ISO 80000-3 and NIST SP 811.
 */
class ExportDialectsTest {
    private static final int SAMPLES = 120;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1", "windows-1252"})
    void every_encoding_gives_the_same_trace(String encoding) throws IOException {
        var heading = "Serial: 000123\nStation: Prüfstand Süd" + (encoding.startsWith("ISO") ? "" : " – 2") + '\n';
        var trace = only(read(heading + table(';', '.', "Winkel [°]", "Drehmoment [Nm]"), encoding));
        assertEquals(
                heading.lines().skip(1).findFirst().orElseThrow().substring(9),
                trace.identity().station());
        assertSame(trace);
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_first_key() throws IOException {
        assertSame(only(read("\ufeffSerial: 000123\n" + table(';', '.', "Angle (deg)", "Torque (Nm)"), "UTF-8")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {",~.", ";~.", ";~,", "\t~.", "\t~,", "|~.", "|~,"})
    void every_delimiter_and_decimal_mark_gives_the_same_trace(String delimiter, String mark) throws IOException {
        assertSame(only(read(
                "Serial: 000123\n" + table(delimiter.charAt(0), mark.charAt(0), "Angle (deg)", "Torque (Nm)"),
                "UTF-8")));
    }

    @ParameterizedTest
    @CsvSource({
        "Angle[deg], Torque[Nm], .",
        "Angle (deg), Torque (Nm), .",
        "Winkel / Grad, Moment / Nm, ','",
        "Angle, Torque, ."
    })
    void columns_aligned_by_blanks_give_the_same_trace(String angle, String torque, char mark) throws IOException {
        var text = new StringBuilder("Serial no: 000123\nBolt   7\n" + aligned(angle, torque));
        for (int i = 0; i < SAMPLES; i++) {
            text.append(aligned(number(angle(i), mark), number(torque(i), mark)));
        }
        var trace = only(read(text.toString(), "UTF-8"));
        assertEquals("7", trace.identity().bolt());
        assertSame(trace);
    }

    @ParameterizedTest
    @CsvSource({
        "Angle (deg), Torque (Nm)",
        "angle_deg, torque_Nm",
        "Tightening angle (deg), Tightening torque (Nm)",
        "Angle value [°], Torque value [N·m]",
        "Drehwinkel [Grad], Drehmoment [Nm]",
        "Drehwinkel in Grad, Anzugsmoment in Nm",
        "Winkel / Grad, Moment / Nm",
        "Winkel Istwert [°], Moment Istwert [Nm]",
        "Weiterdrehwinkel (Grad), Anziehdrehmoment (Nm)",
        "Ang deg, Trq Nm",
        "Angles (deg), Torques (Nm)"
    })
    void the_words_of_the_trade_name_the_columns(String angle, String torque) throws IOException {
        assertSame(only(read("Serial: 000123\n" + table(';', '.', angle, torque), "UTF-8")));
    }

    @Test
    void names_of_aligned_columns_may_hold_blanks() throws IOException {
        var text = new StringBuilder("Engine serial   Bolt   Tightening angle (deg)   Torque (N·m)\n");
        for (int i = 0; i < SAMPLES; i++) {
            text.append("000123         4      ")
                    .append(angle(i))
                    .append("   ")
                    .append(torque(i))
                    .append('\n');
        }
        assertSame(only(read(text.toString(), "UTF-8")));
    }

    @Test
    void a_file_of_tabs_is_not_cut_at_blanks() throws IOException {
        var traces = new ArrayList<Trace>();
        var file = file("Serial no\tBolt\tAngle deg\tTorque kilo Nm\n000123\t4\t0\t1\n000123\t4\t1\t2\n", "UTF-8");
        var summary = LogReader.read(List.of(file), ReadOptions.withDefaults(), traces::add);
        assertEquals(List.of(), traces);
        assertTrue(
                summary.problems().get(0).what().contains("Torque kilo Nm"),
                summary.problems().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"ESN;Stn;Spdl", "Fahrgestellnummer;Anlage;Schrauber"})
    void abbreviated_and_german_words_name_the_identity(String names) throws IOException {
        var text = new StringBuilder(names + ";Angle (deg);Torque (Nm)\n");
        rows(';', '.', 0, SAMPLES).lines().forEach(row -> text.append("000123;S40;2;" + row + '\n'));
        var trace = only(read(text.toString(), "UTF-8"));
        assertEquals("S40", trace.identity().station());
        assertEquals("2", trace.identity().spindle());
        assertSame(trace);
    }

    @Test
    void a_row_of_units_may_hold_one_that_says_nothing() throws IOException {
        var text = new StringBuilder("Index;Angle;Torque\nNo.;deg;Nm\n");
        rows(';', '.', 0, SAMPLES).lines().forEach(row -> text.append("7;" + row + '\n'));
        assertSame(only(read("Serial: 000123\n" + text, "UTF-8")));
    }

    @ParameterizedTest
    @CsvSource({"Angle;Torque, deg;Nm", "Winkel;Drehmoment, [Grad];[Nm]", "Angle;Torque, (°);(N·m)"})
    void units_may_stand_in_a_row_of_their_own_and_both_rows_again_in_the_middle(String names, String units)
            throws IOException {
        var lines = new ArrayList<>(("Serial: 000123\n" + names + '\n' + units + '\n' + rows(';', '.', 0, SAMPLES))
                .lines()
                .toList());
        lines.addAll(60, List.of(names, units));
        assertSame(only(read(String.join("\n", lines), "UTF-8")));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 190, 201, 3000})
    void a_heading_block_may_be_of_any_length(int lines) throws IOException {
        var heading = new StringBuilder("Serial: 000123\n");
        for (int i = 0; i < lines; i++) {
            heading.append("Parameter ").append(i).append(": ").append(i).append('\n');
        }
        assertSame(only(read(heading + table(';', '.', "Angle (deg)", "Torque (Nm)"), "UTF-8")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Stage: %d", "Stage %d: snug", "Step %d - Anziehen", "Step %d", "[Stufe %d]", "Schritt Nr. %d"})
    void two_stages_as_two_tables_are_one_trace(String line) throws IOException {
        var head = "Angle (deg);Torque (Nm)\n";
        var text = "Serial: 000123\n\n" + String.format(Locale.ROOT, line, 1) + '\n' + head + rows(';', '.', 0, 70)
                + '\n' + String.format(Locale.ROOT, line, 2) + '\n' + head + rows(';', '.', 70, SAMPLES);
        var trace = only(read(text, "UTF-8"));
        assertSame(trace);
        assertEquals(1, trace.curve().stage(69));
        assertEquals(2, trace.curve().stage(70));
    }

    @Test
    void where_each_stage_counts_its_angle_from_0_it_is_counted_on_and_said_so() throws IOException {
        var text = "Serial: 000123\nStage: 1\nAngle;Torque\n0;1\n10;2\nStage: 2\nAngle;Torque\n0;2\n10;5\n20;9\n";
        var traces = new ArrayList<Trace>();
        var summary = LogReader.read(List.of(file(text, "UTF-8")), ReadOptions.withDefaults(), traces::add);
        var curve = only(traces).curve();
        assertEquals(
                List.of(0.0, 10.0, 10.0, 20.0, 30.0),
                IntStream.range(0, curve.size()).mapToObj(curve::angleDeg).toList());
        assertEquals(
                1,
                summary.assumptions().stream()
                        .filter(assumed -> assumed.what().contains("starts over"))
                        .count());
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-02T06:12:05+01:00, 2026-03-02T06:12:05+01:00",
        "2026-03-02 06:12:05.250 +0100, 2026-03-02T06:12:05.250+01:00",
        "'2026-03-02 06:12:05,250', 2026-03-02T06:12:05.250Z",
        "20260302T061205Z, 2026-03-02T06:12:05Z",
        "20260302061205, 2026-03-02T06:12:05Z",
        "2026/03/02 06:12:05, 2026-03-02T06:12:05Z",
        "02.03.2026 06:12, 2026-03-02T06:12Z",
        "2.3.26 6:12:05, 2026-03-02T06:12:05Z",
        "02-MAR-2026 06:12:05, 2026-03-02T06:12:05Z",
        "2. März 2026 06:12:05, 2026-03-02T06:12:05Z"
    })
    void dates_are_read_as_they_are_usually_written(String written, String read) throws IOException {
        var trace = only(read(
                "Serial: 000123\nRecorded: " + written + '\n' + table(';', '.', "Angle (deg)", "Torque (Nm)"),
                "UTF-8"));
        assertEquals(OffsetDateTime.parse(read), trace.identity().time());
    }

    @ParameterizedTest
    @ValueSource(strings = {"03/02/2026 06:12", "1772431925", "2026-02-30 06:12", "02.03.2026"})
    void what_may_be_another_day_or_none_is_not_guessed(String written) throws IOException {
        var traces = new ArrayList<Trace>();
        var file = file(
                "Serial: 000123\nRecorded: " + written + '\n' + table(';', '.', "Angle (deg)", "Torque (Nm)"), "UTF-8");
        var summary = LogReader.read(List.of(file), ReadOptions.withDefaults(), traces::add);
        assertNull(only(traces).identity().time());
        assertEquals(ProblemCode.BAD_TIME, summary.problems().get(0).code());
    }

    /** The clocks of Europe/Berlin went on at 02:00 on 29 March 2026 and back at 03:00 on 25 October (Directive 2000/84/EC). */
    @ParameterizedTest
    @CsvSource({"2026-03-29 02:30:00, bad-time", "2026-10-25 02:30:00, assumed", "2026-10-25 03:30:00, ''"})
    void a_local_time_that_no_clock_shows_or_one_that_comes_twice_is_said(String written, String code)
            throws IOException {
        var traces = new ArrayList<Trace>();
        var file = file(
                "Serial: 000123\nTime zone: Europe/Berlin\nRecorded: " + written + '\n'
                        + table(';', '.', "Angle (deg)", "Torque (Nm)"),
                "UTF-8");
        var summary = LogReader.read(List.of(file), ReadOptions.withDefaults(), traces::add);
        assertEquals(code.equals("bad-time"), only(traces).identity().time() == null);
        assertEquals(code.equals("bad-time") ? 1 : 0, summary.problems().size());
        assertEquals(
                code.equals("assumed"),
                summary.assumptions().stream()
                        .anyMatch(assumed -> assumed.what().contains("twice")));
    }

    @ParameterizedTest
    @CsvSource({"Date;Time of day", "Datum;Uhrzeit"})
    void day_and_time_of_day_in_two_columns_are_one_moment(String columns) throws IOException {
        var text = new StringBuilder("Seriennummer;" + columns + ";Winkel (Grad);Moment (Nm)\n");
        rows(';', '.', 0, SAMPLES).lines().forEach(row -> text.append("000123;02.03.2026;06:12:05;" + row + '\n'));
        var trace = only(read(text.toString(), "UTF-8"));
        assertEquals(
                OffsetDateTime.parse("2026-03-02T06:12:05Z"), trace.identity().time());
        assertSame(trace);
    }

    @Test
    void marks_between_thousands_are_no_decimal_marks() throws IOException {
        var trace = only(read("Serial: 000123\nAngle (deg);Torque (Nm)\n1.234,5;1,5\n1'300,0;2,5\n", "UTF-8"));
        assertEquals(1234.5, trace.curve().angleDeg(0));
        assertEquals(1300.0, trace.curve().angleDeg(1));
    }

    private static void assertSame(Trace trace) {
        assertEquals("000123", trace.identity().serial());
        assertEquals(SAMPLES, trace.curve().size());
        for (int i = 0; i < SAMPLES; i++) {
            assertEquals(angle(i), trace.curve().angleDeg(i));
            assertEquals(torque(i), trace.curve().torqueNm(i));
        }
    }

    private static Trace only(List<Trace> traces) {
        assertEquals(1, traces.size());
        return traces.get(0);
    }

    private List<Trace> read(String text, String encoding) throws IOException {
        var traces = new ArrayList<Trace>();
        var summary = LogReader.read(List.of(file(text, encoding)), ReadOptions.withDefaults(), traces::add);
        assertEquals(List.of(), summary.problems());
        return traces;
    }

    private Path file(String text, String encoding) throws IOException {
        return Files.write(folder.resolve("a.csv"), text.getBytes(Charset.forName(encoding)));
    }

    private static String table(char delimiter, char mark, String angle, String torque) {
        return angle + delimiter + torque + '\n' + rows(delimiter, mark, 0, SAMPLES);
    }

    private static String rows(char delimiter, char mark, int from, int until) {
        var rows = new StringBuilder();
        for (int i = from; i < until; i++) {
            rows.append(number(angle(i), mark))
                    .append(delimiter)
                    .append(number(torque(i), mark))
                    .append('\n');
        }
        return rows.toString();
    }

    private static String aligned(String left, String right) {
        return String.format(Locale.ROOT, "%18s%18s%n", left, right);
    }

    private static double angle(int i) {
        return 2.5 * i;
    }

    private static double torque(int i) {
        return i < 40 ? 1.25 : 1.25 + 0.5 * (i - 40);
    }

    private static String number(double value, char mark) {
        return String.format(Locale.ROOT, "%.2f", value).replace('.', mark);
    }
}
