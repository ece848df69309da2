package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.proviso.core.Code;
import org.proviso.core.act.Refusal;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;

/** Walks every act with every role through the service's door, against the table written out here. */
class PermissionMatrixTest {

    private static final String TABLE = """
            act                   | intake | reviewer | decider | secretary | release_team | supervisor | administrator | observer | public
            receive_bags          | x      | x        |         |           |              | x          |               |          |
            key_envelopes         | x      | x        |         |           |              | x          |               |          |
            record_cure_evidence  | x      | x        |         |           |              | x          |               |          |
            print_cure_letters    | x      | x        |         |           |              | x          |               |          |
            confirm_link          |        | x        |         |           |              | x          |               |          |
            answer_questions      |        | x        |         |           |              | x          |               |          |
            search                |        | x        |         |           |              | x          |               |          |
            propose               |        | x        |         |           |              | x          |               |          |
            tell_mail_desk        |        | x        |         |           |              | x          |               |          |
            second_review         |        | x        |         |           |              | x          |               |          |
            write_notes           |        | x        | x       |           |              | x          |               |          |
            see_whole_case        |        |          | x       |           |              |            |               |          |
            pull_out              |        |          | x       |           |              |            |               |          |
            vote                  |        |          | x       |           |              |            |               |          |
            decide                |        |          | x       |           |              |            |               |          |
            keep_record           |        |          | x       | x         |              |            |               |          |
            follow_up             |        |          | x       |           |              | x          |               |          |
            see_release           |        |          |         |           | x            | x          |               |          |
            open_envelopes        |        |          |         |           | x            |            |               |          |
            remake_ballots        |        |          |         |           | x            |            |               |          |
            hand_off              |        |          |         |           | x            |            |               |          |
            load_files            |        |          |         |           |              | x          |               |          |
            set_gates             |        |          |         |           |              | x          |               |          |
            record_orders         |        |          |         |           |              | x          |               |          |
            sign_rulings          |        |          |         |           |              | x          |               |          |
            reopen_ended          |        |          | x       |           |              | x          |               |          |
            release_cases         |        |          |         |           |              | x          |               |          |
            put_rules_in_force    |        |          |         |           |              | x          |               |          |
            print_outcome_letters |        |          |         |           |              | x          |               |          |
            close_election        |        |          |         |           |              | x          |               |          |
            manage_users          |        |          |         |           |              |            | x             |          |
            read_figures          | x      | x        | x       | x         | x            | x          | x             | x        |
            read_ledger           | x      | x        | x       | x         | x            | x          | x             | x        |
            read_redacted_cases   | x      | x        | x       | x         | x            | x          | x             | x        |
            look_up_own_envelope  |        |          |         |           |              |            |               |          | x
            """;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnADatabase
    void each_act_is_open_to_exactly_the_roles_of_the_table(TestOffice office) {
        List<String[]> rows = TABLE.lines().map(PermissionMatrixTest::cells).toList();
        List<Role> roles = Arrays.stream(rows.get(0))
                .skip(1)
                .map(PermissionMatrixTest::role)
                .toList();
        assertThat(roles).containsExactly(Role.values());
        assertThat(rows).hasSize(Permission.values().length + 1);
        roles.stream().filter(role -> role != Role.PUBLIC).forEach(role -> Staff.hire(office, role.code(), role));
        int asked = 0;
        List<String> wrong = new ArrayList<>();
        for (String[] row : rows.subList(1, rows.size())) {
            Permission act = Permission.valueOf(row[0].toUpperCase(java.util.Locale.ROOT));
            for (Role role : roles) {
                boolean expected = row[1 + role.ordinal()].equals("x");
                asked++;
                if (isOpen(office, act, role) != expected) {
                    wrong.add(role + " " + act);
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(asked).isEqualTo(Permission.values().length * Role.values().length);
    }

    private static boolean isOpen(TestOffice office, Permission act, Role role) {
        Staff.signOut();
        if (role != Role.PUBLIC) {
            Staff.signIn(role.code());
        }
        AccessService access = office.the(AccessService.class);
        boolean open;
        try {
            access.demand(act);
            open = true;
        } catch (NotPermittedException refused) {
            open = false;
        }
        assertThat(access.isPermitted(act))
                .as(role + " " + act + ", as a page asks")
                .isEqualTo(open);
        return open;
    }

    @Test
    void an_administrator_has_no_part_in_any_case() {
        for (Role role : Role.values()) {
            Set<Role> both = Set.of(Role.ADMINISTRATOR, role == Role.ADMINISTRATOR ? Role.OBSERVER : role);
            if (role.isCasework()) {
                assertThat(RoleRules.broken(both))
                        .get()
                        .extracting(Refusal::why)
                        .isEqualTo(Refusal.Why.ROLES_NOT_TOGETHER);
            }
        }
        assertThat(RoleRules.broken(Set.of(Role.ADMINISTRATOR, Role.OBSERVER))).isEmpty();
        assertThat(RoleRules.broken(Set.of(Role.INTAKE, Role.REVIEWER, Role.SUPERVISOR)))
                .isEmpty();
        assertThat(RoleRules.broken(Set.of(Role.SECRETARY, Role.REVIEWER))).isEmpty();
        assertThat(RoleRules.broken(Set.of(Role.SECRETARY, Role.DECIDER)))
                .as("whoever keeps the record has no vote")
                .get()
                .extracting(Refusal::why)
                .isEqualTo(Refusal.Why.ROLES_NOT_TOGETHER);
        assertThat(RoleRules.broken(Set.of(Role.PUBLIC)))
                .get()
                .extracting(Refusal::field)
                .isEqualTo("roles");
    }

    private static String[] cells(String line) {
        return Arrays.stream((line + " ").split("\\|", -1)).map(String::strip).toArray(String[]::new);
    }

    private static Role role(String code) {
        return Code.find(Role.class, code).orElseThrow();
    }
}
