package org.tautlog.review.evidence;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.review.stream.Levels;
import org.tautlog.review.stream.Stream;

/** Judgements that stand, all held in memory: the simplest answer to every question. */
final class MadeStanding implements StandingSearch {
    private final List<Judgement> all;

    MadeStanding(List<Judgement> standing) {
        all = standing.stream().sorted(Comparator.comparing(MadeStanding::when)).toList();
    }

    @Override
    public List<BriefJudgement> ofStream(Stream stream) {
        return brief(one -> Stream.of(one.identity()).equals(stream));
    }

    @Override
    public List<Levels> levels(Stream stream) {
        return all.stream()
                .filter(one -> Stream.of(one.identity()).equals(stream))
                .map(Levels::of)
                .toList();
    }

    @Override
    public List<BriefJudgement> ofEngine(String serial) {
        return brief(one -> one.identity().serial().equals(serial));
    }

    @Override
    public List<BriefJudgement> ofLot(String lot) {
        return brief(one -> one.identity().boltLot().equals(lot));
    }

    @Override
    public Map<String, LotPlaces> places(Collection<String> lots) {
        var places = new HashMap<String, LotPlaces>();
        for (var lot : lots) {
            var ofTheLot = new LotPlaces();
            ofLot(lot).forEach(ofTheLot::add);
            places.put(lot, ofTheLot);
        }
        return places;
    }

    @Override
    public Set<String> engines(String station, Instant from, Instant to) {
        return all.stream()
                .filter(one -> one.identity().station().equals(station))
                .filter(one -> from == null || !when(one).isBefore(from))
                .filter(one -> to == null || !when(one).isAfter(to))
                .map(one -> one.identity().serial())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    @Override
    public Set<Stream> streamsWith(FindingCode code) {
        return brief(one -> BriefJudgement.of(one).shows(code)).stream()
                .map(one -> Stream.of(one.identity()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private List<BriefJudgement> brief(Predicate<Judgement> wanted) {
        return all.stream().filter(wanted).map(BriefJudgement::of).toList();
    }

    private static Instant when(Judgement judgement) {
        var time = judgement.identity().time();
        return time == null ? Instant.MAX : time.toInstant();
    }
}
