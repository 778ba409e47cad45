package org.tautlog.intake.specification;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.problem.ProblemCode;

/** The section {@code [findings]}: lists of finding words under the consequence that the plant gives them. */
final class FindingsSection {
    private FindingsSection() {}

    static Optional<Map<FindingCode, Consequence>> read(StrictTable table) {
        var consequences = new EnumMap<FindingCode, Consequence>(FindingCode.class);
        for (var consequence : Consequence.values()) {
            for (var word : table.texts(consequence.word())) {
                var code = FindingCode.parse(word);
                if (code.isEmpty()) {
                    table.notOneOf(
                            consequence.word(),
                            word,
                            Arrays.stream(FindingCode.values())
                                    .map(FindingCode::word)
                                    .toList());
                } else if (consequences.putIfAbsent(code.get(), consequence) != null) {
                    table.problem(
                            ProblemCode.BAD_VALUE, consequence.word(), "'" + word + "' is listed twice", "once", "");
                }
            }
        }
        return table.build(() -> consequences);
    }

    static void write(StringBuilder text, Map<FindingCode, Consequence> consequences) {
        if (consequences.isEmpty()) {
            return;
        }
        text.append("\n[findings]\n");
        for (var consequence : Consequence.values()) {
            var words = consequences.entrySet().stream()
                    .filter(entry -> entry.getValue() == consequence)
                    .map(entry -> '"' + entry.getKey().word() + '"')
                    .sorted()
                    .collect(Collectors.joining(", "));
            if (!words.isEmpty()) {
                WindowSection.line(text, consequence.word(), "[" + words + "]");
            }
        }
    }
}
