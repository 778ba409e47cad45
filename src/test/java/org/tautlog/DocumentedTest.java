package org.tautlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every public type, method and constructor says what it means, and every record says it of each of its parts. */
class DocumentedTest {
    private static final Pattern PUBLIC = Pattern.compile(
            "^    (?:public|protected) (?!static final |final \\w+ \\w+ =)[^=;({]*[({]", Pattern.MULTILINE);
    private static final Pattern PUBLIC_TYPE = Pattern.compile(
            "^public (?:abstract |final |sealed |non-sealed )*(?:class|record|interface|enum|@interface) (\\w+)",
            Pattern.MULTILINE);
    private static final Pattern RECORD =
            Pattern.compile("^( *)public record (\\w+)(?:<[^(]*>)?\\(([^{]*?)\\)[^(){]*\\{", Pattern.MULTILINE);

    @Test
    void every_public_member_has_a_comment() throws IOException {
        var missing = new ArrayList<String>();
        int seen = 0;
        for (var file : sources()) {
            var text = Files.readString(file);
            for (var pattern : List.of(PUBLIC_TYPE, PUBLIC)) {
                var found = pattern.matcher(text);
                while (found.find()) {
                    var line = found.group().strip();
                    if (isCompactConstructor(line)) {
                        continue;
                    }
                    seen++;
                    if (!documented(text, found.start())) {
                        missing.add(file.getFileName() + ": "
                                + line.lines().findFirst().orElse(""));
                    }
                }
            }
        }
        assertTrue(seen > 20, "the check saw " + seen + " public members");
        assertEquals(List.of(), missing, "public members without a comment");
    }

    @Test
    void every_record_says_what_each_part_means() throws IOException {
        var missing = new ArrayList<String>();
        int seen = 0;
        for (var file : sources()) {
            var text = Files.readString(file);
            var found = RECORD.matcher(text);
            while (found.find()) {
                var comment = commentBefore(text, found.start());
                for (var part : found.group(3)
                        .replaceAll("<[^<>]*(<[^<>]*>)?[^<>]*>", "")
                        .split(",", -1)) {
                    var words = part.strip().split("\\s+", -1);
                    var name = words[words.length - 1];
                    if (name.isEmpty()) {
                        continue;
                    }
                    seen++;
                    if (!comment.contains("@param " + name)) {
                        missing.add(found.group(2) + "." + name);
                    }
                }
            }
        }
        assertTrue(seen > 20, "the check saw " + seen + " record parts");
        assertEquals(List.of(), missing, "record parts without a @param line");
    }

    private static boolean isCompactConstructor(String line) {
        return line.matches("public [A-Z]\\w* \\{");
    }

    private static boolean documented(String text, int start) {
        var before = text.substring(0, start).stripTrailing();
        return before.endsWith("*/") || lastLine(before).strip().startsWith("@Override") || annotated(before);
    }

    private static boolean annotated(String before) {
        var comment = before.lastIndexOf("*/");
        return comment >= 0
                && lastLine(before).strip().matches("[@)}\"].*")
                && !before.substring(comment + 2).contains(";")
                && before.substring(comment + 2).strip().startsWith("@");
    }

    private static String commentBefore(String text, int start) {
        int end = text.lastIndexOf("*/", start);
        int begin = text.lastIndexOf("/**", start);
        return begin >= 0 && end > begin ? text.substring(begin, end) : "";
    }

    private static String lastLine(String text) {
        return text.substring(text.lastIndexOf('\n') + 1);
    }

    private static List<Path> sources() throws IOException {
        try (var files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .toList();
        }
    }
}
