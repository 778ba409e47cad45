package org.tautlog.review.evidence;

import java.io.IOException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.review.stream.Levels;
import org.tautlog.review.stream.Stream;

/** The judgements that stand, one a recording, as far as a containment asks for them: never all at once. */
public interface StandingSearch {
    /**
     * Those of one spindle.
     *
     * @param stream the spindle
     * @return its tightenings in order of time, those without a time last
     * @throws IOException where they cannot be read
     */
    List<BriefJudgement> ofStream(Stream stream) throws IOException;

    /**
     * What is charted of one spindle.
     *
     * @param stream the spindle
     * @return the levels of its tightenings, in order of time
     * @throws IOException where they cannot be read
     */
    List<Levels> levels(Stream stream) throws IOException;

    /**
     * Those of one engine.
     *
     * @param serial the engine
     * @return its tightenings in order of time
     * @throws IOException where they cannot be read
     */
    List<BriefJudgement> ofEngine(String serial) throws IOException;

    /**
     * Those with a bolt of one lot.
     *
     * @param lot the lot
     * @return its tightenings in order of time
     * @throws IOException where they cannot be read
     */
    List<BriefJudgement> ofLot(String lot) throws IOException;

    /**
     * How far some lots went.
     *
     * @param lots the lots
     * @return where the bolts of each are, by lot
     * @throws IOException where they cannot be read
     */
    Map<String, LotPlaces> places(Collection<String> lots) throws IOException;

    /**
     * The engines that were at a station.
     *
     * @param station the station
     * @param from the earliest moment; null where open
     * @param to the latest moment; null where open, so that a tightening without a time counts too
     * @return their serials in order of time
     * @throws IOException where they cannot be read
     */
    Set<String> engines(String station, @Nullable Instant from, @Nullable Instant to) throws IOException;

    /**
     * The spindles that may show a finding.
     *
     * @param code the finding
     * @return the spindles, in order; all that show it are among them
     * @throws IOException where they cannot be read
     */
    Set<Stream> streamsWith(FindingCode code) throws IOException;
}
