package org.tautlog.review.evidence;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.BriefFilter;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.table.BriefRow;
import org.tautlog.archive.table.IdentityColumns;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.review.evidence.StandingJudgements.Recording;
import org.tautlog.review.stream.Levels;
import org.tautlog.review.stream.Stream;

/** The judgements of an archive that stand, read in brief and part by part. */
public final class ArchivedStanding implements StandingSearch {
    private final ArchiveQuery query;
    private final List<SpecificationUsed> used;
    private final Set<Problem> problems = new LinkedHashSet<>();

    /**
     * A search in an archive.
     *
     * @param query asks the archive
     * @param used its specifications in the order in which they were first used
     */
    public ArchivedStanding(ArchiveQuery query, List<SpecificationUsed> used) {
        this.query = query;
        this.used = used;
    }

    /** {@return what kept something out of the answers so far} */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /**
     * The whole judgements of a few recordings.
     *
     * @param recordings the recordings in brief; the judgements of all of them are held in memory
     * @return those that stand, by their recordings
     * @throws IOException where they cannot be read
     */
    public Map<BriefJudgement, Judgement> whole(Collection<BriefJudgement> recordings) throws IOException {
        var kept = taken(query.judgements(recordings));
        var whole = new LinkedHashMap<BriefJudgement, Judgement>();
        StandingJudgements.of(kept, used).forEach(judgement -> whole.put(BriefJudgement.of(judgement), judgement));
        return whole;
    }

    @Override
    public List<BriefJudgement> ofStream(Stream stream) throws IOException {
        return standing(BriefFilter.ofSpindle(stream.station(), stream.spindle()));
    }

    @Override
    public List<Levels> levels(Stream stream) throws IOException {
        return standing(
                BriefFilter.ofSpindle(stream.station(), stream.spindle()),
                Levels.columns(),
                row -> Levels.of(row.judgement(), row::number));
    }

    /** Those of a range of time, in order of time; of open ends all that there are. */
    List<Neighbour> between(@Nullable OffsetDateTime from, @Nullable OffsetDateTime before) throws IOException {
        return standing(BriefFilter.between(from, before), Neighbour.columns(), Neighbour::of);
    }

    @Override
    public List<BriefJudgement> ofEngine(String serial) throws IOException {
        return standing(BriefFilter.ofEngine(serial));
    }

    @Override
    public List<BriefJudgement> ofLot(String lot) throws IOException {
        return standing(BriefFilter.ofLots(List.of(lot)));
    }

    @Override
    public Map<String, LotPlaces> places(Collection<String> lots) throws IOException {
        return fold(BriefFilter.ofLots(lots), Places::new, Places::add).lots;
    }

    @Override
    public Set<String> engines(String station, @Nullable Instant from, @Nullable Instant to) throws IOException {
        return fold(BriefFilter.atStation(station, utc(from), utc(to)), LinkedHashSet<String>::new, (engines, row) -> {
            var time = row.judgement().identity().time();
            var when = time == null ? Instant.MAX : time.toInstant();
            if ((from == null || !when.isBefore(from)) && (to == null || !when.isAfter(to))) {
                engines.add(row.judgement().identity().serial());
            }
        });
    }

    @Override
    public Set<Stream> streamsWith(FindingCode code) throws IOException {
        return fold(BriefFilter.with(code), TreeSet<Stream>::new, (streams, row) -> {
            if (row.judgement().shows(code)) {
                streams.add(Stream.of(row.judgement().identity()));
            }
        });
    }

    /** Where lots went; of a recording that several specifications judged only one row counts, as such rows come together. */
    private static final class Places {
        private final Map<String, LotPlaces> lots = new TreeMap<>();
        private final Set<Recording> ofTheMoment = new HashSet<>();
        private Optional<LocalDateTime> moment = Optional.empty();
        private String engine = "";

        void add(BriefRow row) {
            var judgement = row.judgement();
            var identity = judgement.identity();
            var time = IdentityColumns.timeUtc(identity);
            if (!time.equals(moment) || !identity.serial().equals(engine)) {
                ofTheMoment.clear();
                moment = time;
                engine = identity.serial();
            }
            if (ofTheMoment.add(new Recording(identity, judgement.source()))) {
                lots.computeIfAbsent(identity.boltLot(), lot -> new LotPlaces()).add(judgement);
            }
        }
    }

    /** One judgement that may stand: what is asked of it, and by what it is known which stands. */
    private record Candidate<T>(T value, Recording recording, String specificationSha256, String batch) {}

    private List<BriefJudgement> standing(BriefFilter filter) throws IOException {
        return standing(filter, List.of(), BriefRow::judgement);
    }

    private <T> List<T> standing(BriefFilter filter, List<String> numbers, Function<BriefRow, T> value)
            throws IOException {
        var candidates = taken(query.brief(
                filter,
                numbers,
                ArrayList<Candidate<T>>::new,
                (all, row) -> all.add(new Candidate<>(
                        value.apply(row),
                        new Recording(
                                row.judgement().identity(), row.judgement().source()),
                        row.specificationSha256(),
                        row.batch()))));
        return StandingJudgements.standing(
                        candidates,
                        Candidate::recording,
                        StandingJudgements.order(used, Candidate::specificationSha256, Candidate::batch))
                .stream()
                .sorted(Comparator.comparing(one -> when(one.recording())))
                .map(Candidate::value)
                .toList();
    }

    private <A> A fold(BriefFilter filter, Supplier<A> start, BiConsumer<A, BriefRow> step) throws IOException {
        return taken(query.brief(filter, List.of(), start, step));
    }

    private <T> T taken(Outcome<T> outcome) {
        problems.addAll(outcome.problems());
        return outcome.value().orElseThrow();
    }

    private static Instant when(Recording recording) {
        var time = recording.identity().time();
        return time == null ? Instant.MAX : time.toInstant();
    }

    private static @Nullable OffsetDateTime utc(@Nullable Instant moment) {
        return moment == null ? null : moment.atOffset(ZoneOffset.UTC);
    }
}
