package org.proviso.core.matching.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class AddressNormalizerTest {

    @ParameterizedTest
    @CsvSource({
        "1204 N. Quarry Street Apt 3, 1204, '', N QUARRY ST, APT 3",
        "'88-B Sorrel Lane #3', 88, B, SORREL LN, # 3",
        "88b sorrel ln, 88, B, SORREL LN, ''",
        "'1204 1/2 North Quarry St., Apartment 3-B', 1204, 1/2, N QUARRY ST, APT 3-B",
        "17 Saint Brendan Rd, 17, '', ST BRENDAN RD, ''",
        "4 Fifth Ave, 4, '', 5TH AVE, ''",
        "5th Ave, 0, '', 5TH AVE, ''",
        "300 Avenue B, 300, '', AVE B, ''",
        "12 Highway 61, 12, '', HWY 61, ''",
        "12 County Road 9, 12, '', COUNTY RD 9, ''",
        "88 Sorrel Ln 3, 88, '', SORREL LN, # 3",
        "9 Front St, 9, '', FRONT ST, ''",
        "9 Front St Rear, 9, '', FRONT ST, REAR",
        "22 Lower Ferry Road, 22, '', LOWER FERRY RD, ''",
        "7 North St, 7, '', NORTH ST, ''",
        "7 Foster-Hill Ct NW, 7, '', FOSTER HILL CT NW, ''",
        "'', 0, '', '', ''"
    })
    void an_address_line_is_taken_apart(String line, int house, String letter, String street, String unit) {
        assertThat(AddressNormalizer.parse(line, "")).isEqualTo(new StreetAddress(house, letter, street, unit));
    }

    @Test
    void a_unit_box_goes_before_the_unit_in_the_line() {
        assertThat(AddressNormalizer.parse("88 Sorrel Ln", "Apt. 3").unit()).isEqualTo("APT 3");
        assertThat(AddressNormalizer.parse("88 Sorrel Ln Apt 4", "3").unit()).isEqualTo("# 3");
        assertThat(AddressNormalizer.parse("88 Sorrel Ln", "#3").door()).isEqualTo("3");
        assertThat(AddressNormalizer.parse("88-B Sorrel Ln", "").door()).isEqualTo("B");
    }

    @Property
    void taking_a_line_apart_twice_changes_nothing(
            @ForAll @IntRange(min = 1, max = 99_999) int house,
            @ForAll("streets") String street,
            @ForAll("units") String unit) {
        StreetAddress once = AddressNormalizer.parse(house + " Quarry " + street + " " + unit, "");
        assertThat(once.houseNumber()).isEqualTo(house);
        assertThat(AddressNormalizer.parse(standardLine(once), "")).isEqualTo(once);
    }

    /** The line of an address in its standard spelling. */
    public static String standardLine(StreetAddress address) {
        String gap = address.houseLetter().contains("/") ? " " : "";
        String number = address.houseNumber() == 0 ? "" : address.houseNumber() + gap + address.houseLetter();
        return (number + " " + address.street() + " " + address.unit()).strip();
    }

    @Property
    void any_text_gives_an_address_and_no_error(@ForAll String line, @ForAll String unit) {
        assertThat(AddressNormalizer.parse(line, unit)).isNotNull();
    }

    @Property
    void a_street_made_of_postal_words_keeps_its_spelling(@ForAll("streets") String street) {
        String once = AddressNormalizer.street(street);
        assertThat(AddressNormalizer.street(once)).isEqualTo(once);
    }

    @Provide
    Arbitrary<String> units() {
        return Arbitraries.of("", "Apt 3", "#3", "# B", "Unit 12-C", "Rear", "Ste. 4 B", "Lot 9");
    }

    @Provide
    Arbitrary<String> streets() {
        return Arbitraries.of(
                        "NORTH", "N", "STREET", "AVE", "AVENUE", "ST", "SAINT", "MOUNT", "FORT", "HILL", "PARK",
                        "QUARRY", "FIRST", "B", "9", "KEY", "LOT", "FRONT", "NW")
                .list()
                .ofMaxSize(5)
                .map(words -> String.join(" ", words));
    }
}
