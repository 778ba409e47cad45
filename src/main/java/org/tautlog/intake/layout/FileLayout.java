package org.tautlog.intake.layout;

import java.util.List;
import java.util.Map;
import org.tautlog.intake.text.NumberForm;

/**
 * How one file lies, with nothing left open: what its layout states, completed by what the file shows.
 *
 * @param stated what the layout states
 * @param shape how traces lie
 * @param delimiter the character between cells
 * @param numbers how numbers are written
 * @param header the cells of the table's header
 * @param headerLine 1-based line of the header
 * @param unitsLine 1-based line of a row of units under the header; 0 where there is none
 * @param samples where each quantity of the samples comes from; always angle and torque
 * @param identityColumns 0-based columns of identity fields
 * @param keyColumns 0-based columns that change where a long table's next trace begins
 * @param timeOfDayColumn 0-based column of the time of day where the identity's time column holds only the day; else -1
 * @param listSeparator what stands between values of a list cell
 */
public record FileLayout(
        LogLayout stated,
        LogShape shape,
        char delimiter,
        NumberForm numbers,
        List<String> header,
        int headerLine,
        int unitsLine,
        Map<SampleQuantity, SampleColumn> samples,
        Map<IdentityField, Integer> identityColumns,
        List<Integer> keyColumns,
        int timeOfDayColumn,
        char listSeparator) {
    public FileLayout {
        header = List.copyOf(header);
        samples = Map.copyOf(samples);
        identityColumns = Map.copyOf(identityColumns);
        keyColumns = List.copyOf(keyColumns);
    }

    /**
     * The same layout under another statement of the plant.
     *
     * @param other what is stated
     * @return the changed layout
     */
    public FileLayout stating(LogLayout other) {
        return new FileLayout(
                other,
                shape,
                delimiter,
                numbers,
                header,
                headerLine,
                unitsLine,
                samples,
                identityColumns,
                keyColumns,
                timeOfDayColumn,
                listSeparator);
    }
}
