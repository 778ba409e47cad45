package org.tautlog.archive;

import java.io.IOException;

/** What was asked of an archive cannot be done as it was asked; nothing broke and nothing was changed. */
public final class ArchiveRefusal extends IOException {
    private static final long serialVersionUID = 1L;

    ArchiveRefusal(String sentence) {
        super(sentence);
    }
}
