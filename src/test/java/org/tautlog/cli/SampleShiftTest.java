package org.tautlog.cli;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadOptions;
import org.tautlog.intake.ReadSummary;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.line.Fault;
import org.tautlog.review.ImportRecord;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.ShiftReviewer;
import org.tautlog.review.stream.ChartedFeature;

/** The shift of the sample logs, read and judged as a user would, against what really happened to each bolt. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SampleShiftTest {
    private static final Path LOGS = Path.of("sample-logs");

    /** For each fault that a curve can show, the findings any of which names it rightly. */
    private static final Map<Fault, Set<FindingCode>> NAMED = Map.ofEntries(
            entry(Fault.WEAK_BOLT, Set.of(FindingCode.WEAK_BOLT)),
            entry(Fault.TURN_SHORT, Set.of(FindingCode.TURN_SHORT)),
            entry(Fault.TURN_LONG, Set.of(FindingCode.TURN_LONG)),
            entry(Fault.NOT_SEATED, Set.of(FindingCode.NOT_SEATED)),
            entry(Fault.STRIPPED_THREAD, Set.of(FindingCode.STRIPPING)),
            entry(Fault.CROSS_THREADED, Set.of(FindingCode.CROSS_THREADED)),
            entry(Fault.ALREADY_TIGHT, Set.of(FindingCode.ALREADY_TIGHT)),
            entry(Fault.WASHER_MISSING, Set.of(FindingCode.WRONG_PARTS)),
            entry(Fault.SOFT_LAYER, Set.of(FindingCode.SOFT_SEATING)),
            entry(Fault.ANGLE_SLIP, Set.of(FindingCode.ANGLE_SLIP)),
            entry(Fault.DRY_BOLT, Set.of(FindingCode.HIGH_FRICTION)),
            entry(Fault.STICK_SLIP, Set.of(FindingCode.STICK_SLIP)),
            entry(Fault.TRUNCATED, Set.of(FindingCode.TRUNCATED)),
            entry(Fault.REPEATED_ATTEMPT, Set.of(FindingCode.REPEATED_ATTEMPT)));

    private final Map<String, Judgement> judged = new HashMap<>();
    private List<CSVRecord> truths = List.of();
    private ReadSummary read = LogReader.read(List.of(), ReadOptions.withDefaults(), trace -> {});
    private ShiftReview review;

    @BeforeAll
    void read_and_judge_the_shift() throws IOException {
        var specification =
                SpecificationFile.read(LOGS.resolve("joint.toml")).value().orElseThrow();
        var reviewer = new ShiftReviewer(specification, ShiftReviewer.USUALLY_LISTED);
        read = LogReader.read(List.of(LOGS), ReadOptions.withDefaults(), trace -> {
            var judgement = Judge.judge(trace, specification);
            var identity = trace.identity();
            judged.put(identity.serial() + '/' + identity.bolt() + '/' + identity.attempt(), judgement);
            reviewer.accept(judgement, trace.curve());
        });
        review = reviewer.review(new ImportRecord(
                (int) read.files().in(),
                (int) read.files().ignored(),
                read.traces().kept(),
                read.traces().rejected(),
                read.problems(),
                read.assumptions()));
        try (var rows = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(LOGS.resolve("truth.csv")))) {
            truths = rows.getRecords();
        }
    }

    @Test
    void every_tightening_of_all_three_shapes_is_read_but_the_damaged_one() {
        assertEquals(514, truths.size());
        assertEquals(513, read.traces().kept(), read.problems().toString());
        assertEquals(1, read.traces().rejected());
        var damaged = withFault(Fault.UNREADABLE_ROWS);
        assertEquals(1, damaged.size());
        assertEquals(null, judged.get(key(damaged.get(0))));
        var where = read.problems().get(0).where();
        assertTrue(where.toString().contains("S40"), read.problems().toString());
    }

    @Test
    void every_fault_that_a_curve_shows_is_found_and_named() {
        var missed = new ArrayList<String>();
        var seen = new TreeSet<Fault>();
        for (var truth : truths) {
            var fault = fault(truth);
            var names = NAMED.get(fault);
            if (names == null) {
                continue;
            }
            seen.add(fault);
            var judgement = Objects.requireNonNull(judged.get(key(truth)), key(truth));
            if (judgement.findings().stream().noneMatch(finding -> names.contains(finding.code()))) {
                missed.add(key(truth) + ' ' + fault.word() + " was called " + words(judgement));
            }
            assertNotEquals(Verdict.CONFORMING, judgement.verdict(), key(truth));
        }
        assertEquals(List.of(), missed);
        assertEquals(NAMED.keySet(), seen);
    }

    @Test
    void no_good_tightening_is_called_nonconforming() {
        var wronged = truths.stream()
                .filter(truth -> truth.get("good").equals("yes"))
                .map(truth -> judged.get(key(truth)))
                .filter(judgement -> judgement != null && judgement.verdict() == Verdict.NONCONFORMING)
                .map(SampleShiftTest::words)
                .toList();
        assertEquals(List.of(), wronged);
    }

    @Test
    void an_ordinary_tightening_conforms_without_a_finding() {
        var ordinary = withFault(Fault.NONE);
        assertTrue(ordinary.size() > 400, "saw " + ordinary.size());
        var doubted = ordinary.stream()
                .map(truth -> Objects.requireNonNull(judged.get(key(truth))))
                .filter(judgement -> !judgement.findings().isEmpty())
                .map(SampleShiftTest::words)
                .toList();
        assertEquals(List.of(), doubted);
    }

    @Test
    void a_bad_bolt_is_never_passed() {
        var passed = truths.stream()
                .filter(truth -> truth.get("good").equals("no"))
                .filter(truth -> Objects.requireNonNull(judged.get(key(truth))).verdict() == Verdict.CONFORMING)
                .map(SampleShiftTest::key)
                .toList();
        assertEquals(List.of(), passed);
    }

    @Test
    void the_transducer_out_of_scale_is_found_by_its_spindle_and_not_by_its_bolts() {
        var drifted = withFault(Fault.TRANSDUCER_OUT_OF_SCALE);
        assertTrue(drifted.size() >= 30, "saw " + drifted.size());
        for (var truth : drifted) {
            var verdict = Objects.requireNonNull(judged.get(key(truth))).verdict();
            assertTrue(verdict == Verdict.CONFORMING || verdict == Verdict.REVIEW, key(truth) + ' ' + verdict);
        }
        var spindle = drifted.get(0).get("station") + '/' + drifted.get(0).get("spindle");
        var moved = review.changes().stream()
                .filter(change -> change.feature() != ChartedFeature.TURN)
                .filter(change ->
                        (change.stream().station() + '/' + change.stream().spindle()).equals(spindle))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no change of torque on " + spindle));
        assertEquals(1, moved.alike(), "the spindle moved alone");
        int since = Integer.parseInt(drifted.get(0).get("serial").substring(3));
        int found = Integer.parseInt(moved.first().serial().substring(3));
        assertTrue(Math.abs(found - since) <= 2, "since engine " + since + ", found since " + found);
    }

    private List<CSVRecord> withFault(Fault fault) {
        return truths.stream().filter(truth -> fault(truth) == fault).toList();
    }

    private static Fault fault(CSVRecord truth) {
        return Fault.valueOf(truth.get("fault").replace('-', '_').toUpperCase(java.util.Locale.ROOT));
    }

    private static String key(CSVRecord truth) {
        return truth.get("serial") + '/' + truth.get("bolt") + '/' + truth.get("attempt");
    }

    private static String words(Judgement judgement) {
        return judgement.identity().words()
                + ' '
                + judgement.verdict().word()
                + ' '
                + judgement.findings().stream()
                        .map(finding -> finding.code().word())
                        .collect(Collectors.joining(", "));
    }
}
