package org.tautlog.intake.layout;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.intake.toml.TomlFile;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.ProblemCode;

/**
 * The layout file: what the plant states about its logs, in TOML. Every section and key is optional; what is not stated
 * is told from each log and reported as assumed. A key that is unknown or makes no sense is a problem with its line and
 * column, and there is no layout then.
 *
 * <pre>
 * [log]
 * shape  = "long-table"            # file-per-trace, long-table or row-per-trace
 * ignore = ["truth.csv", "old/**"] # globs of files that are no logs
 *
 * [text]
 * encoding     = "UTF-8"           # any that Java knows
 * delimiter    = ";"               # , ; | tab, or blanks for columns that are aligned
 * decimal-mark = ","               # . or ,
 * thousands    = false             # whether the other mark stands between thousands
 * comment      = "#"               # beginning of lines that are no rows
 *
 * [identity]                       # each from a column, a header line, the file name, or fixed
 * serial    = { column = "Serial" }
 * station   = { header = "Station" }
 * spindle   = { file = "spindle" } # named group of file-name
 * bolt      = { column = "Pos" }
 * attempt   = { column = "Try" }
 * time      = { column = "Ended" }
 * bolt-lot  = { value = "A17" }
 * file-name = "(?&lt;serial&gt;FW-[0-9]+)_SP(?&lt;spindle&gt;[0-9])[.]csv"
 *
 * [time]                           # how recording times are written
 * format = "dd.MM.yyyy HH:mm:ss"   # letters as Java's DateTimeFormatter has them; names of months in English
 * zone   = "Europe/Berlin"         # of times that carry none
 *
 * [samples]                        # a column, or a regular step from 0
 * angle  = { column = "Angle", unit = "deg", tightening = "positive" }
 * torque = { column = "Torque", unit = "N·m", tightening = "negative" }
 * time   = { step = 1.2, unit = "ms" }
 * stage  = { column = "Step", marks = { Snug = 1, Turn = 2 } }
 *
 * [trace]
 * key = ["Run"]                    # long-table: columns that change where the next trace begins
 * list-separator = " "             # row-per-trace: what stands between values of a list cell
 *
 * [json]                           # the logs are JSON; each column is then a JSON Pointer, * every element of an array
 * traces = "/results"              # from the root to the array of traces; "" where the root is it
 * points = "/samples"              # from a trace to an array of samples, where each sample is an object
 * </pre>
 *
 * <p>In JSON {@code header} is a pointer from the root to what stands before the traces and holds for all of them. A stage
 * may be a field of each object in a list of stages, which then stands for all samples of that object; the path
 * {@code "/steps/*"} of the objects themselves counts them from 1.
 *
 * <p>{@code tightening} is the sign that the recording gives to tightening: {@code negative} for a tool that counts the
 * angle down or shows tightening torque below zero.
 */
public final class LayoutFile {
    private static final Map<String, Character> DELIMITERS =
            Map.of(",", ',', ";", ';', "tab", '\t', "\t", '\t', "|", '|', "blanks", ' ');
    private static final Map<String, Character> DECIMAL_MARKS = Map.of(".", '.', ",", ',');
    private static final Map<String, Integer> SIGNS = Map.of("positive", 1, "negative", -1);

    private LayoutFile() {}

    /**
     * Reads a layout.
     *
     * @param file the file, UTF-8
     * @return the layout, or every problem that the file has
     */
    public static Outcome<LogLayout> read(Path file) {
        return TomlFile.read(file, LayoutFile::read);
    }

    /**
     * Reads the text of a layout.
     *
     * @param text the text of the file
     * @param name the file's name for problems
     * @return the layout, or every problem that the text has
     */
    public static Outcome<LogLayout> read(String text, String name) {
        return TomlFile.read(text, name, LayoutFile::read);
    }

    private static Optional<LogLayout> read(StrictTable root) {
        var log = root.optionalSection("log").flatMap(Log::read);
        var text = root.optionalSection("text").flatMap(LayoutFile::readText);
        var identity = root.optionalSection("identity").flatMap(Identity::read);
        var time = root.optionalSection("time").flatMap(LayoutFile::readTime);
        var samples = root.optionalSection("samples").flatMap(LayoutFile::readSamples);
        var trace = root.optionalSection("trace").flatMap(TraceKey::read);
        var json = root.optionalSection("json").flatMap(LayoutFile::readJson);
        return root.build(() -> new LogLayout(
                text.orElseGet(TextForm::unstated),
                log.map(Log::shape).orElse(null),
                identity.map(Identity::origins).orElseGet(Map::of),
                identity.map(Identity::fileName).orElse(null),
                time.orElseGet(() -> new TimeForm(null, null)),
                samples.orElseGet(Map::of),
                trace.map(TraceKey::listSeparator).orElse(""),
                trace.map(TraceKey::columns).orElseGet(List::of),
                log.map(Log::ignore).orElseGet(List::of),
                json.orElse(null)));
    }

    private static Optional<TextForm> readText(StrictTable table) {
        var encoding = table.optionalText("encoding").flatMap(name -> charset(table, name));
        var delimiter = table.choice("delimiter", DELIMITERS);
        var decimalMark = table.choice("decimal-mark", DECIMAL_MARKS);
        boolean thousands = table.flag("thousands");
        var comment = table.optionalText("comment").orElse("#");
        return table.build(() -> new TextForm(
                encoding.orElse(null), delimiter.orElse(null), decimalMark.orElse(null), thousands, comment));
    }

    private static Optional<Charset> charset(StrictTable table, String name) {
        try {
            return Optional.of(Charset.forName(name));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            table.notOneOf("encoding", name, List.of("UTF-8", "UTF-16", "ISO-8859-1", "windows-1252"));
            return Optional.empty();
        }
    }

    private static Optional<JsonForm> readJson(StrictTable table) {
        var traces = table.rawText("traces").orElse("");
        var points = table.rawText("points").orElse("");
        return table.build(() -> new JsonForm(traces, points));
    }

    private static Optional<TimeForm> readTime(StrictTable table) {
        var format = table.optionalText("format").flatMap(pattern -> format(table, pattern));
        var zone = table.optionalText("zone").flatMap(name -> zone(table, name));
        return table.build(() -> new TimeForm(format.orElse(null), zone.orElse(null)));
    }

    private static Optional<DateTimeFormatter> format(StrictTable table, String pattern) {
        try {
            return Optional.of(new DateTimeFormatterBuilder()
                    .parseCaseInsensitive()
                    .appendPattern(pattern.replace("yyyy", "uuuu"))
                    .toFormatter(Locale.ENGLISH)
                    .withResolverStyle(ResolverStyle.STRICT));
        } catch (IllegalArgumentException e) {
            table.problem(
                    ProblemCode.BAD_VALUE,
                    "format",
                    "'" + pattern + "' is no time format",
                    "dd.MM.yyyy HH:mm:ss or the like",
                    "");
            return Optional.empty();
        }
    }

    private static Optional<ZoneId> zone(StrictTable table, String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            table.problem(
                    ProblemCode.BAD_VALUE,
                    "zone",
                    "'" + name + "' is no time zone",
                    "Europe/Berlin, +01:00 or the like",
                    "");
            return Optional.empty();
        }
    }

    private static Optional<Map<SampleQuantity, SampleSource>> readSamples(StrictTable table) {
        var samples = new EnumMap<SampleQuantity, SampleSource>(SampleQuantity.class);
        for (var quantity : SampleQuantity.values()) {
            table.optionalSection(quantity.key())
                    .flatMap(inside -> readSource(inside, quantity))
                    .ifPresent(source -> samples.put(quantity, source));
        }
        return table.build(() -> samples);
    }

    private static Optional<SampleSource> readSource(StrictTable table, SampleQuantity quantity) {
        var column = table.optionalText("column").orElse("");
        double step = 0.0;
        Double factor = null;
        int sign = 1;
        var marks = new HashMap<String, Integer>();
        if (quantity == SampleQuantity.STAGE) {
            table.optionalSection("marks").ifPresent(inside -> readMarks(inside, marks));
        } else {
            sign = table.choice("tightening", SIGNS).orElse(1);
            step = table.optionalNumber("step").orElse(0.0);
            factor = table.has("unit") || step != 0.0
                    ? (Double) table.unit(quantity.quantity().orElseThrow())
                    : null;
        }
        double everyStep = step;
        int tightening = sign;
        @Nullable Double unitFactor = factor;
        return table.build(() -> new SampleSource(column, unitFactor, tightening, everyStep, marks));
    }

    private static void readMarks(StrictTable table, Map<String, Integer> marks) {
        for (var word : table.keys()) {
            double number = table.number(word);
            if (number == Math.rint(number) && Math.abs(number) < 1000) {
                marks.put(word, (int) number);
            } else if (!Double.isNaN(number)) {
                table.problem(ProblemCode.BAD_VALUE, word, word + " is " + number, "a whole stage number", "");
            }
        }
    }

    /** The section {@code [log]}. */
    private record Log(@Nullable LogShape shape, List<String> ignore) {
        static Optional<Log> read(StrictTable table) {
            var shapes = new LinkedHashMap<String, LogShape>();
            for (var shape : LogShape.values()) {
                shapes.put(shape.word(), shape);
            }
            var shape = table.choice("shape", shapes);
            var ignore = table.texts("ignore");
            return table.build(() -> new Log(shape.orElse(null), ignore));
        }
    }

    /** The section {@code [identity]}. */
    private record Identity(
            Map<IdentityField, Origin> origins, @Nullable Pattern fileName) {
        static Optional<Identity> read(StrictTable table) {
            var pattern = table.optionalText("file-name").flatMap(text -> pattern(table, text));
            var origins = new EnumMap<IdentityField, Origin>(IdentityField.class);
            for (var field : IdentityField.values()) {
                table.optionalSection(field.key())
                        .flatMap(inside ->
                                origin(inside, pattern.map(Pattern::pattern).orElse("")))
                        .ifPresent(origin -> origins.put(field, origin));
            }
            return table.build(() -> new Identity(origins, pattern.orElse(null)));
        }

        private static Optional<Origin> origin(StrictTable table, String pattern) {
            var column = table.optionalText("column");
            var header = table.optionalText("header");
            var file = table.optionalText("file");
            var value = table.optionalText("value");
            long given = List.of(column, header, file, value).stream()
                    .filter(Optional::isPresent)
                    .count();
            if (given != 1) {
                table.problem(
                        ProblemCode.BAD_VALUE,
                        "",
                        "a field comes from one place; here are " + given,
                        "one of column, header, file, value",
                        "");
            }
            if (file.isPresent() && !pattern.contains("(?<" + file.get() + ">")) {
                table.problem(
                        ProblemCode.BAD_VALUE,
                        "file",
                        "file-name has no group '" + file.get() + "'",
                        "(?<" + file.get() + ">...) in file-name",
                        "");
            }
            return table.build(() -> column.<Origin>map(Origin.Column::new)
                    .or(() -> header.map(Origin.HeaderLine::new))
                    .or(() -> file.map(Origin.FileName::new))
                    .or(() -> value.map(Origin.Fixed::new))
                    .orElseThrow());
        }

        private static Optional<Pattern> pattern(StrictTable table, String text) {
            try {
                return Optional.of(Pattern.compile(text));
            } catch (PatternSyntaxException e) {
                table.problem(
                        ProblemCode.BAD_VALUE,
                        "file-name",
                        "'" + text + "' is no pattern: " + e.getDescription(),
                        "",
                        "");
                return Optional.empty();
            }
        }
    }

    /** The section {@code [trace]}. */
    private record TraceKey(List<String> columns, String listSeparator) {
        static Optional<TraceKey> read(StrictTable table) {
            var columns = table.texts("key");
            var separator = table.rawText("list-separator").orElse("");
            return table.build(() -> new TraceKey(columns, separator));
        }
    }
}
