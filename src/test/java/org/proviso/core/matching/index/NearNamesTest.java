package org.proviso.core.matching.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.proviso.core.matching.spelling.EditDistance;
import org.proviso.core.matching.spelling.IntColumn;

class NearNamesTest {

    @Test
    void a_letter_left_out_put_in_changed_or_exchanged() {
        TextDictionary names =
                dictionary(List.of("FISCHER", "FISHER", "FISCHERS", "FIXCHER", "FICSHER", "MISCHEL", "FISK"));
        assertThat(found(names, "FISCHER")).containsExactlyInAnyOrder("FISHER", "FISCHERS", "FIXCHER", "FICSHER");
    }

    /** Short names are left out; of the others exactly those one slip away are found. */
    @Property(tries = 300)
    void what_is_found_is_what_lies_one_slip_away(
            @ForAll @Size(max = 12) List<@CharRange(from = 'A', to = 'C') @StringLength(min = 4, max = 6) String> all,
            @ForAll @CharRange(from = 'A', to = 'C') @StringLength(min = 4, max = 6) String name) {
        Set<String> near = new TreeSet<>();
        for (String other : all) {
            if (EditDistance.optimalStringAlignment(name, other) == 1) {
                near.add(other);
            }
        }
        assertThat(found(dictionary(all), name)).isEqualTo(near);
    }

    private static TextDictionary dictionary(List<String> all) {
        TextDictionary names = new TextDictionary();
        all.forEach(names::add);
        return names;
    }

    private static Set<String> found(TextDictionary names, String name) {
        IntColumn codes = new IntColumn();
        new NearNames(names).find(name, codes);
        Set<String> found = new TreeSet<>();
        for (int i = 0; i < codes.size(); i++) {
            found.add(names.text(codes.get(i)));
        }
        return found;
    }
}
