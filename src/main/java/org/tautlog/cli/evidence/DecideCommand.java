package org.tautlog.cli.evidence;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.Archive;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.Decision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Help;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.evidence.ArchiveJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Records a person's word on a tightening. */
@Command(
        name = "decide",
        description = {
            "Records in an archive what a person decided about an engine, or about one of its bolts.",
            "",
            "A decision is never edited: a later one about the same supersedes it, and both stay."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog decide FW-000017 quarantine --archive evidence/ --by \"A. Reviewer\" --reason \"bolt 3 short\"",
            "  tautlog decide FW-000017 re-tighten --bolt 3 --archive evidence/ --by \"A. Reviewer\""
                    + " --reason \"new bolt, A19\""
        },
        mixinStandardHelpOptions = true)
final class DecideCommand implements Callable<Integer>, Help.Judging {
    private static final int MOST_GUESSES = 3;

    @Parameters(index = "0", paramLabel = "SERIAL", description = "The engine.")
    private String serial = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "ACTION",
            description = "accept, re-tighten (with a new bolt), replace, quarantine or release.")
    private @Nullable String action;

    @Option(names = "--action", paramLabel = "ACTION", description = "The same, by name.")
    private @Nullable String named;

    @Option(names = "--bolt", paramLabel = "N", description = "The bolt position; without it the whole engine.")
    private @Nullable String bolt;

    @Option(names = "--by", paramLabel = "NAME", required = true, description = "Who decided.")
    private String by = "";

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why.")
    private String reason = "";

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Option(names = "--json", description = "One JSON object to the standard output, and nothing else.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var decision = decision();
        var kept = archive.open();
        refuseUnknown(kept, decision.bolt());
        var decided = kept.decide(decision, ArchiveOption.stamp());
        spec.commandLine().getOut().println(json ? ArchiveJson.of(decided) : sentence(decided));
        return ExitCode.ALL_CONFORMING.number();
    }

    private String sentence(KeptDecision decided) {
        return String.format(
                Locale.ROOT,
                "entry %d: %s%s %s, by %s",
                decided.entry(),
                Terminal.harmless(serial),
                decided.decision().bolt().isEmpty()
                        ? ""
                        : " bolt " + Terminal.harmless(decided.decision().bolt()),
                decided.decision().action().word(),
                Terminal.harmless(by));
    }

    private Decision decision() {
        var wanted = wanted();
        var position = bolt == null ? "" : bolt.strip();
        if (bolt != null && position.isEmpty()) {
            throw Refusal.wrongUse("--bolt is blank; leave it out to decide about the whole engine");
        }
        try {
            return new Decision(serial, position, wanted, by, reason);
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(String.valueOf(e.getMessage()));
        }
    }

    private DecisionAction wanted() {
        if ((action == null) == (named == null)) {
            throw Refusal.wrongUse("name one action, after the serial or with --action: " + actions() + "; "
                    + Terminal.harmless(serial) + (action == null ? " has none" : " has two"));
        }
        var word = action == null ? named : action;
        return DecisionAction.parse(String.valueOf(word))
                .orElseThrow(() -> Refusal.wrongUse(
                        "'" + Terminal.harmless(String.valueOf(word)) + "' is no action; there are " + actions()));
    }

    private static String actions() {
        return Stream.of(DecisionAction.values()).map(DecisionAction::word).collect(Collectors.joining(", "));
    }

    private void refuseUnknown(Archive kept, String position) throws IOException {
        try (var query = kept.query()) {
            var found = query.nearestSerials(serial, MOST_GUESSES);
            var near = found.value().orElse(List.of());
            if (!near.contains(serial)) {
                throw Refusal.wrongUse("the archive knows no engine " + Terminal.harmless(serial)
                        + (near.isEmpty() ? "" : "; nearest: " + Terminal.harmless(String.join(", ", near))));
            }
            if (position.isEmpty()) {
                var err = spec.commandLine().getErr();
                found.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
            } else {
                refuseUnknownPosition(query, position);
            }
        }
    }

    private void refuseUnknownPosition(ArchiveQuery query, String position) throws IOException {
        var positions = new LinkedHashSet<>(query.boltPositions(serial).value().orElse(List.of()));
        ArchivedSpecifications.in(query, spec.commandLine().getErr())
                .readable()
                .values()
                .forEach(specification -> positions.addAll(specification.boltPositions()));
        if (!positions.contains(position)) {
            throw Refusal.wrongUse("neither " + Terminal.harmless(serial)
                    + " nor an engine of the same station nor a specification has a bolt position "
                    + Terminal.harmless(position)
                    + (positions.isEmpty()
                            ? "; none has a name"
                            : "; there are " + Terminal.harmless(String.join(", ", positions))));
        }
    }
}
