package org.proviso.core.adjudication.finding;

import java.util.List;
import org.proviso.core.Address;
import org.proviso.core.PrecinctId;
import org.proviso.core.StreetSegment;
import org.proviso.core.matching.index.StreetFinding;
import org.proviso.core.matching.index.StreetIndex;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.StreetAddress;

/** What the county's street file says of an address, in the words of the office. Thread-safe. */
public final class AddressLocator {

    private final StreetIndex streets;

    public AddressLocator(List<StreetSegment> segments) {
        this.streets = new StreetIndex(segments);
    }

    /** The precinct parts an address may lie in; {@link Records#locate}. */
    public LocatedAddress locate(Address address) {
        if (address.isBlank()) {
            return new LocatedAddress(LocatedAddress.Place.NO_ADDRESS, List.of(), "The affirmation gives no address.");
        }
        StreetFinding finding = streets.find(address);
        List<PrecinctId> found = finding.parts();
        return switch (finding.result()) {
            case EXACT, PRESUMED ->
                found(
                        found,
                        "The street file places the address in " + found.get(0).words() + ". ",
                        finding);
            case SEVERAL ->
                found(
                        found,
                        "The street file does not say which of " + found.size() + " precinct parts the address is in. ",
                        finding);
            case NONE -> nowhere(address, finding);
        };
    }

    private static LocatedAddress found(List<PrecinctId> parts, String words, StreetFinding finding) {
        return new LocatedAddress(LocatedAddress.Place.FOUND, parts, (words + finding.note()).strip());
    }

    private static LocatedAddress nowhere(Address address, StreetFinding finding) {
        boolean placeGiven = !address.city().isBlank() || !address.zip().isBlank();
        return finding.knowsPlace() || !placeGiven
                ? new LocatedAddress(
                        LocatedAddress.Place.IN_COUNTY_NOT_FOUND,
                        List.of(),
                        ("The street file does not have this address. " + finding.note()).strip())
                : new LocatedAddress(
                        LocatedAddress.Place.OUT_OF_COUNTY,
                        List.of(),
                        "The county's street file has neither the city nor the ZIP code of this address.");
    }

    /** The same house number and street; {@link Records#sameAddress}. */
    public static boolean same(Address address, Address other) {
        StreetAddress a = AddressNormalizer.parse(address);
        StreetAddress b = AddressNormalizer.parse(other);
        return a.houseNumber() != 0
                && a.houseNumber() == b.houseNumber()
                && a.street().equals(b.street());
    }

    /** The same house, a street one spelling error away; {@link Records#differsByASlip}. */
    public static boolean differBySlip(Address written, Address other) {
        return AddressNormalizer.parse(written).isOneSlipFrom(AddressNormalizer.parse(other));
    }
}
