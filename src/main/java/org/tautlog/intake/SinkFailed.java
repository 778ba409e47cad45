package org.tautlog.intake;

/** Carries a failure of those who take the traces past the readers, whose own failures end no more than a file. */
final class SinkFailed extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final RuntimeException failure;

    SinkFailed(RuntimeException failure) {
        super(failure);
        this.failure = failure;
    }

    RuntimeException failure() {
        return failure;
    }
}
