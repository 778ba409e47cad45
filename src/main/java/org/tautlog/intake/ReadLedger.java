package org.tautlog.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.problem.Problem;

/** The running account of one reading. */
final class ReadLedger {
    private final int mostProblems;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Problem> assumptions = new LinkedHashMap<>();
    private long problemsMet;

    final Account files = new Account();
    final Account lines = new Account();
    final Account traces = new Account();

    ReadLedger(int mostProblems) {
        this.mostProblems = mostProblems;
    }

    void problem(Problem problem) {
        problemsMet++;
        if (problems.size() < mostProblems) {
            problems.add(problem);
        }
    }

    /** Reads the traces of one file. */
    interface Reading {
        void read() throws IOException;
    }

    /** Settles a file by what its reading gives: kept where that is a trace, else rejected, and never without a word. */
    void settleFile(Reading reading, Problem ofNothing) throws IOException {
        long tracesBefore = traces.kept;
        long problemsBefore = problemsMet;
        reading.read();
        if (traces.kept > tracesBefore) {
            files.kept(1);
            return;
        }
        files.rejected(1);
        if (problemsMet == problemsBefore) {
            problem(ofNothing);
        }
    }

    void assume(Problem assumption) {
        if (assumptions.size() < mostProblems) {
            assumptions.putIfAbsent(assumption.what(), assumption);
        }
    }

    ReadSummary summary() {
        return new ReadSummary(
                files.tally(), lines.tally(), traces.tally(), problems, problemsMet, List.copyOf(assumptions.values()));
    }

    /** One kind's account. What came in is counted apart from what became of it, so that a loss would show. */
    static final class Account {
        private long in;
        private long kept;
        private long rejected;
        private long ignored;

        void in(long more) {
            in += more;
        }

        void kept(long more) {
            kept += more;
        }

        void rejected(long more) {
            rejected += more;
        }

        void ignored(long more) {
            ignored += more;
        }

        private Tally tally() {
            return new Tally(in, kept, rejected, ignored);
        }
    }
}
