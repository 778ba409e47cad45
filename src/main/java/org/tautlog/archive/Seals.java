package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.SealCheck.Signed;
import org.tautlog.archive.ledger.Ledger;
import org.tautlog.archive.ledger.Seal;
import org.tautlog.archive.ledger.SealKeys;

/** Seals as files: a text and, beside it, the bytes of its signature. */
final class Seals {
    private static final String TEXT = ".txt";
    private static final String SIGNATURE = ".sig";
    private static final Pattern OF_SEAL = Pattern.compile("seal-(\\d{4,5})\\.(txt|sig)");

    private Seals() {}

    /** The caller holds the archive's lock. Both files are on the disk before either gets its name. */
    static Path write(ArchiveFolder archive, PrivateKey key, String by, OffsetDateTime time) throws IOException {
        Files.createDirectories(archive.seals());
        var ledger = archive.ledger().read();
        var seal = new Seal(ledger.entries().size(), ledger.head(), time, by);
        var name = name(numbers(archive).stream().reduce(0, Math::max) + 1);
        var text = archive.seals().resolve(name + TEXT);
        var signature = staged(archive, SealKeys.sign(seal, key));
        var words = staged(archive, seal.text().getBytes(StandardCharsets.UTF_8));
        Disk.move(signature, text.resolveSibling(name + SIGNATURE));
        Disk.move(words, text);
        return text;
    }

    private static String name(int number) {
        return String.format(Locale.ROOT, "seal-%04d", number);
    }

    private static SortedSet<Integer> numbers(ArchiveFolder archive) throws IOException {
        var numbers = new TreeSet<Integer>();
        for (var path : Disk.list(archive.seals())) {
            var seal = OF_SEAL.matcher(path.getFileName().toString());
            if (seal.matches()) {
                numbers.add(Integer.parseInt(seal.group(1)));
            }
        }
        return numbers;
    }

    /** Seals are numbered without gaps, and each is two files: whatever of them is not there. */
    static List<String> missing(ArchiveFolder archive) throws IOException {
        var missing = new ArrayList<String>();
        var numbers = numbers(archive);
        for (int number = 1; !numbers.isEmpty() && number <= numbers.last(); number++) {
            for (var ending : List.of(TEXT, SIGNATURE)) {
                if (!Files.exists(archive.seals().resolve(name(number) + ending))) {
                    missing.add(name(number) + ending);
                }
            }
        }
        return missing;
    }

    static List<Path> texts(ArchiveFolder archive) throws IOException {
        return Disk.list(archive.seals()).stream()
                .filter(path -> isOfSeal(path) && path.toString().endsWith(TEXT))
                .toList();
    }

    static boolean isOfSeal(Path path) {
        return OF_SEAL.matcher(path.getFileName().toString()).matches();
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

    private static Path staged(ArchiveFolder archive, byte[] bytes) throws IOException {
        Files.createDirectories(archive.staging());
        var whole = archive.staging().resolve(Disk.uniqueName("seal-"));
        Disk.write(whole, bytes);
        return whole;
    }
}
