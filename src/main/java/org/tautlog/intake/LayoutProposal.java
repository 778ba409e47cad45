package org.tautlog.intake;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.json.JsonProposal;
import org.tautlog.intake.layout.ColumnGuess;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.JsonForm;
import org.tautlog.intake.layout.LayoutFile;
import org.tautlog.intake.layout.LayoutLines;
import org.tautlog.intake.layout.LayoutSkeleton;
import org.tautlog.intake.layout.LayoutText;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.intake.layout.Origin;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.layout.SampleSource;
import org.tautlog.intake.text.Line;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

/**
 * A layout file proposed for an export that nobody described yet, and what it makes of the export.
 *
 * @param text the text of the layout file, each line with its reason
 * @param traces the first traces that it reads
 * @param summary what became of the whole file
 */
public record LayoutProposal(String text, List<Trace> traces, ReadSummary summary) {
    private static final int MOST_LINES = 20_000;

    public LayoutProposal {
        traces = List.copyOf(traces);
    }

    /**
     * Looks at a file and proposes its layout. A layout file beside it is not looked at. Of an archive the first log
     * counts. JSON gets a pointer to each thing. Where no name of a column says what it holds, the numbers are looked at and the
     * proposal says so; where they say nothing either, it names the columns and states nothing.
     *
     * @param file the export, plain or packed
     * @param mostTraces how many traces to keep for looking at
     * @return the proposal, or why there is none
     */
    public static Outcome<LayoutProposal> of(Path file, int mostTraces) {
        var json = new JsonLook();
        LogReader.look(file, ReadOptions.withDefaults().withLayout(JsonLook.LAYOUT), json);
        if (json.proposal.isPresent()) {
            var proposed = json.proposal.get();
            return proposed.value().isEmpty()
                    ? Outcome.failed(proposed.problems())
                    : tried(file, proposed.value().get(), mostTraces);
        }
        var look = new Look(file, LogLayout.unstated());
        Map<String, String> guesses = new HashMap<>();
        var stated = LogLayout.unstated();
        for (var unit = look.unknownUnit(); unit.isPresent() && guesses.size() < 3; unit = look.unknownUnit()) {
            var column = String.valueOf(unit.get().where().key());
            var quantity = SampleQuantity.named(column).orElseThrow();
            guesses.put(quantity.key(), unit.get().what() + "; " + LayoutText.SAY_WHICH);
            var samples = new EnumMap<SampleQuantity, SampleSource>(SampleQuantity.class);
            samples.putAll(stated.samples());
            samples.put(quantity, new SampleSource(column, 1.0, 1, 0.0, Map.of()));
            stated = stated.withSamples(samples);
            look = new Look(file, stated);
        }
        if (look.seen == null || look.seen.layout().value().isEmpty()) {
            var guess = look.seen == null ? Optional.<ColumnGuess>empty() : ColumnGuess.of(look.seen.head());
            if (guess.isEmpty()) {
                var name = String.valueOf(file.getFileName());
                var skeleton = look.seen == null ? Optional.<String>empty() : LayoutSkeleton.of(name, look.seen.head());
                return skeleton.isEmpty()
                        ? Outcome.failed(look.summary.problems())
                        : tried(file, skeleton.get(), mostTraces);
            }
            guesses = guess.get().reasons();
            look = new Look(file, guess.get().layout());
        }
        var seen = look.seen;
        if (seen == null || seen.layout().value().isEmpty()) {
            return Outcome.failed(look.summary.problems());
        }
        return tried(file, seen.text(file, guesses), mostTraces);
    }

    /** The proposal with what it makes of the file. */
    private static Outcome<LayoutProposal> tried(Path file, String text, int mostTraces) {
        var layout = LayoutFile.read(text, "the proposed layout");
        if (layout.value().isEmpty()) {
            return Outcome.failed(layout.problems());
        }
        var traces = new ArrayList<Trace>();
        var summary = LogReader.read(
                List.of(file),
                ReadOptions.withDefaults().withLayout(layout.value().get()),
                trace -> {
                    if (traces.size() < mostTraces) {
                        traces.add(trace);
                    }
                });
        return Outcome.of(new LayoutProposal(text, traces, summary), List.of());
    }

    /** Looks whether the first text is JSON, and how it lies. */
    private static final class JsonLook implements LayoutWatch {
        private static final LogLayout LAYOUT = LogLayout.unstated().ofJson(new JsonForm("", ""));

        private Optional<Outcome<String>> proposal = Optional.empty();
        private boolean looked;

        @Override
        public boolean sees(String name, Charset charset, Outcome<FileLayout> layout, List<Line> head) {
            return false;
        }

        @Override
        public boolean takes(String name, Charset charset, Reader text) throws IOException {
            if (!looked) {
                looked = true;
                proposal = JsonProposal.of(name, charset, text);
            }
            return true;
        }
    }

    /** How the first text lies; the others of an archive are taken to lie alike. */
    private static final class Look implements LayoutWatch {
        private final ReadSummary summary;
        private @Nullable Seen seen;

        private Look(Path file, LogLayout stated) {
            summary = LogReader.look(file, ReadOptions.withDefaults().withLayout(stated), this);
        }

        @Override
        public boolean sees(String name, Charset charset, Outcome<FileLayout> layout, List<Line> head) {
            seen = seen == null ? new Seen(name, charset, layout, head) : seen;
            return false;
        }

        /** The column of samples whose unit is not known. */
        private Optional<Problem> unknownUnit() {
            return seen == null
                    ? Optional.empty()
                    : seen.layout().problems().stream()
                            .filter(problem -> problem.code() == ProblemCode.BAD_UNIT)
                            .filter(problem -> SampleQuantity.named(
                                            String.valueOf(problem.where().key()))
                                    .isPresent())
                            .findFirst();
        }

        /** Enough for all words of a stage and for a day above the twelfth. */
        @Override
        public int mostLines() {
            return MOST_LINES;
        }
    }

    private record Seen(String file, Charset charset, Outcome<FileLayout> layout, List<Line> head) {
        String text(Path path, Map<String, String> guesses) {
            var found = layout.value().orElseThrow();
            var keys = headings(found);
            var named = found;
            if (found.shape() == LogShape.FILE_PER_TRACE
                    && !keys.containsKey(IdentityField.SERIAL)
                    && !found.identityColumns().containsKey(IdentityField.SERIAL)) {
                named = found.stating(serialFromName(found.stated()));
            }
            return LayoutText.of(
                    String.valueOf(path.getFileName()), charset, named, keys, times(found, keys), guesses, head);
        }

        private static LogLayout serialFromName(LogLayout stated) {
            return new LogLayout(
                    stated.text(),
                    stated.shape(),
                    Map.of(IdentityField.SERIAL, new Origin.FileName("serial")),
                    Pattern.compile(LayoutLines.WHOLE_NAME),
                    stated.time(),
                    stated.samples(),
                    stated.listSeparator(),
                    stated.traceKey(),
                    stated.ignore(),
                    stated.json());
        }

        private List<String> times(FileLayout found, Map<IdentityField, String> keys) {
            var lines = new LogText(file, found);
            return head.stream()
                    .filter(line -> line.number() < found.headerLine())
                    .flatMap(line -> lines.heading(line).stream())
                    .filter(heading -> heading.getKey().equals(keys.get(IdentityField.TIME)))
                    .map(Map.Entry::getValue)
                    .toList();
        }

        /** The lines above the table by field; where day and time of day stand apart, they are left to the reader to join. */
        private Map<IdentityField, String> headings(FileLayout found) {
            var keys = new EnumMap<IdentityField, String>(IdentityField.class);
            var lines = new LogText(file, found);
            boolean timeOfDay = false;
            for (var line : head) {
                var heading = line.number() < found.headerLine()
                        ? lines.heading(line)
                        : Optional.<Map.Entry<String, String>>empty();
                if (heading.isPresent()) {
                    var key = heading.get().getKey();
                    timeOfDay |= LogText.isTimeOfDay(key);
                    IdentityField.named(key).ifPresent(field -> keys.putIfAbsent(field, key));
                }
            }
            if (timeOfDay) {
                keys.remove(IdentityField.TIME);
            }
            return keys;
        }
    }
}
