package org.tautlog.archive.ledger;

import java.util.Objects;

/**
 * A person's recorded word. A later decision about the same bolt position of the same engine supersedes an earlier one,
 * and neither is ever edited.
 *
 * @param serial the engine; never blank
 * @param bolt the bolt position; empty where the decision is about the whole engine
 * @param action what was decided
 * @param by who decided; never blank
 * @param reason why; never blank
 */
public record Decision(String serial, String bolt, DecisionAction action, String by, String reason) {
    public Decision {
        Objects.requireNonNull(bolt, "bolt");
        Objects.requireNonNull(action, "action");
        need("serial", serial);
        need("by", by);
        need("reason", reason);
    }

    /**
     * Whether another decision is about the same thing.
     *
     * @param other the other decision
     * @return whether engine and bolt position are the same
     */
    public boolean sameSubject(Decision other) {
        return serial.equals(other.serial) && bolt.equals(other.bolt);
    }

    private static void need(String name, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " is blank; a decision needs an engine, a person and a reason");
        }
    }
}
