package org.tautlog.intake.specification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;

class SpecificationFileTest {
    private static final String WHOLE = """
            [specification]
            name = "Through-bolt M10"
            version = "3"
            [method]
            snug-torque = { target = 20.0, unit = "N·m" }
            turn = { target = 1, unit = "turn" }
            [window]
            snug-torque = { low = 18.0, high = 23.0, unit = "N·m" }
            turn = { low = 355, high = 366, unit = "deg" }
            final-torque = { low = 60, high = 105, unit = "N·m" }
            torque-rate = { low = 90.0, high = 162.0, unit = "N·m/turn" }
            prevailing-torque = { high = 300, unit = "N·cm" }
            [window.onset]
            past-snug = { low = 120, unit = "deg" }
            past-origin = "open"
            least-final-gradient-ratio = 0.05
            [reading]
            onset-ratio = 0.45
            [faults]
            saturated-samples = 12
            [findings]
            note = ["soft-seating"]
            """;

    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    @Test
    void a_whole_file_gives_its_specification_with_units_converted() {
        var expected = new JointSpecification(
                "Through-bolt M10",
                "3",
                new TighteningMethod(20, 360),
                new Window(
                        new Band(18, 23),
                        new Band(355, 366),
                        new Band(60, 105),
                        new Band(0.25, 0.45),
                        new Band(-NO_LIMIT, 3),
                        new OnsetLimits(new Band(120, NO_LIMIT), Band.open(), 0.05)),
                new ReadingRule(15, 0.45, 0.67, 0.33, 2, 10),
                FaultRule.withDefaults(),
                Map.of(FindingCode.SOFT_SEATING, Consequence.NOTE));
        var read = SpecificationFile.read(WHOLE, "joint.toml");
        assertEquals(List.of(), read.problems());
        var given = read.value().orElseThrow();
        assertEquals(12, given.faults().saturatedSamples());
        assertEquals(expected, given.withFaults(FaultRule.withDefaults()));
    }

    @ParameterizedTest(name = "{0} -> {1}: {4}")
    @CsvSource(delimiter = '~', textBlock = """
            version = "3"~ver = "3"~UNKNOWN_KEY~3:1~(specification.ver): 'ver' is not a key of specification; expected one of name, version, bolt-positions
            version = "3"~~MISSING_KEY~1:1~(specification.version): 'version' is missing in specification; add it
            version = "3"~version = 3~BAD_VALUE~3:1~(specification.version): version is of the wrong kind; expected a text in quotes
            [findings]~[finding]~UNKNOWN_KEY~21:1~(finding): 'finding' is not a key of this file; expected one of specification, method, window, reading, faults, findings, bolt, layer, friction, drive, warm-up, tolerance, position; did you mean 'findings'?
            soft-seating~soft-seeting~BAD_VALUE~22:1~did you mean 'soft-seating'?
            low = 355, high = 366~low = 366, high = 355~LIMITS_UPSIDE_DOWN~9:10~(window.turn.low): limits of turn are upside down: low is 366.0, high is 355.0; expected low not above high; exchange them
            low = 355, high = 366~lov = 355~UNKNOWN_KEY~9:10~did you mean 'low'?
            target = 20.0, unit = "N·m"~target = 20.0, unit = "deg"~BAD_UNIT~5:32~(method.snug-torque.unit): 'deg' is no unit of torque; expected one of N·m, N·cm, cN·m, dN·m, daN·m, mN·m, kN·m, lbf·ft, lbf·in, ozf·in, kgf·m, kgf·cm
            target = 20.0~target = -4.0~BAD_VALUE~5:1~(method.snug-torque): snug-torque is -4.0; it must be above 0.0 and finite, N·m
            target = 20.0~target = inf~BAD_VALUE~5:17~expected a finite number
            onset-ratio = 0.45~onset-ratio = 0.95~BAD_VALUE~18:1~(reading.onset-ratio): onset-ratio is 0.95
            past-origin = "open"~past-origin = "none"~BAD_VALUE~15:1~or "open" where there are none on purpose
            past-origin = "open"~past-origin = { unit = "deg" }~MISSING_KEY~15:1~past-origin has neither 'low' nor 'high'
            past-origin = "open"~~MISSING_KEY~13:1~'past-origin' is missing in window.onset
            [reading]~[reading~BAD_SYNTAX~17:9~expected
            version = "3"~name = "again"~BAD_SYNTAX~3:1~previously defined
            note = ["soft-seating"]~note = ["soft-seating", "soft-seating"]~BAD_VALUE~22:1~listed twice
            saturated-samples = 12~saturated-samples = 12.5~BAD_VALUE~20:1~a whole number
            """)
    void a_slip_is_named_with_its_place_and_what_was_meant(
            String right, String slip, ProblemCode code, String place, String words) {
        var read = SpecificationFile.read(WHOLE.replace(right, slip == null ? "" : slip), "joint.toml");
        assertTrue(read.value().isEmpty());
        var problem = read.problems().stream()
                .filter(one -> one.code() == code)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + code + " among " + read.problems()));
        assertEquals("joint.toml:" + place, place(problem));
        assertTrue(problem.sentence().contains(words), problem::sentence);
    }

    @Test
    void one_reading_finds_every_slip() {
        var read = SpecificationFile.read(
                WHOLE.replace("version", "versoin").replace("0.05", "5.0").replace("\"N·cm\"", "\"kg\""), "joint.toml");
        assertEquals(
                List.of(ProblemCode.MISSING_KEY, ProblemCode.UNKNOWN_KEY, ProblemCode.BAD_UNIT, ProblemCode.BAD_VALUE),
                read.problems().stream().map(Problem::code).collect(Collectors.toList()));
    }

    @Test
    void a_file_that_is_not_there_is_a_problem_and_no_failure() {
        var read = SpecificationFile.read(Path.of("no-such-joint.toml"));
        assertEquals(ProblemCode.NOT_READABLE, read.problems().get(0).code());
        assertEquals(
                "no-such-joint.toml: the file cannot be read: it is not there; check its name",
                read.problems().get(0).sentence());
    }

    @Test
    void brackets_without_end_do_not_exhaust_the_stack() {
        var read = SpecificationFile.read("a=" + "[".repeat(100_000), "joint.toml");
        assertEquals(ProblemCode.BAD_SYNTAX, read.problems().get(0).code());
    }

    private static String place(Problem problem) {
        return problem.where().file()
                + ':'
                + problem.where().line()
                + ':'
                + problem.where().column();
    }
}
