package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What a column holds is read in one way by all stores, so that an empty text or a code means the same in each. */
class RowHelpersTest {

    @Test
    void no_store_reads_a_column_in_a_way_of_its_own() throws IOException {
        RowHelpers helpers = RowHelpers.under(Path.of("src", "main", "java"));
        assertThat(helpers.stores()).isGreaterThan(40);
        assertThat(helpers.found()).isEmpty();
    }

    @Test
    void a_text_a_moment_and_a_code_are_found_out_and_what_is_made_of_several_columns_is_not() throws IOException {
        Path fixture = Path.of("src", "test", "java", "org", "proviso", "architecture", "fixture", "rows");
        assertThat(RowHelpers.under(fixture).found())
                .containsExactly(
                        "DrawerStore.java reads a column in its own way: text",
                        "DrawerStore.java reads a column in its own way: instant",
                        "DrawerStore.java reads a column in its own way: code");
    }
}
