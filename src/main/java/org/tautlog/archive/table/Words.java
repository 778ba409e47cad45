package org.tautlog.archive.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.ProblemCode;
import org.tautlog.signature.ClampLoad.Basis;
import org.tautlog.signature.EndState;

/**
 * The words by which columns hold constants.
 *
 * @param <E> the constants
 */
final class Words<E> {
    static final Words<ProblemCode> PROBLEM = new Words<>(ProblemCode.values(), ProblemCode::word);
    static final Words<Verdict> VERDICT = new Words<>(Verdict.values(), Verdict::word);
    static final Words<FindingCode> FINDING = new Words<>(FindingCode.values(), FindingCode::word);
    static final Words<Consequence> CONSEQUENCE = new Words<>(Consequence.values(), Consequence::word);
    static final Words<EndState> END_STATE = new Words<>(EndState.values(), EndState::word);
    static final Words<Basis> BASIS = new Words<>(Basis.values(), SignatureColumns::word);

    private final Map<String, E> constants = new LinkedHashMap<>();

    private Words(E[] values, Function<E, String> word) {
        for (var value : values) {
            constants.put(word.apply(value), value);
        }
    }

    /** Throws IllegalArgumentException where it is none of them. */
    E read(@Nullable Object word) {
        var constant = constants.get(word);
        if (constant == null) {
            throw new IllegalArgumentException("'" + word + "' is none of " + constants.keySet());
        }
        return constant;
    }
}
