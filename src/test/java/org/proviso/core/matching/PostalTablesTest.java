package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.AddressNormalizerTest;
import org.proviso.core.matching.spelling.StreetAddress;

/** Source: USPS Publication 28, Postal Addressing Standards, appendixes C1 and C2, section 233. */
class PostalTablesTest {

    @Test
    void every_suffix_variant_normalizes_to_its_standard_abbreviation() throws IOException {
        for (Map<String, String> row : ReferenceRows.of("data/usps/pub28-c1-street-suffixes.csv")) {
            String expected = "QUARRY " + row.get("standard_abbreviation");
            for (String word :
                    new String[] {row.get("primary_suffix"), row.get("common_variant"), row.get("standard_abbreviation")
                    }) {
                String once = AddressNormalizer.street("Quarry " + word);
                assertThat(once).as(word).isEqualTo(expected);
                assertThat(AddressNormalizer.street(once)).as(word).isEqualTo(once);
            }
        }
    }

    @Test
    void every_secondary_unit_normalizes_to_its_standard_abbreviation() throws IOException {
        for (Map<String, String> row : ReferenceRows.of("data/usps/pub28-c2-secondary-units.csv")) {
            String number = row.get("needs_a_number").equals("yes") ? " 3" : "";
            for (String word : new String[] {row.get("designator"), row.get("abbreviation")}) {
                StreetAddress once = AddressNormalizer.parse("1204 Quarry Street " + word + number, "");
                assertThat(once.unit()).as(word).isEqualTo(row.get("abbreviation") + number);
                assertThat(once.street()).as(word).isEqualTo("QUARRY ST");
                assertThat(AddressNormalizer.parse(AddressNormalizerTest.standardLine(once), ""))
                        .isEqualTo(once);
            }
        }
    }

    @Test
    void every_directional_normalizes_to_its_abbreviation_before_and_after_the_name() throws IOException {
        for (Map<String, String> row : ReferenceRows.of("data/usps/pub28-directionals.csv")) {
            String way = row.get("directional");
            String abbreviation = row.get("abbreviation");
            assertThat(AddressNormalizer.street(way + " Quarry St")).isEqualTo(abbreviation + " QUARRY ST");
            assertThat(AddressNormalizer.street("Quarry St " + way)).isEqualTo("QUARRY ST " + abbreviation);
            assertThat(AddressNormalizer.street(way + " St")).isEqualTo(way + " ST");
        }
    }
}
