package org.tautlog.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.SealCheck;
import org.tautlog.archive.Verification;
import org.tautlog.archive.ledger.SealKeys;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.report.evidence.ArchiveJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks that an archive is what was kept. */
@Command(
        name = "verify",
        description = {
            "Checks an archive: hashes every file, holds every row against its hash and walks the chain.",
            "",
            "Names whatever was altered, is missing or was added. With the public key of whoever seals it checks"
                    + " signatures too. Only a seal kept elsewhere shows that nothing was taken off the end."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog verify --archive evidence/",
            "  tautlog verify --archive evidence/ --key seal.pub --seal usb/seal-0001.txt"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all that was ever kept is there, unaltered",
            "1:something was altered, is missing or was added",
            "2:the command line, or a file or folder, cannot be used",
            "4:the program itself failed"
        },
        mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {
    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Option(names = "--key", paramLabel = "FILE", description = "Public key of whoever seals, Ed25519 in PEM.")
    private @Nullable Path key;

    @Option(
            names = "--seal",
            paramLabel = "FILE",
            description = "Text of a seal kept elsewhere, its signature beside it; may be repeated.")
    private List<Path> seals = List.of();

    @Option(names = "--json", description = "One JSON object to the standard output, and nothing else.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (key == null && !seals.isEmpty()) {
            throw Refusal.wrongUse("--seal needs --key: a seal proves nothing without the key of its sealer");
        }
        var verification = verify();
        if (json) {
            spec.commandLine().getOut().println(ArchiveJson.of(verification));
        } else {
            print(verification);
        }
        return (verification.isWhole() ? ExitCode.ALL_CONFORMING : ExitCode.NOT_ALL_CONFORMING).number();
    }

    private Verification verify() throws IOException {
        try (var progress =
                Progress.onTerminal("checking batches", spec.commandLine().getErr())) {
            return key == null
                    ? archive.open().verify(progress::step)
                    : archive.open().verify(KeyFile.read(key, SealKeys::publicKey), seals, progress::step);
        }
    }

    private void print(Verification found) {
        var out = spec.commandLine().getOut();
        found.problems()
                .forEach(problem -> out.println(problem.code().word() + ": " + Terminal.harmless(problem.sentence())));
        found.seals().forEach(seal -> out.println(sentence(seal)));
        out.println(String.format(
                Locale.ROOT,
                "%s: %s, %s, %s, %s in the ledger",
                found.isWhole() ? "whole and unaltered" : "NOT as it was kept",
                Counted.of(found.batches(), "batch"),
                Counted.of(found.files(), "file"),
                Counted.of(found.rows(), "row"),
                found.entries() == 1 ? "1 entry" : found.entries() + " entries"));
        out.println("head of the chain: " + found.head());
        notShown(found).forEach(sentence -> out.println("not shown: " + sentence));
    }

    private static List<String> notShown(Verification found) {
        var sentences = new ArrayList<String>();
        sentences.add(
                found.provenEntries() == 0
                        ? "that nothing was taken off the end of the chain; that needs --key and a --seal kept elsewhere"
                        : "that nothing was taken off after entry " + found.provenEntries()
                                + ", where the seal kept elsewhere ends");
        if (found.unplacedBatches() > 0) {
            sentences.add("that the chain before " + Counted.of(found.unplacedBatches(), "batch")
                    + " of an older program was not written anew, as that program named no entry to follow");
        }
        return sentences;
    }

    private static String sentence(SealCheck check) {
        var words = switch (check.signed()) {
            case BY_THE_KEY -> "signed by the key given";
            case NOT_BY_THE_KEY -> "NOT signed by the key given";
            case NOT_CHECKED -> "signature not checked, no key given";
        };
        return "seal " + check.file() + " of " + check.seal().time() + " by "
                + Terminal.harmless(check.seal().by()) + ": " + words + ", its state is "
                + (check.onChain() ? "on the chain" : "NOT on the chain");
    }
}
