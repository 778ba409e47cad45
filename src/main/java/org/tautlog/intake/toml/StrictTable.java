package org.tautlog.intake.toml;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * One table of a TOML file. Each key that is asked for becomes a known key; {@link #build} reports the others, and makes
 * the value only where nothing was wrong. A needed key that is missing or wrong is noted as a problem with its place and
 * yields a stand-in (empty text, NaN), so that one reading finds every problem of the file.
 */
public final class StrictTable {
    private static final Pattern KEBAB = Pattern.compile("-(.)");
    /** A field's name as the program's own records have it, such as {@code yieldStrengthMPa}. */
    private static final Pattern FIELD = Pattern.compile("\\b[a-z]+[A-Z]\\w*");

    private final TomlTable table;
    private final String path;
    private final Where where;
    private final List<Problem> problems;
    private final int problemsBefore;
    private final Set<String> known = new LinkedHashSet<>();

    StrictTable(TomlTable table, String path, Where where, List<Problem> problems) {
        this.table = table;
        this.path = path;
        this.where = where;
        this.problems = problems;
        this.problemsBefore = problems.size();
    }

    /**
     * Says whether a key is there.
     *
     * @param key the key
     * @return whether the table holds it
     */
    public boolean has(String key) {
        known.add(key);
        return table.contains(List.of(key));
    }

    /**
     * Says whether a key holds a text.
     *
     * @param key the key
     * @return whether it is there and a text
     */
    public boolean isText(String key) {
        return has(key) && table.isString(List.of(key));
    }

    /** {@return the keys of this table, in the file's order} */
    public List<String> keys() {
        return List.copyOf(table.keySet());
    }

    /**
     * A table that must be there.
     *
     * @param key its key
     * @return the table, or empty after a problem was noted
     */
    public Optional<StrictTable> section(String key) {
        return needed(key) ? optionalSection(key) : Optional.empty();
    }

    /**
     * A table that may be there.
     *
     * @param key its key
     * @return the table; empty where it is missing, or after a problem was noted
     */
    public Optional<StrictTable> optionalSection(String key) {
        return value(key, TomlTable.class, "a table: { ... }")
                .map(found -> new StrictTable(found, pathOf(key), placeOf(key), problems));
    }

    /**
     * Tables that repeat under one key.
     *
     * @param key their key
     * @return the tables in the file's order; empty where there are none
     */
    public List<StrictTable> sections(String key) {
        var found = value(key, TomlArray.class, "tables: [[" + key + "]]");
        var sections = new ArrayList<StrictTable>();
        for (int i = 0; i < found.map(TomlArray::size).orElse(0); i++) {
            if (found.orElseThrow().get(i) instanceof TomlTable one) {
                var at = found.orElseThrow().inputPositionOf(i);
                var name = pathOf(key) + '[' + (i + 1) + ']';
                sections.add(new StrictTable(one, name, place(at, name), problems));
            } else {
                wrongKind(key, "tables: [[" + key + "]]");
            }
        }
        return sections;
    }

    /**
     * A text that must be there and not be blank.
     *
     * @param key its key
     * @return the text, or an empty one after a problem was noted
     */
    public String text(String key) {
        return needed(key) ? optionalText(key).orElse("") : "";
    }

    /**
     * A text that may be there, and is not blank then.
     *
     * @param key its key
     * @return the text; empty where it is missing, or after a problem was noted
     */
    public Optional<String> optionalText(String key) {
        var text = value(key, String.class, "a text in quotes");
        if (text.isPresent() && text.get().isBlank()) {
            problem(ProblemCode.BAD_VALUE, key, key + " is blank", "a text", "");
            return Optional.empty();
        }
        return text;
    }

    /**
     * A text that must be there and mean something.
     *
     * @param <T> what it means
     * @param key its key
     * @param parser reads the text; what it refuses with an {@link IllegalArgumentException} is noted at the key
     * @return the meaning; empty after a problem was noted
     */
    public <T> Optional<T> parsed(String key, Function<String, T> parser) {
        var text = text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(parser.apply(text));
        } catch (IllegalArgumentException e) {
            problem(ProblemCode.BAD_VALUE, key, String.valueOf(e.getMessage()), "", "");
            return Optional.empty();
        }
    }

    /**
     * A text that may be there and may be blank.
     *
     * @param key its key
     * @return the text; empty where it is missing, or after a problem was noted
     */
    public Optional<String> rawText(String key) {
        return value(key, String.class, "a text in quotes");
    }

    /**
     * A yes or no that may be there.
     *
     * @param key its key
     * @return whether it is there and true
     */
    public boolean flag(String key) {
        return value(key, Boolean.class, "true or false").orElse(false);
    }

    /**
     * Texts that may be there.
     *
     * @param key their key
     * @return the texts in the file's order; empty where the key is missing
     */
    public List<String> texts(String key) {
        var texts = new ArrayList<String>();
        for (var item : value(key, TomlArray.class, "a list of texts")
                .map(TomlArray::toList)
                .orElse(List.of())) {
            if (item instanceof String text) {
                texts.add(text);
            } else {
                wrongKind(key, "a list of texts");
            }
        }
        return texts;
    }

    /**
     * A number that must be there and be finite.
     *
     * @param key its key
     * @return the number, or NaN after a problem was noted
     */
    public double number(String key) {
        return needed(key) ? optionalNumber(key).orElse(Double.NaN) : Double.NaN;
    }

    /**
     * A number that may be there, and is finite then.
     *
     * @param key its key
     * @return the number; empty where it is missing, or after a problem was noted
     */
    public OptionalDouble optionalNumber(String key) {
        var number = value(key, Number.class, "a number");
        if (number.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = number.get().doubleValue();
        if (!Double.isFinite(value)) {
            problem(ProblemCode.BAD_VALUE, key, key + " is " + value, "a finite number", "");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    /**
     * Numbers that must be there and be finite.
     *
     * @param key their key
     * @return the numbers in the file's order; empty after a problem was noted
     */
    public List<Double> numbers(String key) {
        if (!needed(key)) {
            return List.of();
        }
        var numbers = new ArrayList<Double>();
        for (var item : value(key, TomlArray.class, "a list of numbers")
                .map(TomlArray::toList)
                .orElse(List.of())) {
            if (item instanceof Number number && Double.isFinite(number.doubleValue())) {
                numbers.add(number.doubleValue());
            } else {
                wrongKind(key, "a list of finite numbers");
            }
        }
        return numbers;
    }

    /**
     * The factor of the unit that this table states under {@code unit}.
     *
     * @param quantity the quantity that the unit must be one of
     * @return how many SI-derived units one of the stated unit is, or NaN after a problem was noted
     */
    public double unit(Quantity quantity) {
        var text = text("unit");
        var factor = quantity.factor(text);
        if (factor.isEmpty() && !text.isEmpty()) {
            problem(
                    ProblemCode.BAD_UNIT,
                    "unit",
                    "'" + text + "' is no unit of " + quantity.words(),
                    "one of " + String.join(", ", quantity.symbols()),
                    "");
        }
        return factor.orElse(Double.NaN);
    }

    /**
     * One of a few words.
     *
     * @param <E> what the words stand for
     * @param key its key
     * @param choices every word with what it stands for
     * @return the meaning of the word; empty where the key is missing, or after a problem was noted
     */
    public <E> Optional<E> choice(String key, java.util.Map<String, E> choices) {
        var word = optionalText(key);
        if (word.isPresent() && !choices.containsKey(word.get())) {
            notOneOf(key, word.get(), choices.keySet());
        }
        return word.map(choices::get);
    }

    /**
     * One of a few words, which must be there.
     *
     * @param <E> what the words stand for
     * @param key its key
     * @param choices every word with what it stands for
     * @return the meaning of the word; empty after a problem was noted
     */
    public <E> Optional<E> neededChoice(String key, java.util.Map<String, E> choices) {
        return needed(key) ? choice(key, choices) : Optional.empty();
    }

    /**
     * Notes that a word is none of the valid ones and offers the closest.
     *
     * @param key the key whose value it is
     * @param word the word
     * @param valid the valid words
     */
    public void notOneOf(String key, String word, Iterable<String> valid) {
        problem(
                ProblemCode.BAD_VALUE,
                key,
                "'" + word + "' is not known",
                "one of " + String.join(", ", valid),
                didYouMean(word, valid));
    }

    /**
     * Notes a problem at a key of this table.
     *
     * @param code the kind of trouble
     * @param key the key; where it is missing the place is this table's
     * @param what what is wrong
     * @param expected what was expected; may be empty
     * @param action what to do; may be empty
     */
    public void problem(ProblemCode code, String key, String what, String expected, String action) {
        problems.add(new Problem(code, placeOf(key), what, expected, action));
    }

    /**
     * Makes the value of this table once all its keys were asked for.
     *
     * @param <T> the type of the value
     * @param maker makes the value; called only where neither this table nor one inside it had a problem. What it
     *     refuses with an {@link IllegalArgumentException} is noted at the key that the refusal names
     * @return the value, or empty where there was a problem
     */
    public <T> Optional<T> build(Supplier<T> maker) {
        for (var key : table.keySet()) {
            if (!known.contains(key)) {
                problem(
                        ProblemCode.UNKNOWN_KEY,
                        key,
                        "'" + key + "' is not a key " + (path.isEmpty() ? "of this file" : "of " + path),
                        known.isEmpty() ? "none" : "one of " + String.join(", ", known),
                        didYouMean(key, known));
            }
        }
        if (problems.size() > problemsBefore) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            var message = String.valueOf(e.getMessage());
            problem(ProblemCode.BAD_VALUE, keyNamed(message.split(" ", 2)[0]), inKeys(message), "", "");
            return Optional.empty();
        }
    }

    /**
     * Leaves this table without a value, because what it would need elsewhere in the file was wrong and is noted there. Keys
     * that it does not know are still reported.
     *
     * @param <T> the type of the value
     * @return empty
     */
    public <T> Optional<T> abandon() {
        build(() -> "");
        return Optional.empty();
    }

    private boolean needed(String key) {
        if (has(key)) {
            return true;
        }
        problem(
                ProblemCode.MISSING_KEY,
                key,
                "'" + key + "' is missing" + (path.isEmpty() ? "" : " in " + path),
                "",
                "add it");
        return false;
    }

    private <V> Optional<V> value(String key, Class<V> kind, String expected) {
        if (!has(key)) {
            return Optional.empty();
        }
        var found = table.get(List.of(key));
        if (!kind.isInstance(found)) {
            wrongKind(key, expected);
            return Optional.empty();
        }
        return Optional.of(kind.cast(found));
    }

    private void wrongKind(String key, String expected) {
        problem(ProblemCode.BAD_VALUE, key, key + " is of the wrong kind", expected, "");
    }

    /** Refusals begin with the field's name: {@code snugTorqueNm is ...} belongs to the key {@code snug-torque}. */
    private String keyNamed(String field) {
        String best = "";
        for (var key : known) {
            var camel = KEBAB.matcher(key)
                    .replaceAll(m -> Matcher.quoteReplacement(m.group(1).toUpperCase(Locale.ROOT)));
            if (field.startsWith(camel) && key.length() > best.length()) {
                best = key;
            }
        }
        return best;
    }

    /** A refusal in the words of the file: its reader knows {@code yield-strength}, not the record's field. */
    private String inKeys(String message) {
        return FIELD.matcher(message).replaceAll(found -> {
            var key = keyNamed(found.group());
            return Matcher.quoteReplacement(key.isEmpty() ? found.group() : key);
        });
    }

    private String pathOf(String key) {
        return path.isEmpty() || key.isEmpty() ? path + key : path + '.' + key;
    }

    private Where placeOf(String key) {
        var at = key.isEmpty() ? null : table.inputPositionOf(List.of(key));
        return at == null ? where.at(pathOf(key)) : place(at, pathOf(key));
    }

    private Where place(@Nullable TomlPosition at, String key) {
        return at == null ? where.at(key) : new Where(where.file(), at.line(), at.column(), key);
    }

    private static String didYouMean(String word, Iterable<String> valid) {
        return Nearest.of(word, valid)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("");
    }
}
