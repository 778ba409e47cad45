package org.tautlog.accuracy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tautlog.accuracy.CauseStudy.Graded;
import org.tautlog.accuracy.CauseStudy.Untouched;
import org.tautlog.review.cause.Cause;

/** The page of the cause study. */
final class CausePage {
    private static final String HEAD = """
            # How well causes are told apart

            Written by `mvn -Dquick test -Dtest=CauseStudy`, the same to the last digit. Shifts of 64 engines of the simulated line,
            two stations of four spindles, three bolt lots that differ as good lots do, friction that wanders; no bolt has a fault
            of its own. One cause sets in, on one spindle from the middle on or with the second lot on all. The line turns bolts
            with a knee, seating, drive, noise and recorder of its own; resilience and torque terms are those of the stated joint.
            The rules were set while other shifts, of the seeds 1 to 12, were looked at; these are of the seeds from 101 on.

            "Right": that cause was named, with the right sign. "Cannot tell": the spindle or lot was seen to differ and no cause
            was named. "Not seen": no step or difference held, so there was nothing to explain. "Wrong" with its interval, 95 %,
            Clopper and Pearson.

            | cause | size | shows | shifts | right | cannot tell | not seen | wrong | named instead |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- |
            """;

    private CausePage() {}

    static String of(List<Graded> graded, Untouched untouched) {
        var text = new StringBuilder(HEAD);
        graded.forEach(row -> text.append(line(row)));
        int wrong = graded.stream().mapToInt(Graded::wrongs).sum();
        int all = graded.stream().mapToInt(Graded::n).sum();
        text.append("\nWrong in all: ").append(wrong).append(" of ").append(all).append(", ");
        text.append(new Share(wrong, all).words()).append(".\n\n## Where nothing was placed\n\n");
        text.append("In ").append(untouched.shifts()).append(" such shifts a cause was named for a spindle ");
        text.append(untouched.spindles()).append(" times, for one of the tightenings that stood out ");
        text.append(untouched.tightenings()).append(" times of ").append(untouched.stoodOut());
        text.append(". Lots differ in friction and strength by design; of those that were seen to differ:\n\n");
        text.append("| named for a lot | lots |\n| --- | --- |\n");
        untouched
                .lots()
                .forEach((cause, lots) -> text.append(String.format(Locale.ROOT, "| %s | %d |%n", cause, lots)));
        return text.toString();
    }

    private static String line(Graded row) {
        var placed = row.placed();
        var cause = CauseStudy.cause(placed.kind());
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %d | %d | %d | %d | %s | %s |%n",
                cause.title(),
                size(cause, placed.size()),
                placed.withLot() ? "one lot" : "one spindle",
                row.n(),
                row.right(),
                row.untold(),
                row.unseen(),
                new Share(row.wrongs(), row.n()).words(),
                named(row.wrong()));
    }

    private static String size(Cause cause, double size) {
        return cause.unit().equals("%")
                ? String.format(Locale.ROOT, "%+.0f %%", 100 * size)
                : String.format(Locale.ROOT, "%+.1f %s", size, cause.unit());
    }

    private static String named(Map<String, Integer> wrong) {
        return wrong.entrySet().stream()
                .map(entry -> entry.getKey() + ' ' + entry.getValue())
                .collect(Collectors.joining(", "));
    }
}
