package org.tautlog.review.evidence;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.table.Kept;
import org.tautlog.archive.table.KeptJudgement;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.review.EngineClampLoad;
import org.tautlog.review.Listed;
import org.tautlog.review.stream.Levels;
import org.tautlog.review.stream.Stream;
import org.tautlog.review.stream.StreamCharts;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/** Gathers an engine's dossier from an archive. */
public final class DossierReader {
    private static final int HOURS = 12;
    private static final Comparator<String> BY_NUMBER =
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());
    private static final Comparator<Place> BY_PLACE =
            Comparator.comparing(Place::station).thenComparing(Place::bolt, BY_NUMBER);

    private record Place(String station, String bolt) {
        static Place of(TraceIdentity identity) {
            return new Place(identity.station(), identity.bolt());
        }
    }

    private final ArchiveQuery query;
    private final List<SpecificationUsed> used;
    private final Map<String, JointSpecification> readable;
    private final LinkedHashSet<Problem> problems = new LinkedHashSet<>();

    private DossierReader(ArchiveQuery query, List<SpecificationUsed> used, Map<String, JointSpecification> readable) {
        this.query = query;
        this.used = used;
        this.readable = readable;
    }

    /**
     * Gathers the dossier.
     *
     * @param query asks the archive
     * @param used the archive's specifications in the order in which they were first used
     * @param readable those that can be read, by the hash of their text
     * @param problems what kept something out of the specifications
     * @param serial the engine
     * @return the dossier; empty where the archive has no judgement of such an engine
     * @throws IOException where the archive, or the specification that judged last, cannot be read
     */
    public static Optional<EngineDossier> read(
            ArchiveQuery query,
            List<SpecificationUsed> used,
            Map<String, JointSpecification> readable,
            List<Problem> problems,
            String serial)
            throws IOException {
        var reader = new DossierReader(query, used, readable);
        reader.problems.addAll(problems);
        return reader.read(serial);
    }

    private Optional<EngineDossier> read(String serial) throws IOException {
        var kept = all(query.judgements(serial));
        if (kept.isEmpty()) {
            return Optional.empty();
        }
        var own = StandingJudgements.of(kept, used);
        var around = around(own);
        var others = around.stream()
                .filter(one -> !one.identity().serial().equals(serial))
                .toList();
        var charts = CompletableFuture.supplyAsync(() -> StreamCharts.charted(onStreamsOf(own, around)));
        var decisions = all(query.decisions(serial));
        var positions = new ArrayList<BoltPosition>();
        for (var place : tightenings(own, others, kept).entrySet()) {
            positions.add(
                    PositionRule.of(place.getKey().station(), place.getKey().bolt(), place.getValue(), decisions));
        }
        return Optional.of(new EngineDossier(
                serial,
                specification(kept),
                Soundness.of(positions, decisions, problems),
                positions,
                EngineClampLoad.of(own).stream().findFirst().orElse(null),
                decisions,
                SameCauses.of(own, others),
                new Surroundings(earliest(own).isEmpty() ? 0 : HOURS, engines(others), others.size()),
                charts.join(),
                List.copyOf(problems)));
    }

    private JointSpecification specification(List<Kept<KeptJudgement>> kept) throws IOException {
        var last = StandingJudgements.last(kept, used).orElseThrow();
        var specification = readable.get(last.specificationSha256());
        if (specification == null) {
            throw new IOException("the archive does not hold the text of specification "
                    + last.judgement().specificationName() + " version "
                    + last.judgement().specificationVersion() + " as it judged; verify the archive");
        }
        return specification;
    }

    private Map<Place, List<EngineTightening>> tightenings(
            List<Judgement> own, List<Neighbour> others, List<Kept<KeptJudgement>> kept) throws IOException {
        var places = new TreeMap<Place, List<EngineTightening>>(BY_PLACE);
        var specification = specification(kept);
        expected(others).forEach(place -> places.put(place, new ArrayList<>()));
        var inOrder = new ArrayList<>(own);
        inOrder.sort(Comparator.<Judgement, Place>comparing(one -> Place.of(one.identity()), BY_PLACE)
                .thenComparingInt(one -> one.identity().attempt()));
        var peers = inOrder.stream().map(one -> NearPeers.of(one, others)).toList();
        var entries = query.importEntries();
        var listed = listed(inOrder, peers, curves(inOrder, peers), specification.method());
        for (int i = 0; i < inOrder.size(); i++) {
            var judgement = inOrder.get(i);
            places.computeIfAbsent(Place.of(judgement.identity()), place -> new ArrayList<>())
                    .add(new EngineTightening(
                            judgement,
                            importEntry(judgement, kept, entries),
                            said(judgement, kept, entries),
                            listed.get(i).orElse(null)));
        }
        addStated(specification.boltPositions(), places);
        return places;
    }

    /** Those with a trace are ranked in the order given; peers are compared on as many processors as there are. */
    private static List<Optional<Listed>> listed(
            List<Judgement> own, List<NearPeers> peers, Map<Source, Curve> curves, TighteningMethod method) {
        var traced =
                own.stream().filter(one -> curves.containsKey(one.source())).toList();
        return IntStream.range(0, own.size())
                .parallel()
                .mapToObj(i -> peers.get(i).listed(traced.indexOf(own.get(i)) + 1, own.get(i), curves, method))
                .toList();
    }

    /** A stated position that no recording names, at whatever station. */
    private static void addStated(List<String> stated, Map<Place, List<EngineTightening>> places) {
        var named = places.keySet().stream().map(Place::bolt).collect(Collectors.toSet());
        stated.stream()
                .filter(bolt -> !named.contains(bolt))
                .forEach(bolt -> places.put(new Place("", bolt), new ArrayList<>()));
    }

    /** The curves of the engine and of its peers, in one search. */
    private Map<Source, Curve> curves(List<Judgement> own, List<NearPeers> peers) throws IOException {
        var wanted = new LinkedHashSet<BriefJudgement>();
        own.forEach(judgement -> wanted.add(BriefJudgement.of(judgement)));
        peers.forEach(near -> near.learned().forEach(peer -> wanted.add(peer.judgement())));
        var curves = new HashMap<Source, Curve>();
        all(query.traces(wanted))
                .forEach(trace ->
                        curves.put(trace.value().source(), trace.value().curve()));
        return curves;
    }

    private static java.util.stream.Stream<Kept<KeptJudgement>> everyJudgement(
            Judgement of, List<Kept<KeptJudgement>> kept) {
        return kept.stream()
                .filter(one -> one.value().judgement().source().equals(of.source())
                        && one.value().judgement().identity().equals(of.identity()));
    }

    /** What was judged again came in with its first judgement. */
    private static int importEntry(Judgement judgement, List<Kept<KeptJudgement>> kept, Map<String, Integer> entries) {
        return everyJudgement(judgement, kept)
                .mapToInt(one -> entries.getOrDefault(one.batch(), EngineTightening.NOT_ENTERED))
                .min()
                .orElse(EngineTightening.NOT_ENTERED);
    }

    private List<Said> said(Judgement judgement, List<Kept<KeptJudgement>> kept, Map<String, Integer> entries) {
        return everyJudgement(judgement, kept)
                .sorted(StandingJudgements.order(used))
                .map(one -> new Said(
                        one.value().judgement().specificationName(),
                        one.value().judgement().specificationVersion(),
                        one.value().specificationSha256(),
                        one.value().program(),
                        one.value().judgement().verdict(),
                        one.value().judgement().findings().stream()
                                .filter(finding -> finding.severity() != Consequence.NOTE)
                                .map(Finding::code)
                                .collect(Collectors.toSet()),
                        entries.getOrDefault(one.batch(), EngineTightening.NOT_ENTERED),
                        one.sha256()))
                .toList();
    }

    /** Positions that at least half of the other engines have. */
    private static List<Place> expected(List<Neighbour> others) {
        var engines = new TreeMap<Place, LinkedHashSet<String>>(BY_PLACE);
        others.forEach(other -> engines.computeIfAbsent(Place.of(other.identity()), place -> new LinkedHashSet<>())
                .add(other.identity().serial()));
        int all = engines(others);
        return engines.entrySet().stream()
                .filter(entry -> 2 * entry.getValue().size() >= all)
                .map(Map.Entry::getKey)
                .toList();
    }

    private List<Neighbour> around(List<Judgement> own) throws IOException {
        var standing = new ArchivedStanding(query, used);
        var first = earliest(own);
        var last = times(own).max(Comparator.naturalOrder());
        var around = standing.between(
                first.map(time -> time.minusHours(HOURS)).orElse(null),
                last.map(time -> time.plusHours(HOURS).plusNanos(1)).orElse(null));
        problems.addAll(standing.problems());
        return around;
    }

    private static List<Levels> onStreamsOf(List<Judgement> own, List<Neighbour> around) {
        var streams = own.stream().map(one -> Stream.of(one.identity())).collect(Collectors.toSet());
        return around.stream()
                .filter(one -> streams.contains(Stream.of(one.identity())))
                .map(Neighbour::levels)
                .toList();
    }

    private static int engines(List<Neighbour> tightenings) {
        return (int) tightenings.stream()
                .map(one -> one.identity().serial())
                .distinct()
                .count();
    }

    private static Optional<OffsetDateTime> earliest(List<Judgement> judgements) {
        return times(judgements).min(Comparator.naturalOrder());
    }

    private static java.util.stream.Stream<OffsetDateTime> times(List<Judgement> judgements) {
        return judgements.stream().map(one -> one.identity().time()).filter(Objects::nonNull);
    }

    private <T> List<T> all(Outcome<List<T>> outcome) {
        problems.addAll(outcome.problems());
        return outcome.value().orElse(List.of());
    }
}
