package org.tautlog.intake.calendar;

import java.time.LocalTime;
import java.util.Objects;

/**
 * One of the shifts of a day.
 *
 * @param name its name; never blank
 * @param from local time at which it begins
 * @param to local time at which it ends; of the next day where that is earlier than its beginning
 */
public record PlannedShift(String name, LocalTime from, LocalTime to) {
    public PlannedShift {
        Objects.requireNonNull(from, "from");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name is blank; a shift has a name");
        }
        if (to.equals(from)) {
            throw new IllegalArgumentException(
                    "to is " + to + " as from is; a shift ends at another time than it begins");
        }
    }

    /** {@return whether it ends on the day after the one on which it begins} */
    public boolean overMidnight() {
        return to.isBefore(from);
    }
}
