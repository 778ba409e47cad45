package org.tautlog.archive;

import java.time.OffsetDateTime;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.FindingCode;

/** Which judgements a search in brief is about. */
public final class BriefFilter {
    private final Condition condition;

    private BriefFilter(Condition condition) {
        this.condition = condition;
    }

    /**
     * Those of one engine.
     *
     * @param serial the engine
     * @return the filter
     */
    public static BriefFilter ofEngine(String serial) {
        return new BriefFilter(new Condition().is("serial", serial));
    }

    /**
     * Those of one spindle.
     *
     * @param station its station
     * @param spindle the spindle
     * @return the filter
     */
    public static BriefFilter ofSpindle(String station, String spindle) {
        return new BriefFilter(new Condition().is("station", station).is("spindle", spindle));
    }

    /**
     * Those of one station that may lie in a range of time.
     *
     * @param station the station
     * @param from earliest time; null where open
     * @param to latest time; null where open
     * @return the filter; it lets through too what has no time
     */
    public static BriefFilter atStation(String station, @Nullable OffsetDateTime from, @Nullable OffsetDateTime to) {
        return new BriefFilter(new Condition().is("station", station).timelessOr(from, to));
    }

    /**
     * Those of a range of time.
     *
     * @param from earliest time; null where open
     * @param before first time that is too late; null where open
     * @return the filter; where an end is given it lets through nothing without a time
     */
    public static BriefFilter between(@Nullable OffsetDateTime from, @Nullable OffsetDateTime before) {
        return new BriefFilter(new Condition().from(from).before(before));
    }

    /**
     * Those with a bolt of some lots.
     *
     * @param lots the lots
     * @return the filter
     */
    public static BriefFilter ofLots(Collection<String> lots) {
        return new BriefFilter(new Condition().isAnyOf("bolt_lot", lots));
    }

    /**
     * Those that show a finding, be it as a note.
     *
     * @param code the finding
     * @return the filter
     */
    public static BriefFilter with(FindingCode code) {
        return new BriefFilter(new Condition().holds("finding_code", code.word()));
    }

    Condition condition() {
        return condition;
    }
}
