package org.tautlog.intake.file;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Bytes that may break off: then they seem to end, so that all before the break is used, and the cause is kept. A buffer
 * above them would lose what it holds when they threw.
 */
public final class BreakingStream extends FilterInputStream {
    private @Nullable IOException broken;

    /**
     * Reads bytes that may break off.
     *
     * @param bytes the bytes
     */
    public BreakingStream(InputStream bytes) {
        super(bytes);
    }

    /** {@return why the bytes broke off; empty where they did not, or not yet} */
    public Optional<IOException> broken() {
        return Optional.ofNullable(broken);
    }

    @Override
    public int read() {
        var one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int from, int length) {
        if (broken != null) {
            return -1;
        }
        try {
            return super.read(into, from, length);
        } catch (IOException e) {
            broken = e;
            return -1;
        }
    }
}
