package org.tautlog.intake.layout;

import java.util.Locale;
import java.util.Optional;

/** The parts of a trace's identity, each with the words by which exports name it. */
public enum IdentityField {
    /** Identifier of the engine. */
    SERIAL("serial serialno serialnr serialnumber seriennummer seriennr sn engine engineserial engineno enginenumber "
            + "motor motornummer motornr partserial partid partno productid bauteil bauteilnr workpieceid vin"),
    /** Where it was tightened. */
    STATION("station stationid stationno stationnr arbeitsplatz arbeitsstation operation"),
    /** Which of the station's tools. */
    SPINDLE("spindle spindleno spindlenr spindlenumber spindel spindelnr channel kanal tool werkzeug"),
    /** The place in the engine. */
    BOLT("bolt boltno boltnr boltnumber boltposition position pos schraube schraubennr schraubstelle screw joint"),
    /** 1, 2, ... for the same bolt position of the same engine. */
    ATTEMPT("attempt attemptno versuch versuchnr retry wiederholung"),
    /** When the tightening ended or was recorded. */
    TIME(
            "recorded recordedat timestamp zeitstempel date datum datetime datumzeit datumuhrzeit finished timestamplocal"),
    /** The supplier's heat or batch mark. */
    BOLT_LOT("boltlot lot lotno batch charge schraubencharge heat los");

    private final String names;

    IdentityField(String names) {
        this.names = ' ' + names + ' ';
    }

    /** {@return the key of this field in a layout file, for example {@code bolt-lot}} */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Finds the field that a word of the trade names.
     *
     * @param name a column header or a key, units, signs and case aside
     * @return the field, or empty where it is no usual name of one
     */
    public static Optional<IdentityField> named(String name) {
        var plain = ColumnName.plain(name);
        for (var field : values()) {
            if (field.isNamed(plain)) {
                return Optional.of(field);
            }
        }
        return Optional.empty();
    }

    boolean isNamed(String plainName) {
        return !plainName.isEmpty() && names.contains(' ' + plainName + ' ');
    }
}
