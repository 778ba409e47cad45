package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.SealCheck.Signed;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.ledger.Seal;
import org.tautlog.archive.ledger.SealKeys;

/** Seals as files: a text and, beside it, the bytes of its signature. */
final class Seals {
    private static final String TEXT = ".txt";
    private static final String SIGNATURE = ".sig";

    private Seals() {}

    /** The caller holds the archive's lock. A signature without its text is a seal whose writer died: it never counted. */
    static Path write(ArchiveFolder archive, PrivateKey key, String by, OffsetDateTime time) throws IOException {
        Files.createDirectories(archive.seals());
        var ledger = archive.ledger().read();
        var seal = new Seal(ledger.entries().size(), ledger.head(), time, by);
        var name = String.format(Locale.ROOT, "seal-%04d", texts(archive).size() + 1);
        var text = archive.seals().resolve(name + TEXT);
        put(archive, text.resolveSibling(name + SIGNATURE), SealKeys.sign(seal, key));
        put(archive, text, seal.text().getBytes(StandardCharsets.UTF_8));
        return text;
    }

    static List<Path> texts(ArchiveFolder archive) throws IOException {
        return Disk.list(archive.seals()).stream()
                .filter(path -> isOfSeal(path) && path.toString().endsWith(TEXT))
                .toList();
    }

    static boolean isOfSeal(Path path) {
        return path.getFileName().toString().matches("seal-\\d{4,}\\.(txt|sig)");
    }

    /** Throws where the text is not that of a seal. */
    static SealCheck check(Path text, Ledger.Reading ledger, @Nullable PublicKey key) throws IOException {
        var seal = Seal.parse(new String(Files.readAllBytes(text), StandardCharsets.UTF_8));
        boolean onChain = seal.entries() == 0
                || (seal.entries() <= ledger.entries().size()
                        && ledger.entries().get(seal.entries() - 1).sha256().equals(seal.head()));
        return new SealCheck(text.getFileName().toString(), seal, onChain, signed(text, seal, key));
    }

    private static Signed signed(Path text, Seal seal, @Nullable PublicKey key) throws IOException {
        if (key == null) {
            return Signed.NOT_CHECKED;
        }
        var name = text.getFileName().toString();
        var signature = text.resolveSibling(name.substring(0, name.length() - TEXT.length()) + SIGNATURE);
        boolean genuine = Files.exists(signature) && SealKeys.isSignedBy(seal, Files.readAllBytes(signature), key);
        return genuine ? Signed.BY_THE_KEY : Signed.NOT_BY_THE_KEY;
    }

    private static void put(ArchiveFolder archive, Path file, byte[] bytes) throws IOException {
        Files.createDirectories(archive.staging());
        var whole = archive.staging().resolve(Disk.uniqueName("seal-"));
        Disk.write(whole, bytes);
        Disk.move(whole, file);
    }
}
