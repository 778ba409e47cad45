package org.tautlog.accuracy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.accuracy.CauseStudy.Placed;
import org.tautlog.accuracy.CauseStudy.Untouched;
import org.tautlog.accuracy.ShiftPairs.UntouchedPairs;
import org.tautlog.line.CausedShift.Shows;
import org.tautlog.review.cause.Cause;

/** The page of the cause study. */
final class CausePage {
    private static final String TABLE = """
            | cause | size | shows | shifts | right | cannot tell | not seen | wrong | named wrongly |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- |
            """;

    private static final String HEAD = """
            # How well causes are told apart

            Written by `mvn -Dquick test -Dtest=CauseStudy`, the same to the last digit. Shifts of 64 engines of the simulated line,
            two stations of four spindles, three bolt lots that differ as good lots do, friction that wanders; no bolt has a fault
            of its own. One cause is there: on one spindle or station from the middle on, with the second lot, all shift long on
            one spindle or on all, or in one tightening. "All shift long" has no step: a spindle is held against its station's
            others, the shift against the stated joint with its tolerances. The line turns bolts with a knee, seating, drive, noise
            and recorder of its own; resilience and torque terms are those of the stated joint. The rules were set while other
            shifts, of the seeds 1 to 16, were looked at; these are of the seeds from 101 on.

            "Right": that cause was named, with the right sign. "Cannot tell": the spindle or lot was seen to differ and no cause
            was named. "Not seen": no step or difference held, so there was nothing to explain. "Wrong": shifts in which another cause
            was named for it, or any for a spindle, station, lot or tightening that nothing was placed on, whatever was said of the
            placed one; with its interval, 95 %, Clopper and Pearson. A lot named for strength or friction counts as wrong unless it
            was made to differ so, by half of the named size at least.

            """ + TABLE;

    private static final String PAIRS = """

            ## Against the shift before

            Pairs of shifts of %d engines by the same tools on other bolts of other lots, each pair with tools and lots of its own;
            the scale of every transducer moves from one shift to the next by 0.25 %% (one standard deviation). The rules were set
            while pairs of the seeds 1 to 60 were looked at. A spindle is held against its station's others on the same engine, then
            and now, as lots move them all. A cause is named only where it is five times as likely as any other by the curves alone.

            """ + TABLE;

    private CausePage() {}

    static String of(List<GradedCause> graded, Untouched untouched) {
        var text = new StringBuilder(HEAD);
        graded.forEach(row -> text.append(line(row)));
        text.append(total(graded, "shifts")).append("\n## Where nothing was placed\n\n");
        text.append("In ").append(untouched.shifts()).append(" such shifts a cause was named for a spindle ");
        text.append(untouched.spindles()).append(" times, for a station or the whole shift ");
        text.append(untouched.together()).append(" times, for one of the tightenings that stood out ");
        text.append(untouched.tightenings())
                .append(" times of ")
                .append(untouched.stoodOut())
                .append(", ");
        text.append(new Share(untouched.tightenings(), untouched.stoodOut()).words());
        text.append(".\nLots differ in friction and strength by design; of those that were seen to differ:\n\n");
        text.append("| named for a lot | lots |\n| --- | --- |\n");
        untouched
                .lots()
                .forEach((cause, lots) -> text.append(String.format(Locale.ROOT, "| %s | %d |%n", cause, lots)));
        return text.toString();
    }

    static String ofPairs(List<GradedCause> graded, UntouchedPairs untouched) {
        var text = new StringBuilder(String.format(Locale.ROOT, PAIRS, ShiftPairs.ENGINES));
        graded.forEach(row -> text.append(line(row)));
        text.append(total(graded, "pairs"));
        return text.append(String.format(
                        Locale.ROOT,
                        "%nIn %d pairs in which nothing was placed a spindle was seen to differ in %d, %s, and a cause"
                                + " was named in %d, %s.%n",
                        untouched.pairs(),
                        untouched.differed(),
                        new Share(untouched.differed(), untouched.pairs()).words(),
                        untouched.named(),
                        new Share(untouched.named(), untouched.pairs()).words()))
                .toString();
    }

    /** The same seeds serve each row, so what is wrong in one shift may come back in others: the interval counts seeds. */
    private static String total(List<GradedCause> graded, String of) {
        int all = graded.stream().mapToInt(GradedCause::n).sum();
        int wrong = graded.stream().mapToInt(GradedCause::wrongs).sum();
        int seeds = graded.stream().mapToInt(GradedCause::n).max().orElseThrow();
        long wrongSeeds = graded.stream()
                .flatMap(row -> row.wrongSeeds().stream())
                .distinct()
                .count();
        return String.format(
                Locale.ROOT,
                "%nWrong in all: %d of %d. They stand on %d %s of bolts and tools, which came back for each row, so this is no"
                        + " sample of %d: anything was named wrongly on %d of the %d, %s.%n",
                wrong,
                all,
                seeds,
                of,
                all,
                wrongSeeds,
                seeds,
                new Share((int) wrongSeeds, seeds).words());
    }

    private static String line(GradedCause row) {
        var placed = row.placed();
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %d | %d | %d | %d | %s | %s |%n",
                CauseStudy.cause(placed.kind()).map(Cause::title).orElse("friction, and strength down by 2/3 of it"),
                size(placed),
                shows(placed.shows()),
                row.n(),
                row.right(),
                row.untold(),
                row.unseen(),
                new Share(row.wrongs(), row.n()).words(),
                named(row.wrong()));
    }

    private static String shows(Shows shows) {
        return switch (shows) {
            case ONE_SPINDLE -> "one spindle from the middle on";
            case ONE_LOT -> "one lot";
            case ONE_STATION -> "one station from the middle on";
            case WHOLE_SHIFT -> "the whole shift";
            case SPINDLE_ALL_SHIFT -> "one spindle all shift long";
            case ONE_TIGHTENING -> "one tightening";
        };
    }

    private static String size(Placed placed) {
        var unit = CauseStudy.cause(placed.kind()).map(Cause::unit).orElse("%");
        return unit.equals("%")
                ? String.format(Locale.ROOT, "%+.0f %%", 100 * placed.size())
                : String.format(Locale.ROOT, "%+.1f %s", placed.size(), unit);
    }

    private static String named(Map<String, Integer> wrong) {
        return wrong.entrySet().stream()
                .map(entry -> entry.getKey() + ' ' + entry.getValue())
                .collect(Collectors.joining(", "));
    }
}
