package org.tautlog.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipInputStream;

/** What a folder of logs holds, looked at through the packing: how tightly bytes are packed differs between Java builds. */
public record LogFolder(Map<String, String> files) {
    public static LogFolder of(Path folder) throws IOException {
        var files = new TreeMap<String, String>();
        try (var paths = Files.walk(folder)) {
            for (var path : paths.filter(Files::isRegularFile).toList()) {
                var name = folder.relativize(path).toString().replace('\\', '/');
                try (var bytes = Files.newInputStream(path)) {
                    read(name, bytes, files);
                }
            }
        }
        return new LogFolder(files);
    }

    private static void read(String name, InputStream bytes, Map<String, String> files) throws IOException {
        if (name.endsWith(".gz")) {
            files.put(name, sum(new GZIPInputStream(bytes)));
        } else if (name.endsWith(".zip")) {
            var zip = new ZipInputStream(new ByteArrayInputStream(bytes.readAllBytes()));
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(name + '!' + entry.getName(), sum(zip));
            }
        } else {
            files.put(name, sum(bytes));
        }
    }

    private static String sum(InputStream bytes) throws IOException {
        var content = bytes.readAllBytes();
        var sum = new CRC32();
        sum.update(content);
        return content.length + " bytes, sum " + Long.toHexString(sum.getValue());
    }
}
