package org.tautlog.intake.layout;

import java.util.Locale;
import java.util.Optional;

/** The parts of a trace's identity, each with the words by which exports name it. */
public enum IdentityField {
    /** Identifier of the engine. */
    SERIAL("serial serialno serialnr serialnumber seriennummer seriennr sn engine engineserial engineserialno"
            + " engineserialnumber engineno enginenumber engineid motor motornummer motornr motorseriennummer motorseriennr"
            + " partserial partserialnumber partid partno productid productserial productserialnumber bauteil bauteilnr"
            + " workpieceid werkstück werkstücknr werkstücknummer vin fahrgestellnummer fahrgestellnr esn"),
    /** Where it was tightened. */
    STATION("station stationid stationno stationnr stationname stationnumber stationsname stationsnr stationsnummer"
            + " workstation arbeitsplatz arbeitsstation operation stn anlage"),
    /** Which of the station's tools. */
    SPINDLE(
            "spindle spindleno spindlenr spindlenumber spindleid spindel spindelnr spindelnummer schraubspindel channel channelno"
                    + " kanal kanalnr tool toolno toolid toolnumber werkzeug werkzeugnr schrauber schraubernr spdl"),
    /** The place in the engine. */
    BOLT("bolt boltno boltnr boltnumber boltid boltposition position positionno positionnr pos schraube schraubennr"
            + " schraubennummer schraubstelle schraubstellennr schraubstellennummer schraubposition schraubpunkt screw screwno"
            + " screwnumber joint jointno fastener fastenerno"),
    /** 1, 2, ... for the same bolt position of the same engine. */
    ATTEMPT("attempt attemptno attemptnumber versuch versuchnr versuchsnr versuchsnummer retry wiederholung"),
    /** When the tightening ended or was recorded. */
    TIME(
            "recorded recordedat recordingtime timestamp zeitstempel date datum datetime dateandtime dateandtimeofday datumzeit"
                    + " datumuhrzeit datumunduhrzeit zeitpunkt aufgezeichnet aufgenommenam aufnahmezeit finished endtime timestamplocal"),
    /** The supplier's heat or batch mark. */
    BOLT_LOT(
            "boltlot lot lotno lotnumber batch batchno batchnumber charge chargennr chargennummer schraubencharge heat los");

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
