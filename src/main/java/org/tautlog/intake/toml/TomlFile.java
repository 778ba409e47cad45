package org.tautlog.intake.toml;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/** Reads a whole TOML file into a value by way of its strict tables. */
public final class TomlFile {
    /** Far above any file that a person writes. */
    private static final int MOST_BYTES = 1 << 20;
    /** The parser works by recursion; deeper text would exhaust its stack. */
    private static final int DEEPEST_NESTING = 64;

    private TomlFile() {}

    /**
     * Reads a file.
     *
     * @param <T> the type of the value
     * @param file the file, UTF-8, at most 1 MiB
     * @param reader turns the file's root table into a value, or into nothing after it has noted problems
     * @return the value, or the problems that prevent it
     */
    public static <T> Outcome<T> read(Path file, Function<StrictTable, Optional<T>> reader) {
        var name = file.toString();
        try (var bytes = Files.newInputStream(file)) {
            var head = bytes.readNBytes(MOST_BYTES + 1);
            if (head.length > MOST_BYTES) {
                return failed(
                        ProblemCode.TOO_LARGE,
                        Where.file(name),
                        "the file is larger than " + MOST_BYTES + " bytes",
                        "name a file of settings, not a log");
            }
            var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(head));
            return read(text.toString(), name, reader);
        } catch (CharacterCodingException e) {
            return failed(
                    ProblemCode.NOT_TEXT,
                    Where.file(name),
                    "the file is not UTF-8 text",
                    "save it with encoding UTF-8");
        } catch (NoSuchFileException e) {
            return failed(
                    ProblemCode.NOT_READABLE,
                    Where.file(name),
                    "the file cannot be read: it is not there",
                    "check its name");
        } catch (IOException e) {
            return failed(
                    ProblemCode.NOT_READABLE,
                    Where.file(name),
                    "the file cannot be read: " + e.getClass().getSimpleName(),
                    "check its name and the rights on it");
        }
    }

    /**
     * Reads the text of a file.
     *
     * @param <T> the type of the value
     * @param text the file's text
     * @param name the file's name for problems
     * @param reader turns the file's root table into a value, or into nothing after it has noted problems
     * @return the value, or the problems that prevent it
     */
    public static <T> Outcome<T> read(String text, String name, Function<StrictTable, Optional<T>> reader) {
        if (nesting(text) > DEEPEST_NESTING) {
            return failed(
                    ProblemCode.BAD_SYNTAX,
                    Where.file(name),
                    "brackets nest deeper than " + DEEPEST_NESTING,
                    "write the tables flat");
        }
        TomlParseResult parsed;
        try {
            parsed = Toml.parse(text.startsWith("\ufeff") ? text.substring(1) : text);
        } catch (RuntimeException | AssertionError e) {
            // The parser fails, instead of saying what is wrong, on some texts that end inside a quoted one.
            return failed(
                    ProblemCode.BAD_SYNTAX,
                    Where.line(name, (int) text.lines().count()),
                    "the text ends where nobody would end it",
                    "look for a quote that is not closed");
        }
        var problems = new ArrayList<Problem>();
        for (var error : parsed.errors()) {
            var at = error.position();
            problems.add(new Problem(
                    ProblemCode.BAD_SYNTAX,
                    new Where(name, at.line(), at.column(), ""),
                    String.valueOf(error.getMessage()),
                    "",
                    ""));
        }
        if (!problems.isEmpty()) {
            return Outcome.failed(problems);
        }
        var value = reader.apply(new StrictTable(parsed, "", Where.file(name), problems));
        return problems.isEmpty() && value.isPresent() ? Outcome.of(value.get(), List.of()) : Outcome.failed(problems);
    }

    private static int nesting(String text) {
        int depth = 0;
        int deepest = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '[' || c == '{') {
                deepest = Math.max(deepest, ++depth);
            } else if (c == ']' || c == '}') {
                depth = Math.max(0, depth - 1);
            }
        }
        return deepest;
    }

    private static <T> Outcome<T> failed(ProblemCode code, Where where, String what, String action) {
        return Outcome.failed(List.of(new Problem(code, where, what, "", action)));
    }
}
