package org.proviso.core.matching.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.proviso.core.matching.MessyElection;
import org.proviso.core.matching.spelling.IntColumn;

/** What is laid quickly for voters of one surname is what the blocks ask for. */
class InvertedListsTest {

    private static final int VOTERS = 3_000;

    @Test
    void every_voter_stands_on_the_lists_that_its_fields_name() throws IOException {
        RollIndexBuilder builder = RollIndex.builder();
        new MessyElection(41, VOTERS, 10).roll.forEach(person -> builder.add(person.entry()));
        RollIndex index = builder.build();
        VoterKeys keys = new VoterKeys(index.columns(), index.words());
        int laid = 0;
        for (BlockingKey block : BlockingKey.values()) {
            ListNumbering slots = index.lists().slots(block);
            for (int voter = 0; voter < index.size(); voter++) {
                IntColumn quick = new IntColumn();
                IntColumn asked = new IntColumn();
                keys.lists(voter, block, slots, quick);
                block.lists(keys.of(voter, block), slots, asked);
                assertThat(numbers(quick))
                        .as(block + " of " + index.voterId(voter))
                        .isEqualTo(numbers(asked));
                laid += asked.size();
            }
        }
        assertThat(laid).isGreaterThan(10 * VOTERS);
    }

    private static String numbers(IntColumn column) {
        StringBuilder numbers = new StringBuilder();
        for (int i = 0; i < column.size(); i++) {
            numbers.append(column.get(i)).append(' ');
        }
        return numbers.toString();
    }
}
