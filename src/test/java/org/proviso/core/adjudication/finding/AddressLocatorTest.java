package org.proviso.core.adjudication.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.Address;
import org.proviso.core.PrecinctId;
import org.proviso.core.StreetSegment;
import org.proviso.core.StreetSegment.Parity;
import org.proviso.core.adjudication.finding.LocatedAddress.Place;

/** A county with one street in Millbrook and one in Harrow that lies in two precincts. */
class AddressLocatorTest {

    private final AddressLocator locator = new AddressLocator(List.of(
            new StreetSegment(1, 99, Parity.BOTH, "Tamarack Dr", "Millbrook", "49871", "5", ""),
            new StreetSegment(1, 99, Parity.BOTH, "N Sorrel Ln", "Harrow", "49872", "6", "A"),
            new StreetSegment(1, 99, Parity.BOTH, "S Sorrel Ln", "Harrow", "49872", "7", "")));

    @Test
    void names_the_precinct_of_an_address_and_what_it_took_for_granted() {
        LocatedAddress exact = locate("17 Tamarack Dr", "Millbrook", "49871");
        assertThat(exact.place()).isEqualTo(Place.FOUND);
        assertThat(exact.parts()).containsExactly(new PrecinctId("5", ""));
        assertThat(exact.words()).isEqualTo("The street file places the address in precinct 5.");
        assertThat(locate("17 Tamarak Dr", "Millbrook", "").words())
                .isEqualTo("The street file places the address in precinct 5. The street name differs by one letter.");
    }

    @Test
    void names_every_precinct_an_address_may_lie_in() {
        LocatedAddress several = locate("17 Sorrel Ln", "Harrow", "");
        assertThat(several.place()).isEqualTo(Place.FOUND);
        assertThat(several.parts()).containsExactlyInAnyOrder(new PrecinctId("6", "A"), new PrecinctId("7", ""));
        assertThat(several.words())
                .startsWith("The street file does not say which of 2 precinct parts the address is in. ");
    }

    /** Only a city or a ZIP code that the county does not have puts a voter outside the county. */
    @ParameterizedTest
    @CsvSource({
        "Millbrook, '', IN_COUNTY_NOT_FOUND",
        "Farville, 49872, IN_COUNTY_NOT_FOUND",
        "'', '', IN_COUNTY_NOT_FOUND",
        "Farville, '', OUT_OF_COUNTY",
        "'', 10001, OUT_OF_COUNTY"
    })
    void puts_an_address_outside_the_county_only_by_its_city_or_zip(String city, String zip, Place place) {
        LocatedAddress located = locate("17 Elsewhere Rd", city, zip);
        assertThat(located.place()).isEqualTo(place);
        assertThat(located.parts()).isEmpty();
    }

    @Test
    void knows_an_affirmation_without_an_address() {
        assertThat(locate(" ", "Farville", "10001").place()).isEqualTo(Place.NO_ADDRESS);
    }

    @ParameterizedTest
    @CsvSource({
        "17 Tamarack Drive, true",
        "18 Tamarack Dr, false",
        "17 Sorrel Ln, false",
        "17 Tamarak Dr, false",
        "Tamarack Dr, false"
    })
    void takes_the_same_house_on_the_same_street_for_one_address_however_spelled(String line, boolean same) {
        assertThat(AddressLocator.same(line(line), line("17 Tamarack Dr"))).isEqualTo(same);
    }

    @Test
    void takes_no_two_addresses_without_a_house_number_for_one() {
        assertThat(AddressLocator.same(line("Tamarack Dr"), line("Tamarack Dr")))
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({"17 Tamarak Dr, true", "18 Tamarak Dr, false", "17 Sorrel Ln, false"})
    void knows_a_misspelled_street_with_the_same_house_number(String line, boolean slip) {
        assertThat(AddressLocator.differBySlip(line(line), line("17 Tamarack Dr")))
                .isEqualTo(slip);
    }

    private LocatedAddress locate(String line, String city, String zip) {
        return locator.locate(new Address(line, "", city, zip));
    }

    private static Address line(String line) {
        return new Address(line, "", "Millbrook", "49871");
    }
}
