package org.tautlog.intake.specification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.problem.ProblemCode;

class PlaceSectionTest {
    private static final String WHOLE = SpecificationFile.write(FenwaterEngine.specification()
            .withBoltPositions(List.of("1", "2"))
            .withBoltPlaces(List.of(new BoltPlace("1", 24, 118), new BoltPlace("2", 108, 22))));

    @Test
    void a_place_takes_any_unit_of_length() {
        var read =
                SpecificationFile.read(WHOLE.replace("value = 118.0, unit = \"mm\"", "value = 5, unit = \"in\""), "j");
        assertEquals(
                List.of(new BoltPlace("1", 24, 127), new BoltPlace("2", 108, 22)),
                read.value().orElseThrow().boltPlaces());
    }

    @ParameterizedTest(name = "{0} -> {1}: {3}")
    @CsvSource(delimiter = '~', textBlock = """
            bolt = "2"~bolt = "3"~BAD_VALUE~(position[2].bolt): '3' is not known; expected one of 1, 2
            bolt = "2"~bolt = "3"~MISSING_KEY~(position): no [[position]] is given for bolt 2; expected a place for every bolt position or for none
            bolt = "2"~bolt = "1"~BAD_VALUE~(position[2].bolt): bolt '1' is given a second place; expected one place each
            bolt-positions = ["1", "2"]~~MISSING_KEY~[[position]] is given without the bolt positions that an engine has; add bolt-positions to [specification]
            bolt-positions = ["1", "2"]~bolt-positions = ["1", "2", "3", "4"]~MISSING_KEY~no [[position]] is given for bolt 3, 4;
            x = { value = 108.0~z = { value = 108.0~UNKNOWN_KEY~'z' is not a key of position[2]; expected one of bolt, x, y
            x = { value = 108.0, unit = "mm" }~x = { value = 108.0, unit = "kN" }~BAD_UNIT~'kN' is no unit of length
            x = { value = 108.0, unit = "mm" }~x = 108.0~BAD_VALUE~x is of the wrong kind
            """)
    void a_slip_is_named_with_what_was_meant(String right, String slip, ProblemCode code, String words) {
        var text = WHOLE.replace(right, slip == null ? "" : slip);
        var read = SpecificationFile.read(text, "joint.toml");
        assertTrue(read.value().isEmpty());
        assertTrue(
                read.problems().stream()
                        .anyMatch(one -> one.code() == code && one.sentence().contains(words)),
                () -> read.problems().toString());
    }

    @Test
    void two_bolts_in_one_place_are_refused() {
        var text = WHOLE.replace("value = 108.0", "value = 24.5").replace("value = 22.0", "value = 118.0");
        assertEquals(
                List.of("joint.toml:13:1 (position[2].x): bolts '1' and '2' lie in one place; expected at least 1.0 mm"
                        + " between them"),
                SpecificationFile.read(text, "joint.toml").problems().stream()
                        .map(problem -> problem.sentence())
                        .toList());
    }
}
