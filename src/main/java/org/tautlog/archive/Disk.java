package org.tautlog.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;

/** Files that are on the disk when a method returns, and moves that happen wholly or not at all. */
final class Disk {
    private Disk() {}

    static void force(Path file) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (AccessDeniedException e) {
            if (!Files.isDirectory(file)) {
                throw e;
            }
            // Some systems do not open folders; those keep their entries without being asked.
        }
    }

    static void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        force(file);
    }

    /** A name that nothing else has, here or on any other machine; the time alone would not do. */
    static String uniqueName(String prefix) {
        return prefix + UUID.randomUUID().toString().substring(0, 13);
    }

    static void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        force(to.toAbsolutePath().resolveSibling(""));
    }

    static void delete(Path tree) throws IOException {
        if (!Files.exists(tree)) {
            return;
        }
        List<Path> paths;
        try (var walk = Files.walk(tree)) {
            paths = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (var path : paths) {
            Files.deleteIfExists(path);
        }
    }

    static List<Path> list(Path folder) throws IOException {
        try (var paths = Files.list(folder)) {
            return paths.sorted().toList();
        } catch (NoSuchFileException none) {
            return List.of();
        }
    }

    static String sha256(Path file) throws IOException {
        var digest = sha256();
        try (var stream = new DigestInputStream(Files.newInputStream(file), digest)) {
            var buffer = new byte[1 << 16];
            while (stream.read(buffer) >= 0) {}
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
