package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.tautlog.intake.file.LogFile;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

class LayoutProposalTest {
    private static final Path CASES = Path.of("src/test/resources/intake");

    @TempDir
    private Path folder;

    @Test
    void a_proposed_layout_reads_the_same_traces_as_looking_at_the_file() throws IOException {
        List<Path> logs;
        try (var found = Files.walk(CASES)) {
            logs = found.filter(file -> Files.isRegularFile(file)
                            && LogFile.looksLikeLog(file.getFileName().toString()))
                    .sorted()
                    .toList();
        }
        int compared = 0;
        for (var log : logs) {
            var told = new ArrayList<Trace>();
            LogReader.read(List.of(log), ReadOptions.withDefaults().withLayout(LogLayout.unstated()), told::add);
            if (told.isEmpty()) {
                continue;
            }
            var proposal = LayoutProposal.of(log, 1000);
            assertTrue(proposal.value().isPresent(), () -> log + " " + proposal.problems());
            assertEquals(
                    told.stream().map(LayoutProposalTest::words).toList(),
                    proposal.value().get().traces().stream()
                            .map(LayoutProposalTest::words)
                            .toList(),
                    () -> log + "\n" + proposal.value().get().text());
            compared++;
        }
        assertTrue(compared >= 40, "compared " + compared);
    }

    @Test
    void words_of_a_stage_column_get_numbers_in_their_order() throws IOException {
        var proposal = propose("Serial;Step;Angle;Torque\nFW-1;Snug;0;1\nFW-1;Snug;1;2\nFW-1;Turn;2;3\n");
        var curve = proposal.traces().get(0).curve();
        assertEquals(
                List.of(1, 1, 2), IntStream.range(0, 3).mapToObj(curve::stage).toList());
    }

    @ParameterizedTest
    @CsvSource({
        "17/03/2026 06:12:05,d/M/uuuu H:mm:ss,2026-03-17T06:12:05Z",
        "3/17/2026 06:12,M/d/uuuu H:mm,2026-03-17T06:12Z",
        "17-03-2026 06:12,d-M-uuuu H:mm,2026-03-17T06:12Z",
        "03/17/26 6:12:05 PM,M/d/uu h:mm:ss a,2026-03-17T18:12:05Z",
        "31/12/2026T06:12:05.250,d/M/uuuu'T'H:mm:ss.SSS,2026-12-31T06:12:05.250Z"
    })
    void a_day_above_twelve_tells_which_number_of_a_date_with_slashes_is_the_day(
            String written, String format, String time) throws IOException {
        var proposal = propose("Serial;Date;Angle;Torque\nFW-1;" + written + ";0;1\nFW-1;" + written + ";1;2\n");
        assertTrue(proposal.text().contains("\nformat = \"" + format + "\""), proposal.text());
        assertEquals(
                OffsetDateTime.parse(time), proposal.traces().get(0).identity().time());
    }

    @Test
    void a_date_that_may_be_another_day_elsewhere_is_said_to_be_ambiguous_and_not_read() throws IOException {
        var proposal = propose("Serial;Date;Angle;Torque\nFW-1;03/02/2026 06:12;0;1\nFW-1;03/02/2026 06:12;1;2\n");
        assertTrue(proposal.text().contains("# AMBIGUOUS: 03/02/2026 06:12 names no day above 12"), proposal.text());
        assertTrue(proposal.text().contains("\n# format = \"d/M/uuuu H:mm\""), proposal.text());
        assertTrue(proposal.text().contains("\n# format = \"M/d/uuuu H:mm\""), proposal.text());
        assertNull(proposal.traces().get(0).identity().time());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1772456709", "1772456709123", "2026-W10-1 14:05:09"})
    void a_time_of_no_usual_form_is_said_not_to_be_read(String written) throws IOException {
        var proposal = propose("Serial;Date;Angle;Torque\nFW-1;" + written + ";0;1\nFW-1;" + written + ";1;2\n");
        assertTrue(proposal.text().contains("\n# format = \"\"   # " + written + " has none"), proposal.text());
    }

    @Test
    void a_date_above_the_table_is_told_as_one_in_it_is() throws IOException {
        var proposal = propose("Serial: FW-1\nDate: 17/03/2026 06:12\nAngle;Torque\n0;1\n1;2\n2;3\n");
        assertTrue(proposal.text().contains("\nformat = \"d/M/uuuu H:mm\""), proposal.text());
        assertEquals(
                OffsetDateTime.parse("2026-03-17T06:12Z"),
                proposal.traces().get(0).identity().time());
    }

    @Test
    void columns_that_no_name_tells_are_told_by_their_numbers_and_marked() throws IOException {
        var rows = new StringBuilder("Line 3\nTick;K1;K2;K3\n");
        for (int i = 0; i < 60; i++) {
            double angle = 3 * i + Math.sin(i);
            rows.append(String.format(
                    Locale.ROOT, "%d;%.3f;%.2f;%.2f%n", i, 0.01 * i, angle, i < 20 ? 1.0 : 1.0 + 0.8 * (i - 20)));
        }
        var proposal = propose(rows.toString());
        assertTrue(proposal.text().contains("angle = { column = \"K2\""), proposal.text());
        assertTrue(proposal.text().contains("torque = { column = \"K3\""), proposal.text());
        assertEquals(
                2,
                proposal.text()
                        .lines()
                        .filter(line -> line.contains("guessed") && line.endsWith("CHECK THIS"))
                        .count(),
                proposal.text());
        assertEquals("strange", proposal.traces().get(0).identity().serial());
    }

    @Test
    void a_unit_that_is_not_known_is_never_taken_for_another() throws IOException {
        var rows = new StringBuilder("Serial;Angle (deg);Torque (zN·m)\n");
        for (int i = 0; i < 40; i++) {
            rows.append("00471")
                    .append(i / 20)
                    .append(';')
                    .append(i % 20)
                    .append(';')
                    .append(i % 20)
                    .append('\n');
        }
        var proposal = propose(rows.toString());
        assertTrue(
                proposal.text().contains("\n# torque = { column = \"Torque (zN·m)\", unit = \"\" }"), proposal.text());
        assertTrue(proposal.text().contains("say which unit it is; CHECK THIS"), proposal.text());
        assertTrue(proposal.text().contains("\nserial = { column = \"Serial\" }"), proposal.text());
        assertEquals(0, proposal.traces().size());
    }

    @Test
    void a_column_of_serials_is_guessed_to_be_no_torque() throws IOException {
        var rows = new StringBuilder("Serial;K1;K2 (kilo)\n");
        for (int i = 0; i < 40; i++) {
            rows.append(String.format(
                    Locale.ROOT,
                    "%d;%.3f;%.4f%n",
                    4711 + i / 20,
                    3 * i + Math.sin(i),
                    i < 20 ? 0.001 : 0.001 + 0.0008 * (i - 20)));
        }
        var text = propose(rows.toString()).text();
        assertTrue(text.contains("\n# torque = { column = \"K2 (kilo)\", unit = \"\" }"), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"999;1,5|1.001;2,5|1.003;3,5", "998,5;1,5|1.014,35;2,5|1.030,35;3,5"})
    void marks_between_thousands_are_stated_where_nothing_else_explains_the_numbers(String rows) throws IOException {
        var text = "Serial: FW-1\nAngle (deg);Torque (Nm)\n997;0,5\n" + rows.replace('|', '\n') + '\n';
        var proposal = propose(text);
        assertTrue(proposal.text().contains("\nthousands = true"), proposal.text());
        var curve = proposal.traces().get(0).curve();
        assertTrue(curve.angleDeg(3) > 1000, proposal.text());
    }

    @Test
    void a_thousand_or_one_is_not_decided() throws IOException {
        var proposal = propose("Serial: FW-1\nAngle (deg);Torque (Nm)\n0,5;1.001\n1,5;1.003\n2,5;1.900\n");
        assertFalse(proposal.text().contains("\nthousands"), proposal.text());
        assertTrue(
                proposal.summary().problems().get(0).action().contains("thousands = true"),
                proposal.summary().problems().toString());
    }

    @Test
    void words_of_a_stage_are_found_far_down() throws IOException {
        var rows = new StringBuilder("Serial,Step,Angle,Torque\n,,deg,Nm\n");
        for (int i = 0; i < 3000; i++) {
            rows.append("FW-1,").append(i < 2500 ? "Snug," : "Turn,").append(i).append(",1\n");
        }
        assertTrue(propose(rows.toString()).text().contains("marks = { \"Snug\" = 1, \"Turn\" = 2 }"));
    }

    @Test
    void a_german_export_of_windows_with_semicolons_and_decimal_commas_is_read() throws IOException {
        var export = """
                Prüfprotokoll – Fenwater;;;
                Motornummer;FW-1;;
                Schraubstelle;6;;
                Datum;17.03.2026;;
                Uhrzeit;07:59:33;;
                ;;;
                Zeit [s];Drehwinkel [°];Drehmoment [Nm];Stufe
                0,000;0,00;-0,15;1
                0,002;0,50;1,25;1
                0,004;1,25;2,50;2
                """.replace("\n", "\r\n");
        Files.write(folder.resolve("strange.csv"), export.getBytes(Charset.forName("windows-1252")));
        var trace = LayoutProposal.of(folder.resolve("strange.csv"), 3)
                .value()
                .orElseThrow()
                .traces()
                .get(0);
        assertEquals("6", trace.identity().bolt());
        assertEquals(
                OffsetDateTime.parse("2026-03-17T07:59:33Z"), trace.identity().time());
        assertEquals(1.25, trace.curve().angleDeg(2));
        assertEquals(2, trace.curve().stage(2));
    }

    @Test
    void two_tables_for_two_stages_are_one_trace() throws IOException {
        var trace = propose("""
                        Serial: FW-1

                        Stage 1
                        Angle (deg);Torque (Nm)
                        0;1
                        1;2
                        2;3

                        Stage 2
                        Angle (deg);Torque (Nm)
                        0;3
                        1;4
                        """).traces().get(0);
        assertEquals(3, trace.curve().angleDeg(4));
        assertEquals(2, trace.curve().stage(4));
    }

    @Test
    void a_clock_time_in_an_aligned_head_is_no_key() throws IOException {
        var proposal = propose("""
                *****
                  Plant           Fenwater
                  Serial number   FW-1
                  Bolt position   6
                  Date            17.03.2026 07:59:33
                -----

                  Index   Angle[deg]  Torque[Nm]
                      0         0.00        1.00
                      1         1.00        2.00
                """);
        assertEquals(
                OffsetDateTime.parse("2026-03-17T07:59:33Z"),
                proposal.traces().get(0).identity().time());
        assertEquals("6", proposal.traces().get(0).identity().bolt());
    }

    @Test
    void where_nothing_tells_the_columns_they_are_named_to_be_filled_in() throws IOException {
        var proposal = propose("Nr;K1;K2\n1;[0 1 2];[1 2 3]\n2;[0 1 2];[1 2 3]\n3;[0 1 2];[1 2 3]\n");
        assertTrue(proposal.text().contains("\n#   \"K2\"\n"), proposal.text());
        assertTrue(proposal.text().contains("\n# torque = { column = \"\", unit = \"\" }"), proposal.text());
        assertEquals(0, proposal.traces().size());
    }

    @Test
    void a_file_without_a_table_of_numbers_gets_a_reason_and_no_layout() throws IOException {
        var outcome = LayoutProposal.of(Files.writeString(folder.resolve("a.txt"), "Dear colleague,\nsee below.\n"), 3);
        assertTrue(outcome.value().isEmpty());
        assertEquals(ProblemCode.UNKNOWN_LAYOUT, outcome.problems().get(0).code());
    }

    private LayoutProposal propose(String text) throws IOException {
        var outcome = LayoutProposal.of(Files.writeString(folder.resolve("strange.csv"), text), 3);
        return outcome.value().orElseThrow(() -> new AssertionError(outcome.problems()));
    }

    private static String words(Trace trace) {
        var curve = trace.curve();
        var samples = IntStream.range(0, curve.size())
                .mapToObj(
                        i -> curve.angleDeg(i) + " " + curve.torqueNm(i) + (curve.hasTime() ? " " + curve.timeS(i) : "")
                                + (curve.hasStages() ? " " + curve.stage(i) : ""))
                .toList();
        return trace.identity() + " " + trace.source() + " " + samples;
    }
}
