package org.tautlog.intake.specification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;

class SpecificationFileLaws {
    @Property(tries = 100)
    void reading_gives_back_what_was_written(@ForAll("specifications") JointSpecification specification) {
        var read = SpecificationFile.read(SpecificationFile.write(specification), "joint.toml");
        assertEquals(
                specification, read.value().orElseThrow(), () -> read.problems().toString());
    }

    @Property(tries = 100)
    void any_text_gives_a_specification_or_a_problem(@ForAll String text) {
        var read = SpecificationFile.read(text, "joint.toml");
        assertTrue(read.value().isPresent() || !read.problems().isEmpty());
    }

    @Property(tries = 100)
    void a_file_cut_anywhere_or_with_a_letter_changed_never_fails_the_reader(
            @ForAll("specifications") JointSpecification specification, @ForAll("places") double at, @ForAll char put) {
        var text = SpecificationFile.write(specification);
        int cut = (int) (at * text.length());
        SpecificationFile.read(text.substring(0, cut), "joint.toml");
        SpecificationFile.read(text.substring(0, cut) + put + text.substring(cut + 1), "joint.toml");
    }

    private static List<BoltPlace> inARow(List<String> bolts) {
        return IntStream.range(0, bolts.size())
                .mapToObj(i -> new BoltPlace(bolts.get(i), 80.5 * i, -22))
                .toList();
    }

    @Provide
    Arbitrary<Double> places() {
        return Arbitraries.doubles().between(0, 0.99);
    }

    @Provide
    Arbitrary<JointSpecification> specifications() {
        var names = Arbitraries.strings().ofMinLength(1).ofMaxLength(20).filter(s -> !s.isBlank() && isText(s));
        var bands = bands();
        var windows =
                Combinators.combine(bands, bands, bands, bands, bands, onsets()).as(Window::new);
        var methods = Combinators.combine(
                        Arbitraries.doubles().between(0.1, 500),
                        Arbitraries.doubles().between(1, 1000))
                .as(TighteningMethod::new);
        var readings = Arbitraries.doubles().between(2, 90).map(span -> new ReadingRule(span, 0.5, 0.67, 0.33, 2, 10));
        var faults = bands.map(band -> FaultRule.withDefaults().withRundownDeg(band));
        Arbitrary<Map<FindingCode, Consequence>> consequences =
                Arbitraries.maps(Arbitraries.of(FindingCode.class), Arbitraries.of(Consequence.class));
        var positions = names.map(String::strip).list().uniqueElements().ofMaxSize(8);
        var unstated = Combinators.combine(
                        names,
                        names,
                        methods,
                        windows,
                        readings,
                        faults,
                        consequences,
                        StatedJoints.any().injectNull(0.3))
                .as((name, version, method, window, reading, fault, consequence, joint) -> new JointSpecification(
                        name, version, method, window, reading, fault, consequence, joint, List.of(), List.of()));
        return Combinators.combine(unstated, positions, Arbitraries.of(true, false))
                .as((specification, bolts, placed) ->
                        specification.withBoltPositions(bolts).withBoltPlaces(placed ? inARow(bolts) : List.of()));
    }

    /** A text file holds no lone half of a surrogate pair. */
    private static boolean isText(String text) {
        return text.codePoints().noneMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    private static Arbitrary<OnsetLimits> onsets() {
        return Combinators.combine(bands(), bands(), Arbitraries.doubles().between(0, 1))
                .as(OnsetLimits::new);
    }

    private static Arbitrary<Band> bands() {
        var limit = Arbitraries.doubles().between(-1000, 1000);
        return Arbitraries.oneOf(
                Arbitraries.just(Band.open()),
                limit.map(low -> new Band(low, Double.POSITIVE_INFINITY)),
                limit.map(high -> new Band(Double.NEGATIVE_INFINITY, high)),
                Combinators.combine(limit, limit).as((a, b) -> new Band(Math.min(a, b), Math.max(a, b))));
    }
}
