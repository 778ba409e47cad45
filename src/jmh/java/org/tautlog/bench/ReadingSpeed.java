package org.tautlog.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.csv.CSVFormat;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadOptions;
import org.tautlog.intake.TraceSink;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.JudgesInOrder;

/**
 * Reading and judging long tables against what reads the same files into the same columns and judges nothing: Commons CSV,
 * and DuckDB's reader. The ratios count, from one run; the seconds are those of the machine. Pinned to one processor, as by
 * {@code taskset -c 0}, it is a measurement on one core; the last line, beside the one before, tells what another adds.
 *
 * <p>Arguments: the joint specification, a plain long table, how often to repeat it as a file of its own, rounds.
 */
public final class ReadingSpeed {
    private static final int ROUNDS_TO_WARM_UP = 4;

    private ReadingSpeed() {}

    /** What is measured; says how many samples it met, so that all can be held to have met the same. */
    private interface Work {
        long run() throws Exception;
    }

    /**
     * Measures.
     *
     * @param args see above
     * @throws Exception where something cannot be read
     */
    public static void main(String[] args) throws Exception {
        var specification = SpecificationFile.read(Path.of(args[0])).value().orElseThrow();
        var copies = copies(Path.of(args[1]), Integer.parseInt(args[2]));
        int rounds = Integer.parseInt(args[3]);
        int threads = Runtime.getRuntime().availableProcessors();
        var works = new LinkedHashMap<String, Work>();
        works.put("Commons CSV into doubles", () -> commons(copies));
        works.put("DuckDB, one thread", () -> duckdb(copies));
        works.put("reading", () -> samples(copies, 1, trace -> {}));
        works.put("reading and judging", () -> judged(copies, specification, 1));
        works.put("the same as the commands do it, threads: " + threads, () -> judged(copies, specification, threads));
        var taken = new LinkedHashMap<String, List<Taken>>();
        for (int round = -ROUNDS_TO_WARM_UP; round < rounds; round++) {
            for (var work : works.entrySet()) {
                var once = time(work.getValue());
                if (round >= 0) {
                    taken.computeIfAbsent(work.getKey(), name -> new ArrayList<>())
                            .add(once);
                }
            }
        }
        var out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        var base = taken.values().iterator().next();
        out.println("medians of " + rounds + " rounds, and against the first");
        taken.forEach((name, all) -> out.println(String.format(
                Locale.ROOT,
                "%-44s %7.3f s (%.2f), processors %7.3f s (%.2f), %d samples",
                name,
                median(all, Taken::wallS),
                median(all, Taken::wallS) / median(base, Taken::wallS),
                median(all, Taken::processorsS),
                median(all, Taken::processorsS) / median(base, Taken::processorsS),
                all.get(0).samples)));
    }

    /** Time on the wall, and of all processors together: the second counts where the machine does other work too. */
    private record Taken(double wallS, double processorsS, long samples) {}

    private static double median(List<Taken> all, ToDoubleFunction<Taken> of) {
        return all.stream().mapToDouble(of).sorted().skip(all.size() / 2).findFirst().orElseThrow();
    }

    private static Taken time(Work work) throws Exception {
        var system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        long start = System.nanoTime();
        long busy = system.getProcessCpuTime();
        long samples = work.run();
        return new Taken((System.nanoTime() - start) / 1e9, (system.getProcessCpuTime() - busy) / 1e9, samples);
    }

    private static List<Path> copies(Path log, int count) throws IOException {
        var folder = Files.createTempDirectory("tautlog-speed");
        var copies = new ArrayList<Path>();
        var text = Files.readString(log);
        for (int i = 0; i < count; i++) {
            var copy = folder.resolve(String.format(Locale.ROOT, "%03d.csv", i));
            // Another serial in each, or all but the first would be the same tightening again.
            try (var out = new BufferedOutputStream(Files.newOutputStream(copy))) {
                out.write(text.replace("FW-", String.format(Locale.ROOT, "F%03d-", i)).getBytes(StandardCharsets.UTF_8));
            }
            copies.add(copy);
        }
        return copies;
    }

    private static long samples(List<Path> files, int threads, TraceSink then) {
        var samples = new long[1];
        LogReader.read(files, ReadOptions.withDefaults().withThreads(threads), trace -> {
            samples[0] += trace.curve().size();
            then.accept(trace);
        });
        return samples[0];
    }

    private static long judged(List<Path> files, JointSpecification specification, int threads) {
        int readers = Math.max(1, threads / 2);
        try (var judges = new JudgesInOrder(specification, 1 + threads - readers, (judgement, curve) -> {})) {
            long samples = samples(files, readers, judges::judge);
            judges.finish();
            return samples;
        }
    }

    /** The three columns of samples as doubles and the serial as text, as the reader needs them. */
    private static long commons(List<Path> files) throws IOException {
        long samples = 0;
        double sum = 0;
        var format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
        for (var file : files) {
            try (var parser = format.parse(Files.newBufferedReader(file))) {
                var names = parser.getHeaderNames();
                int angle = column(names, "Angle");
                int torque = column(names, "Torque");
                int time = column(names, "Time");
                for (var row : parser) {
                    sum += Double.parseDouble(row.get(angle)) + Double.parseDouble(row.get(torque));
                    sum += time < 0 || row.get(time).isEmpty() ? 0 : Double.parseDouble(row.get(time));
                    samples++;
                }
            }
        }
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("the sum is no number");
        }
        return samples;
    }

    private static int column(List<String> names, String begins) {
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).startsWith(begins)) {
                return i;
            }
        }
        return -1;
    }

    /** Every column is read whole: the sums of the hashes leave none out. */
    private static long duckdb(List<Path> files) throws SQLException {
        var folder = files.get(0).getParent();
        try (var connection = DriverManager.getConnection("jdbc:duckdb:");
                var statement = connection.createStatement()) {
            statement.execute("SET threads = 1");
            try (var rows = statement.executeQuery("SELECT count(*), sum(hash(t) % 1000) FROM read_csv('" + folder
                    + "/*.csv', header = true) t")) {
                rows.next();
                return rows.getLong(1);
            }
        }
    }
}
