package org.tautlog.intake.layout;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.toml.Quantity;

/** What the samples of a trace can hold, each with the words by which exports name it. */
public enum SampleQuantity {
    /** Angle. */
    ANGLE(
            Quantity.ANGLE,
            "angle angles ang angleact actualangle anglevalue measuredangle tighteningangle spindleangle turnangle phi rotation"
                    + " rotationangle winkel drehwinkel istwinkel winkelist winkelistwert winkelwert anziehwinkel"
                    + " anzugswinkel anzugwinkel weiterdrehwinkel turns revolutions umdrehungen"),
    /** Torque. */
    TORQUE(
            Quantity.TORQUE,
            "torque torques trq torqueact actualtorque torquevalue measuredtorque tighteningtorque spindletorque drehmoment moment"
                    + " istmoment momentist momentistwert momentwert drehmomentist drehmomentistwert drehmomentwert"
                    + " anziehdrehmoment anziehmoment anzugsmoment anzugmoment anzugsdrehmoment md m"),
    /** Time since the start. */
    TIME(Quantity.TIME, "time times zeit t elapsed elapsedtime sampletime messzeit zeitist"),
    /** Number of the stage. */
    STAGE(null, "stage stageno step stepno stepnumber stufe stufennr schritt schrittnr phase");

    private final @Nullable Quantity quantity;
    private final String names;

    SampleQuantity(@Nullable Quantity quantity, String names) {
        this.quantity = quantity;
        this.names = ' ' + names + ' ';
    }

    /** {@return the physical quantity; empty for the stage, which is a number without unit} */
    public Optional<Quantity> quantity() {
        return Optional.ofNullable(quantity);
    }

    /** {@return the key in a layout file, for example {@code torque}} */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return the unit that is taken where neither layout nor file states one} */
    public String usualUnit() {
        return switch (this) {
            case ANGLE -> "deg";
            case TORQUE -> "N·m";
            case TIME -> "s";
            case STAGE -> "";
        };
    }

    /**
     * Finds the quantity that a heading names.
     *
     * @param heading a column's header, with or without a unit
     * @return the quantity, or empty where it is no usual name of one
     */
    public static Optional<SampleQuantity> named(String heading) {
        var plain = ColumnName.of(heading).plain();
        return Arrays.stream(values())
                .filter(quantity -> quantity.isNamed(plain))
                .findFirst();
    }

    boolean isNamed(String plainName) {
        return !plainName.isEmpty() && names.contains(' ' + plainName + ' ');
    }
}
