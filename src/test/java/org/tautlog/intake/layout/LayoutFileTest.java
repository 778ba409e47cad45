package org.tautlog.intake.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.problem.ProblemCode;

class LayoutFileTest {
    private static final String WHOLE = """
            [log]
            shape = "long-table"
            ignore = ["truth.csv"]
            [text]
            encoding = "ISO-8859-1"
            delimiter = "tab"
            decimal-mark = ","
            thousands = true
            [identity]
            serial = { column = "Serial" }
            spindle = { file = "spindle" }
            bolt-lot = { value = "A17" }
            file-name = "SP(?<spindle>[0-9])[.]csv"
            [time]
            format = "dd.MM.yyyy HH:mm:ss"
            zone = "Europe/Berlin"
            [samples]
            angle = { column = "W", unit = "turns", tightening = "negative" }
            time = { step = 1.2, unit = "ms" }
            stage = { column = "Step", marks = { Snug = 1, Turn = 2 } }
            [trace]
            key = ["Run"]
            """;

    @Test
    void a_whole_file_gives_its_layout() {
        var read = LayoutFile.read(WHOLE, "layout.toml");
        assertEquals(List.of(), read.problems());
        var layout = read.value().orElseThrow();
        assertEquals(LogShape.LONG_TABLE, layout.shape());
        assertEquals(new TextForm(StandardCharsets.ISO_8859_1, '\t', ',', true, "#"), layout.text());
        assertEquals(
                Map.of(
                        IdentityField.SERIAL, new Origin.Column("Serial"),
                        IdentityField.SPINDLE, new Origin.FileName("spindle"),
                        IdentityField.BOLT_LOT, new Origin.Fixed("A17")),
                layout.identity());
        assertEquals(ZoneId.of("Europe/Berlin"), layout.time().zone());
        assertEquals(
                Map.of(
                        SampleQuantity.ANGLE, new SampleSource("W", 360.0, -1, 0.0, Map.of()),
                        SampleQuantity.TIME, new SampleSource("", 0.001, 1, 1.2, Map.of()),
                        SampleQuantity.STAGE, new SampleSource("Step", null, 1, 0.0, Map.of("Snug", 1, "Turn", 2))),
                layout.samples());
        assertEquals(List.of("Run"), layout.traceKey());
        assertEquals(List.of("truth.csv"), layout.ignore());
    }

    @Test
    void an_empty_file_states_nothing() {
        assertEquals(
                LogLayout.unstated(), LayoutFile.read("", "layout.toml").value().orElseThrow());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '~', textBlock = """
            long-table~long-tabel~BAD_VALUE~2~did you mean 'long-table'?
            ISO-8859-1~ISO-8859-99~BAD_VALUE~5~windows-1252
            "tab"~"-"~BAD_VALUE~6~one of
            thousands = true~thousands = "yes"~BAD_VALUE~8~true or false
            serial =~serail =~UNKNOWN_KEY~10~did you mean 'serial'?
            { column = "Serial" }~{ column = "Serial", value = "1" }~BAD_VALUE~10~one of column, header, file, value
            { file = "spindle" }~{ file = "spindel" }~BAD_VALUE~11~(?<spindel>...)
            SP(?<~SP((?<~BAD_VALUE~13~is no pattern
            dd.MM.yyyy HH:mm:ss~dd.MM.yyyy bb~BAD_VALUE~15~is no time format
            Europe/Berlin~Europe/Berlim~BAD_VALUE~16~is no time zone
            "turns"~"Nm"~BAD_UNIT~18~one of deg, rad, gon, turn
            Turn = 2~Turn = 2.5~BAD_VALUE~20~a whole stage number
            """)
    void a_slip_is_named_with_its_place(String right, String slip, ProblemCode code, int line, String words) {
        var read = LayoutFile.read(WHOLE.replace(right, slip), "layout.toml");
        assertTrue(read.value().isEmpty());
        var problem = read.problems().get(0);
        assertEquals(code, problem.code(), problem::sentence);
        assertEquals(line, problem.where().line(), problem::sentence);
        assertTrue(problem.sentence().contains(words), problem::sentence);
    }
}
