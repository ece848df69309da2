package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A statement of many values names each of them, so that none can land in the column next to its own. */
class SqlWallsTest {

    @Test
    void no_store_has_more_than_seven_values_in_a_row_without_a_name() throws IOException {
        SqlWalls walls = SqlWalls.under(Path.of("src", "main", "java"));
        assertThat(walls.stores()).isGreaterThan(40);
        assertThat(walls.found()).isEmpty();
    }

    @Test
    void eight_in_a_row_are_found_out_over_two_lines_too_and_seven_are_not() throws IOException {
        Path fixture = Path.of("src", "test", "java", "org", "proviso", "architecture", "fixture", "walls");
        assertThat(SqlWalls.under(fixture).found()).containsExactly("WallStore.java has 8 question marks in a row");
    }
}
