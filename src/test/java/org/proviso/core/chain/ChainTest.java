package org.proviso.core.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChainTest {

    private final List<LedgerEntry> entries = new ArrayList<>(SmallChain.of(4).entries());

    @Test
    void follows_a_whole_chain_to_its_head() {
        ChainCheck check = new ChainCheck();
        assertThat(entries).allSatisfy(entry -> assertThat(check.next(entry)).isEmpty());
        assertThat(check.entries()).isEqualTo(4);
        assertThat(check.headHash()).isEqualTo(entries.get(3).hash());
    }

    @Test
    void begins_before_the_first_entry_with_zeros() {
        assertThat(new Chain().headHash()).isEqualTo("0".repeat(64));
        assertThat(entries.get(0).previousHash()).isEqualTo("0".repeat(64));
        assertThat(entries.get(1).previousHash()).isEqualTo(entries.get(0).hash());
        assertThat(new ChainCheck().entries()).isZero();
    }

    @Test
    void finds_a_changed_payload() {
        LedgerEntry was = entries.get(1);
        entries.set(1, with(was, Map.of("recommendation", "count"), was.previousHash(), was.hash()));
        assertThat(fault()).hasValue("entry 2 was changed: its hash does not match its content");
    }

    @Test
    void finds_a_changed_entry_whose_own_hash_was_made_to_fit() {
        LedgerEntry was = entries.get(1);
        LedgerEntry open = with(was, Map.of("recommendation", "count"), was.previousHash(), "");
        entries.set(1, with(was, Map.of("recommendation", "count"), was.previousHash(), open.computedHash()));
        assertThat(fault()).hasValue("entry 3 does not link to the entry before it");
    }

    @Test
    void finds_a_removed_a_swapped_and_a_doubled_entry() {
        LedgerEntry removed = entries.remove(1);
        assertThat(fault()).hasValue("entry 3 follows entry 1: an entry is missing, duplicated or out of order");
        entries.add(2, removed);
        assertThat(fault()).hasValue("entry 3 follows entry 1: an entry is missing, duplicated or out of order");
        entries.remove(removed);
        entries.add(1, removed);
        assertThat(fault()).isEmpty();
        entries.add(2, removed);
        assertThat(fault()).hasValue("entry 2 follows entry 2: an entry is missing, duplicated or out of order");
    }

    /** Nothing in the chain tells that it went on: only the head hash on minutes and reports does. */
    @Test
    void cannot_find_a_tail_that_was_cut_off_except_by_the_printed_head() {
        String printed = entries.get(3).hash();
        entries.remove(3);
        ChainCheck check = new ChainCheck();
        entries.forEach(entry -> assertThat(check.next(entry)).isEmpty());
        assertThat(check.headHash()).isNotEqualTo(printed);
    }

    @Test
    void hides_what_must_not_be_read_behind_a_salt() {
        assertThat(new Salt("s1").hash("V1"))
                .isNotEqualTo(new Salt("s2").hash("V1"))
                .hasSize(64);
        assertThat(new Salt("s1").hash("V1")).isEqualTo(new Salt("s1").hash("V1"));
    }

    /** FIPS 180-4 example values for the one-block message "abc" and the empty message. */
    @Test
    void hashes_as_the_standard_says() {
        assertThat(Sha256.of("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Sha256.of("")).isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void spells_one_value_in_one_way() {
        assertThat(CanonicalJson.of(Map.of("b", List.of(1, 2L, true), "a", Map.of(), "\u00e9", "x")))
                .isEqualTo("{\"a\":{},\"b\":[1,2,true],\"\u00e9\":\"x\"}");
        assertThat(CanonicalJson.of("\"\\\n\r\t\b\f\u0001\u001f/\u00e9"))
                .isEqualTo("\"\\\"\\\\\\n\\r\\t\\b\\f\\u0001\\u001f/\u00e9\"");
        assertThat(CanonicalJson.of(List.of())).isEqualTo("[]");
    }

    @Test
    void holds_no_other_kinds_of_values() {
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.of(List.of(1.5)));
    }

    @Test
    void writes_an_entry_on_one_line() {
        assertThat(entries.get(0).line())
                .startsWith(
                        "{\"act\":\"assessed\",\"actor\":\"clerk-1\",\"at\":\"2026-11-04T12:00:00-06:00\",\"hash\":\"")
                .endsWith("\"sequence\":1,\"subject\":\"E-1\"}")
                .doesNotContain("\n");
    }

    private Optional<String> fault() {
        ChainCheck check = new ChainCheck();
        return entries.stream().map(check::next).flatMap(Optional::stream).findFirst();
    }

    private static LedgerEntry with(LedgerEntry was, Map<String, Object> payload, String previous, String hash) {
        return new LedgerEntry(
                was.sequence(), was.at(), was.actor(), was.act(), was.subject(), payload, previous, hash);
    }
}
