package org.tautlog.cli.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tautlog.report.study.Unwatched;
import org.tautlog.spc.Answer;
import org.tautlog.spc.stream.StreamsLimits;
import org.tautlog.spc.study.FrozenLimits;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.SilentStreams;

/** What stands on one side only, in the limits or in the table. */
final class Watching {
    private static final String NO_VALUE = "it has limits, and no value here";
    private static final String NO_LIMITS = "it has values, and no limits";

    private Watching() {}

    /**
     * The groups and streams that nobody watched.
     *
     * @param frozen the limits of each group; empty where the table made its own
     * @param groups the study of each group of the table
     * @param streams the parallel streams of the table; empty for other charts
     */
    static List<Unwatched> unwatched(
            Map<String, FrozenLimits> frozen, Map<String, Answer<SeriesStudy>> groups, Set<String> streams) {
        var unwatched = new ArrayList<Unwatched>();
        if (!frozen.isEmpty()) {
            frozen.keySet().stream()
                    .filter(name -> !groups.containsKey(name))
                    .forEach(name -> unwatched.add(new Unwatched(name, NO_VALUE)));
            groups.keySet().stream()
                    .filter(name -> !frozen.containsKey(name))
                    .forEach(name -> unwatched.add(new Unwatched(name, NO_LIMITS)));
        }
        groups.values()
                .forEach(answer -> answer.found()
                        .filter(study -> study.limits().limits() instanceof StreamsLimits)
                        .ifPresent(study -> {
                            addStreams(unwatched, study.limits(), streams);
                            SilentStreams.of(study)
                                    .forEach((name, reason) -> unwatched.add(new Unwatched(name, reason)));
                        }));
        return unwatched;
    }

    private static void addStreams(List<Unwatched> unwatched, FrozenLimits limits, Set<String> streams) {
        var centres = ((StreamsLimits) limits.limits()).centres();
        for (int i = 0; i < centres.size(); i++) {
            var name = limits.streams().get(i);
            if (centres.get(i) == null) {
                unwatched.add(new Unwatched(name, "too few values for limits of its own"));
            } else if (!streams.contains(name)) {
                unwatched.add(new Unwatched(name, NO_VALUE));
            }
        }
        streams.stream()
                .filter(name -> !limits.streams().contains(name))
                .forEach(name -> unwatched.add(new Unwatched(name, NO_LIMITS)));
    }
}
