package org.tautlog.cli.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.intake.table.CsvRow;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Digits;
import org.tautlog.spc.capability.Stability;

/** What a reader must know beside a capability study, with the lines of the file that it is about. */
final class CapabilityNotes {
    private CapabilityNotes() {}

    /** Points are the rows of single values, one each, or of subgroups. */
    static List<String> of(Stability stability, Autocorrelation neighbours, List<List<CsvRow>> points) {
        var notes = new ArrayList<String>();
        Optional.ofNullable(stability.movedAt())
                .ifPresent(at -> notes.add(
                        "the level moved at line " + points.get(at).get(0).line()));
        if (!stability.strays().isEmpty()) notes.add(strays(stability.strays(), points));
        if (neighbours.allowed() > 0) {
            int n = points.stream().mapToInt(List::size).sum();
            boolean single = points.size() == n;
            notes.add((single ? "neighbours" : "means of neighbouring subgroups") + " resemble each other (lag-1 "
                    + Digits.of(neighbours.lagOne())
                    + "): the short-term standard deviation is too small, and the bounds are as wide as those of "
                    + neighbours.worth(n) + " independent values");
        }
        return List.copyOf(notes);
    }

    private static String strays(List<Integer> strays, List<List<CsvRow>> points) {
        var rows = points.stream().flatMap(List::stream).toList();
        var lines = strays.stream()
                .sorted()
                .map(i -> String.valueOf(rows.get(i).line()))
                .collect(Collectors.joining(", "));
        return (strays.size() == 1 ? "a stray at line " : "strays at lines ") + lines
                + ": the form holds without, so the indices leave "
                + (strays.size() == 1 ? "it" : "them") + " out; mean, deviation and the counted share do not";
    }
}
