package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.shape.Landmarks;
import org.tautlog.review.stream.Levels;
import org.tautlog.signature.EndState;
import org.tautlog.trace.TraceIdentity;

/** Peers are what a plain look at every tightening finds: ties of time, too few, none and clocks without a zone alike. */
class NearPeersLaws {
    private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-17T06:00:00+01:00");

    @Property(tries = 300)
    void peers_are_those_that_a_plain_look_finds(
            @ForAll("tightenings") Judgement one, @ForAll("surroundings") List<Neighbour> others) {
        var inOrder = new ArrayList<>(others);
        inOrder.sort(Comparator.comparing(
                other -> other.identity().time(), Comparator.nullsLast(OffsetDateTime.timeLineOrder())));
        var peers = NearPeers.of(one, inOrder);
        assertEquals(nearest(one, inOrder, NearPeers.LEARNED_EACH_SIDE), peers.learned());
        assertEquals(nearest(one, inOrder, NearPeers.DRAWN_EACH_SIDE), peers.drawn());
        assertTrue(peers.drawn().size() <= 2 * NearPeers.DRAWN_EACH_SIDE, peers.toString());
    }

    private static List<Neighbour> nearest(Judgement one, List<Neighbour> inOrder, int eachSide) {
        return inOrder.stream()
                .filter(other -> isPeer(one, other) && nearer(one, other, inOrder) < eachSide)
                .toList();
    }

    /** How many peers on the same side lie between a tightening and one of its peers. */
    private static long nearer(Judgement one, Neighbour other, List<Neighbour> inOrder) {
        int place = inOrder.indexOf(other);
        boolean before = isBefore(other.identity(), one.identity());
        var between = before ? inOrder.subList(place + 1, inOrder.size()) : inOrder.subList(0, place);
        return between.stream()
                .filter(it -> isPeer(one, it) && isBefore(it.identity(), one.identity()) == before)
                .count();
    }

    private static boolean isPeer(Judgement one, Neighbour other) {
        return one.identity().time() != null
                && other.identity().time() != null
                && other.judgement().verdict() == Verdict.CONFORMING
                && other.identity().attempt() == 1
                && other.identity().station().equals(one.identity().station())
                && other.identity().spindle().equals(one.identity().spindle())
                && other.identity().bolt().equals(one.identity().bolt());
    }

    private static boolean isBefore(TraceIdentity earlier, TraceIdentity later) {
        return earlier.time().isBefore(later.time());
    }

    @Provide
    Arbitrary<Judgement> tightenings() {
        var places = Arbitraries.of("1", "2");
        var minutes = Arbitraries.integers().between(0, 12).injectNull(0.1);
        return Combinators.combine(
                        places,
                        places,
                        places,
                        minutes,
                        Arbitraries.integers().between(-3, 3),
                        Arbitraries.integers().between(0, 1_000_000),
                        Arbitraries.of(Verdict.CONFORMING, Verdict.CONFORMING, Verdict.REVIEW))
                .as((station, spindle, bolt, minute, hours, engine, verdict) -> {
                    var made = EvidenceMade.judgement(1, spindle, 1, verdict, EndState.ELASTIC);
                    var time = minute == null
                            ? null
                            : START.plusMinutes(minute).withOffsetSameInstant(ZoneOffset.ofHours(hours));
                    return new Judgement(
                            new TraceIdentity("FW-" + engine, "S" + station, spindle, bolt, 1, time, ""),
                            made.source(),
                            made.specificationName(),
                            made.specificationVersion(),
                            made.signature(),
                            verdict,
                            List.of());
                });
    }

    @Provide
    Arbitrary<List<Neighbour>> surroundings() {
        return tightenings()
                .map(one -> new Neighbour(BriefJudgement.of(one), Levels.of(one), Landmarks.of(one.signature())))
                .list()
                .ofMaxSize(90)
                .uniqueElements();
    }
}
