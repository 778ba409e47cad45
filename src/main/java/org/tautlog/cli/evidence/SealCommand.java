package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tautlog.archive.ledger.SealKeys;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.evidence.ArchiveJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Signs the state of an archive. */
@Command(
        name = "seal",
        description = {
            "Signs the state of an archive, which stands for every byte kept so far.",
            "",
            "Writes a text and its signature into the archive; copies of both, kept elsewhere, prove later that"
                    + " nothing before them was altered or taken away."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  openssl genpkey -algorithm ed25519 -out seal.key",
            "  openssl pkey -in seal.key -pubout -out seal.pub",
            "  tautlog seal --archive evidence/ --key seal.key --by \"Q. Auditor\""
        },
        mixinStandardHelpOptions = true)
final class SealCommand implements Callable<Integer> {
    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Option(names = "--key", paramLabel = "FILE", required = true, description = "Private key, Ed25519 in PEM.")
    private Path key = Path.of("");

    @Option(names = "--by", paramLabel = "NAME", required = true, description = "Who seals.")
    private String by = "";

    @Option(names = "--json", description = "One JSON object to the standard output, and nothing else.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (by.isBlank() || by.lines().count() != 1) {
            throw Refusal.wrongUse("--by is '" + Terminal.harmless(by) + "'; one line with a name is needed");
        }
        var privateKey = KeyFile.read(key, SealKeys::privateKey);
        var kept = archive.open();
        var text = kept.seal(privateKey, by, ArchiveOption.stamp());
        try (var query = kept.query()) {
            var err = spec.commandLine().getErr();
            query.sources()
                    .problems()
                    .forEach(problem -> err.println("sealed, but: " + Terminal.harmless(problem.sentence())));
        }
        spec.commandLine()
                .getOut()
                .println(
                        json
                                ? ArchiveJson.ofSeal(text.toString(), by)
                                : "sealed: " + text + ", its signature beside it; keep copies elsewhere");
        return ExitCode.ALL_CONFORMING.number();
    }
}
