package org.tautlog.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.tautlog.intake.file.FilesAhead.Turn;
import org.tautlog.problem.Problem;

/**
 * The running account of one reading, or of one file of it. A file may be read before its turn: then what it meets is
 * entered when its turn comes, so that the account is the same in whatever order files are read.
 */
final class ReadLedger {
    /** About what a problem with its words takes. */
    private static final int BYTES_OF_PROBLEM = 1 << 10;

    private final int mostProblems;
    private final ReadLedger whole;
    private final Turn turn;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Problem> assumptions = new LinkedHashMap<>();
    private long problemsMet;
    private long problemsBefore;
    private long tracesBefore;
    private boolean failed;

    final Account files = new Account();
    final Account lines = new Account();
    final Account traces = new Account();

    ReadLedger(int mostProblems) {
        this.mostProblems = mostProblems;
        this.whole = this;
        this.turn = (bytes, what) -> what.run();
    }

    private ReadLedger(ReadLedger whole, Turn turn) {
        this.mostProblems = whole.mostProblems;
        this.whole = whole;
        this.turn = turn;
    }

    /** The account of one file, which becomes part of this one. */
    ReadLedger ofFile(Turn itsTurn) {
        return new ReadLedger(whole, itsTurn);
    }

    /** Says that the reading of one file broke off inside the program; what it left unsettled is rejected. */
    void breakOff(Problem problem) {
        problem(problem);
        failed = true;
    }

    /** Ends the account of one file. */
    void close() {
        turn.then(1, () -> {
            whole.files.add(files);
            whole.lines.add(lines);
            whole.traces.add(traces);
            if (failed) {
                whole.files.rejectRest();
                whole.lines.rejectRest();
                whole.traces.rejectRest();
            }
        });
    }

    /** Enters something into the whole account when it is this file's turn. */
    void enter(int bytes, Consumer<ReadLedger> entry) {
        turn.then(bytes, () -> entry.accept(whole));
    }

    void problem(Problem problem) {
        enter(BYTES_OF_PROBLEM, all -> all.add(problem));
    }

    private void add(Problem problem) {
        problemsMet++;
        if (problems.size() < mostProblems) {
            problems.add(problem);
        }
    }

    void assume(Problem assumption) {
        enter(BYTES_OF_PROBLEM, all -> {
            if (all.assumptions.size() < mostProblems) {
                all.assumptions.putIfAbsent(assumption.what(), assumption);
            }
        });
    }

    /** Counts a file or an entry of an archive that gave no trace, and says why. */
    void rejectFile(Problem problem) {
        problem(problem);
        files.rejected(1);
    }

    /** Reads the traces of one file. */
    interface Reading {
        void read() throws IOException;
    }

    /** Settles a file by what its reading gives: kept where that is a trace, else rejected, and never without a word. */
    void settleFile(Reading reading, Problem ofNothing) throws IOException {
        enter(1, all -> {
            all.tracesBefore = all.traces.kept;
            all.problemsBefore = all.problemsMet;
        });
        reading.read();
        enter(BYTES_OF_PROBLEM, all -> all.settleFile(ofNothing));
    }

    private void settleFile(Problem ofNothing) {
        if (traces.kept > tracesBefore) {
            files.kept(1);
            return;
        }
        files.rejected(1);
        if (problemsMet == problemsBefore) {
            add(ofNothing);
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

        /** The files before are settled, so the rest is this file's. */
        private void rejectRest() {
            rejected += in - kept - rejected - ignored;
        }

        private void add(Account part) {
            in += part.in;
            kept += part.kept;
            rejected += part.rejected;
            ignored += part.ignored;
        }

        private Tally tally() {
            return new Tally(in, kept, rejected, ignored);
        }
    }
}
