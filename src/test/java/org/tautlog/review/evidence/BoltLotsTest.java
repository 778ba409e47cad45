package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.Stream;
import org.tautlog.signature.EndState;

/** A cause that lies in the bolts goes wherever bolts of the lot go; what one spindle does does not. */
class BoltLotsTest {
    @Test
    void a_lot_with_weak_bolts_on_spindles_of_two_stations_is_held_at_every_station() throws IOException {
        var line = line();
        line.add(shows(5, "S40", "1", "A18", FindingCode.WEAK_BOLT));
        line.add(shows(25, "S50", "3", "A18", FindingCode.WEAK_BOLT));
        var held = lotsWith(FindingCode.WEAK_BOLT, line);
        assertEquals(List.of("lot A18"), held.stream().map(Containment::place).toList());
        var lot = held.get(0);
        assertEquals(FindingCode.WEAK_BOLT.title(), lot.cause());
        assertEquals(40 + 2, lot.contained().size(), "every other bolt of the line is of A18");
        assertEquals(
                Set.of("S40", "S50"),
                lot.contained().stream()
                        .flatMap(one -> one.judgement().stream())
                        .map(one -> one.identity().station())
                        .collect(Collectors.toSet()));
        assertTrue(
                lot.contained().stream().allMatch(one -> one.reason() == Contained.Reason.OF_THE_LOT),
                lot.contained().toString());
    }

    @Test
    void weak_bolts_on_one_spindle_alone_hold_no_lot() throws IOException {
        var line = line();
        line.add(shows(5, "S40", "1", "A18", FindingCode.WEAK_BOLT));
        line.add(shows(6, "S40", "1", "A18", FindingCode.WEAK_BOLT));
        assertEquals(List.of(), lotsWith(FindingCode.WEAK_BOLT, line));
    }

    @Test
    void weak_bolts_of_two_lots_hold_neither() throws IOException {
        var line = line();
        line.add(shows(5, "S40", "1", "A18", FindingCode.WEAK_BOLT));
        line.add(shows(25, "S50", "3", "A17", FindingCode.WEAK_BOLT));
        assertEquals(List.of(), lotsWith(FindingCode.WEAK_BOLT, line));
    }

    @Test
    void what_a_tool_does_follows_no_lot_however_many_spindles_show_it() throws IOException {
        var line = line();
        line.add(shows(5, "S40", "1", "A18", FindingCode.TURN_SHORT));
        line.add(shows(25, "S50", "3", "A18", FindingCode.TURN_SHORT));
        assertEquals(List.of(), lotsWith(FindingCode.TURN_SHORT, line));
    }

    @Test
    void a_tightening_without_a_lot_is_of_none() throws IOException {
        var line = line();
        line.add(shows(5, "S40", "1", "", FindingCode.WEAK_BOLT));
        line.add(shows(25, "S50", "3", "", FindingCode.WEAK_BOLT));
        assertEquals(List.of(), lotsWith(FindingCode.WEAK_BOLT, line));
    }

    /** Forty engines; the first twenty pass S40, the others S50; bolts of two lots. */
    private static List<Judgement> line() {
        var line = new ArrayList<Judgement>();
        for (int engine = 0; engine < 40; engine++) {
            for (int bolt = 1; bolt <= 2; bolt++) {
                line.add(EvidenceMade.conforming(
                        EvidenceMade.judgement(engine, "1", bolt, Verdict.CONFORMING, EndState.ELASTIC),
                        engine < 20 ? "S40" : "S50",
                        bolt == 1 ? "A17" : "A18"));
            }
        }
        return line;
    }

    private static Judgement shows(int engine, String station, String spindle, String lot, FindingCode code) {
        var like = EvidenceMade.judgement(engine, spindle, 1, Verdict.NONCONFORMING, EndState.ELASTIC);
        return EvidenceMade.showing(like, station, spindle, lot, code);
    }

    private static List<Containment> lotsWith(FindingCode code, List<Judgement> line) throws IOException {
        var standing = new MadeStanding(line);
        var bracket = new Bracketing(standing, Duration.ZERO)
                .around(new Stream("S40", "1"), code, one -> one.shows(code))
                .orElseThrow();
        return new BoltLots(standing, Duration.ZERO).lotsWith(code, List.of(bracket));
    }
}
