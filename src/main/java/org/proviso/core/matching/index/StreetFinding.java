package org.proviso.core.matching.index;

import java.util.List;
import org.proviso.core.PrecinctId;

/**
 * Where the street list puts an address.
 *
 * @param parts the precinct parts the address may lie in: one when found, several when the list does not decide, none
 *     when it has no such address
 * @param knowsPlace whether the city or the ZIP written occurs in the county at all; false also when neither was written
 * @param note what was taken for granted, in words for the office; empty when nothing was
 */
public record StreetFinding(Result result, List<PrecinctId> parts, boolean knowsPlace, String note) {

    public StreetFinding {
        parts = List.copyOf(parts);
    }

    /** How sure the finding is. */
    public enum Result {
        /** The address as written is in the list. */
        EXACT,
        /** The address is in the list after one small correction, which has one answer only. */
        PRESUMED,
        /** The list has no such address. */
        NONE,
        /** The address may lie in several parts. */
        SEVERAL
    }
}
