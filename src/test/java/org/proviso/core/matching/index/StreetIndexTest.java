package org.proviso.core.matching.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.PrecinctId;
import org.proviso.core.StreetSegment;
import org.proviso.core.StreetSegment.Parity;
import org.proviso.core.matching.index.StreetFinding.Result;

class StreetIndexTest {

    private final StreetIndex streets = new StreetIndex(List.of(
            segment(1, 99, Parity.ODD, "N Quarry St", "Millbrook", "49871", "P1", "A"),
            segment(2, 98, Parity.EVEN, "N Quarry St", "Millbrook", "49871", "P1", "B"),
            segment(1, 99, Parity.BOTH, "S Quarry St", "Millbrook", "49871", "P2", ""),
            segment(1, 99, Parity.BOTH, "Sorrel Ln", "Millbrook", "49871", "P3", ""),
            segment(1, 99, Parity.BOTH, "Sorrel Ln", "Harrow", "49872", "P4", ""),
            segment(1, 50, Parity.BOTH, "15th Ave", "Harrow", "49872", "P4", ""),
            segment(1, 50, Parity.BOTH, "Tamarack Dr", "Harrow", "49872", "P5", "")));

    @Test
    void the_side_of_the_street_decides_the_split() {
        assertThat(find("17 North Quarry Street", "Millbrook", "").parts()).containsExactly(new PrecinctId("P1", "A"));
        assertThat(find("18 North Quarry Street", "Millbrook", "").parts()).containsExactly(new PrecinctId("P1", "B"));
        assertThat(find("17 North Quarry Street", "", "").result()).isEqualTo(Result.EXACT);
    }

    @Test
    void a_number_beyond_the_street_is_not_found() {
        assertThat(find("117 N Quarry St", "Millbrook", "49871").result()).isEqualTo(Result.NONE);
    }

    @Test
    void city_or_zip_tells_two_streets_of_one_name_apart() {
        assertThat(find("5 Sorrel Lane", "", "").result()).isEqualTo(Result.SEVERAL);
        assertThat(find("5 Sorrel Lane", "Harrow", "").parts()).containsExactly(new PrecinctId("P4", ""));
        assertThat(find("5 Sorrel Lane", "", "49871-1234").parts()).containsExactly(new PrecinctId("P3", ""));
    }

    @Test
    void a_missing_directional_is_presumed_only_when_the_answer_is_unique() {
        assertThat(find("17 Quarry St", "Millbrook", "").result()).isEqualTo(Result.SEVERAL);
        assertThat(find("17 Tamarack", "Harrow", "").result()).isEqualTo(Result.PRESUMED);
        assertThat(find("17 W Tamarack Ct", "Harrow", "").parts()).containsExactly(new PrecinctId("P5", ""));
    }

    @Test
    void one_slip_of_spelling_is_presumed_but_not_in_a_numbered_street() {
        assertThat(find("17 Tamarak Dr", "Harrow", "").result()).isEqualTo(Result.PRESUMED);
        assertThat(find("17 16th Ave", "Harrow", "").result()).isEqualTo(Result.NONE);
    }

    @Test
    void an_address_under_another_city_is_presumed() {
        StreetFinding finding = find("17 Tamarack Dr", "Millbrook", "");
        assertThat(finding.result()).isEqualTo(Result.PRESUMED);
        assertThat(finding.knowsPlace()).isTrue();
    }

    @Test
    void a_place_outside_the_county_is_not_known() {
        assertThat(find("17 Elsewhere Rd", "Farville", "10001").knowsPlace()).isFalse();
        assertThat(find("17 Elsewhere Rd", "", "").knowsPlace()).isFalse();
        assertThat(find("", "Harrow", "").knowsPlace()).isTrue();
    }

    private StreetFinding find(String line, String city, String zip) {
        return streets.find(new Address(line, "", city, zip));
    }

    private static StreetSegment segment(
            int low, int high, Parity parity, String street, String city, String zip, String precinct, String split) {
        return new StreetSegment(low, high, parity, street, city, zip, precinct, split);
    }
}
