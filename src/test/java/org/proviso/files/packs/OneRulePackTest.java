package org.proviso.files.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.files.InputException;

/** A pack made of one changed rule is read back as what was chosen. */
class OneRulePackTest {

    private static final LocalDate ELECTION = LocalDate.of(2026, 11, 3);

    private static String text(String key, String value, Reference reference) {
        return OneRulePack.text(
                "us-co",
                Rule.find(key).orElseThrow(),
                value,
                ELECTION,
                reference,
                Basis.READ,
                LocalDate.of(2026, 11, 4));
    }

    private static ResolvedRule read(String key, String value, Reference reference) {
        return PackResolver.resolve(RulePacks.read("made", text(key, value, reference)), ELECTION, List.of())
                .of(Rule.find(key).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mail.counted_list_to_desk | yes | yes",
                "mail.returned | gives_way | gives_way",
                "cure_ways.identification | in_person, mail | in_person, mail",
                "cure_ways.identification | [mail] | mail",
                "terms.envelope | Ballot: \"blue\" # envelope | Ballot: \"blue\" # envelope",
                "gate.open_after_all_others | no | no",
                "consequence.no_identification | reject | reject"
            })
    void each_kind_of_value_comes_back_as_it_was_chosen(String key, String value, String spelled) {
        assertThat(read(key, value, new Reference("Code", "6.2", 2026)).value().spelled())
                .isEqualTo(spelled);
    }

    @Test
    void the_reference_is_kept_whatever_it_is_called() {
        Reference strange = new Reference("Code: \"Elections\" {a} \\ #1", "", 2026);
        ResolvedRule rule = read("mail.returned", "gives_way", strange);
        assertThat(rule.reference()).isEqualTo(strange);
        assertThat(rule.basis()).isEqualTo(Basis.READ);
    }

    @Test
    void what_no_rule_takes_is_refused_by_the_reader() {
        assertThatThrownBy(() -> read("mail.returned", "friends", new Reference("Code", "", 2026)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("friends");
        assertThatThrownBy(() -> read("mail.returned", "gives_way\nreasons: {}", new Reference("Code", "", 2026)))
                .as("nobody writes another key into the pack")
                .isInstanceOf(InputException.class);
    }
}
