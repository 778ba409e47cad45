package org.tautlog.cli.simulate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;

/**
 * The folder of a simulated line: gathers what belongs in one file and has it written while the next is gathered.
 *
 * <p>Station S40 exports a long table an hour. Station S50 exports one file a trace, in an archive, in the first half of
 * a shift, and one row a trace with the signs of another country in the second.
 */
final class SimulatedLogs implements AutoCloseable {
    private static final String LAYOUT = """
            # How the logs in this folder lie is told by themselves; this says what is no log.
            [log]
            ignore = ["truth.csv"]
            """;

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("yyyy-MM-dd_HH'h'", Locale.ROOT);
    private static final int HALF_SHIFT = SimulatedLine.ENGINES_PER_SHIFT / 2;
    /** Files that may wait to be written; more are not gathered before. */
    private static final int MOST_WAITING = 6;

    private final Path folder;
    private final TruthTable truth;
    private final @Nullable OutcomeTable outcomes;
    private final ExecutorService writers;
    private final Map<String, SimulatedLog> gathering = new HashMap<>();
    private final List<Future<?>> waiting = new ArrayList<>();
    private long accepted;

    private SimulatedLogs(Path folder, TruthTable truth, @Nullable OutcomeTable outcomes) {
        this.folder = folder;
        this.truth = truth;
        this.outcomes = outcomes;
        writers = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    }

    /** Logs of a line at work. */
    static SimulatedLogs in(Path folder) throws IOException {
        ReportFile.makeFolder(folder);
        return started(folder, LAYOUT, null);
    }

    /** Logs of a qualification trial, with the clamp loads measured in it. */
    static SimulatedLogs ofTrialIn(Path folder) throws IOException {
        ReportFile.makeFolder(folder);
        var layout = LAYOUT.replace("\"]", "\", \"" + OutcomeTable.NAME + "\"]");
        return started(folder, layout, OutcomeTable.in(folder));
    }

    private static SimulatedLogs started(Path folder, String layout, @Nullable OutcomeTable outcomes)
            throws IOException {
        Files.writeString(folder.resolve("layout.toml"), layout);
        Files.writeString(folder.resolve("joint.toml"), SpecificationFile.write(FenwaterEngine.specification()));
        return new SimulatedLogs(folder, TruthTable.in(folder.resolve("truth.csv")), outcomes);
    }

    /** Takes the next tightening in time order. */
    void accept(SimulatedTightening tightening) {
        try {
            truth.add(tightening);
            if (outcomes != null) {
                outcomes.add(tightening.measured());
            }
            var station = tightening.trace().identity().station();
            var place = place(tightening);
            var log = gathering.get(station);
            if (log == null || !log.place().equals(place)) {
                if (log != null) {
                    write(log);
                }
                log = new SimulatedLog(place, new ArrayList<>());
                gathering.put(station, log);
            }
            log.tightenings().add(tightening);
            accepted++;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes what is still gathered; returns how many tightenings there were. */
    long finish() throws IOException {
        for (var log : gathering.values()) {
            write(log);
        }
        gathering.clear();
        await(0);
        return accepted;
    }

    @Override
    public void close() throws IOException {
        writers.shutdownNow();
        truth.close();
        if (outcomes != null) {
            outcomes.close();
        }
    }

    private void write(SimulatedLog log) throws IOException {
        await(MOST_WAITING);
        waiting.add(writers.submit(() -> {
            log.write(folder);
            return log;
        }));
    }

    /** Waits until at most so many files are still to be written. */
    private void await(int most) throws IOException {
        while (waiting.size() > most) {
            try {
                waiting.remove(0).get();
            } catch (ExecutionException e) {
                throw new IOException(Objects.requireNonNull(e.getCause()).getMessage(), e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("writing was interrupted", e);
            }
        }
    }

    private static SimulatedLog.Place place(SimulatedTightening tightening) {
        var identity = tightening.trace().identity();
        var time = Objects.requireNonNull(identity.time());
        if (identity.station().equals("S40")) {
            return new SimulatedLog.Place("S40/" + HOUR.format(time) + ".csv.gz", SimulatedLog.Kind.LONG_TABLE);
        }
        int engine = FenwaterEngine.number(identity.serial());
        int half = (engine - 1) / HALF_SHIFT;
        var name = String.format(Locale.ROOT, "S50/shift-%03d_", half / 2 + 1);
        return half % 2 == 0
                ? new SimulatedLog.Place(name + "early.zip", SimulatedLog.Kind.FILE_PER_TRACE)
                : new SimulatedLog.Place(name + "late.csv.gz", SimulatedLog.Kind.ROW_PER_TRACE);
    }
}
