package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import jakarta.validation.ConstraintViolationException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.dao.OptimisticLockingFailureException;

/** Accounts are made, changed and closed by an administrator, and each change is in the ledger without a name. */
class UserServiceTest {

    private static final CreateUser ADA = new CreateUser("ada", "Ada Lovering", "Lakes", Set.of(Role.REVIEWER));

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static UserService asRoot(TestOffice office) {
        Staff.hire(office, "root", Role.ADMINISTRATOR);
        Staff.signIn("root");
        return office.the(UserService.class);
    }

    @OnBothDatabases
    void a_person_has_another_name_or_party_from_now_on_and_the_ledger_says_which_without_it(TestOffice office) {
        UserService users = asRoot(office);
        accepted(users.create(ADA));
        OfficeUser before = user(users, "ada");
        assertThat(refused(users.changePerson(new ChangePerson("ada", before.version(), "Ada Lovering ", "Lakes")))
                        .why())
                .isEqualTo(Why.NOTHING_NEW);
        OfficeUser now = accepted(users.changePerson(new ChangePerson("ada", before.version(), "Ada Quist", "Lakes")));
        assertThat(now.fullName()).isEqualTo("Ada Quist");
        assertThat(now.actor()).as("the ledger knows the same person").isEqualTo(before.actor());
        assertThat(now.roles()).isEqualTo(before.roles());
        accepted(users.changePerson(new ChangePerson("ada", now.version(), "Ada Quist", "Plains")));
        assertThat(user(users, "ada").party()).isEqualTo("Plains");
        assertThatThrownBy(() -> users.changePerson(new ChangePerson("ada", before.version(), "Ada Roe", "Lakes")))
                .as("from a stale page")
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThatThrownBy(() -> users.changePerson(new ChangePerson("ada", now.version() + 1, " ", "Lakes")))
                .isInstanceOf(ConstraintViolationException.class);
        List<LedgerEntry> entries = office.the(LedgerService.class).read(LedgerChain.OFFICE, 0, 100).stream()
                .filter(entry -> entry.act().equals("person_changed"))
                .toList();
        assertThat(entries)
                .extracting(LedgerEntry::payload)
                .containsExactly(Map.of("changed", List.of("name")), Map.of("changed", List.of("party")));
        assertThat(entries).allSatisfy(entry -> assertThat(entry.line()).doesNotContain("Quist", "Plains"));
        Staff.signIn("ada");
        assertThatThrownBy(() -> users.changePerson(new ChangePerson("ada", 2, "Ada Roe", "")))
                .isInstanceOf(NotPermittedException.class);
    }

    private static OfficeUser user(UserService users, String userName) {
        return users.all().stream()
                .filter(one -> one.userName().value().equals(userName))
                .findFirst()
                .orElseThrow();
    }

    @OnBothDatabases
    void a_new_account_can_do_nothing_before_its_one_time_password_is_changed(TestOffice office) {
        UserService users = asRoot(office);
        String oneTime = accepted(users.create(ADA));
        assertThat(oneTime).matches("([2-9A-Z]{4}-){3}[2-9A-Z]{4}");
        Staff.signIn("ada");
        AccessService access = office.the(AccessService.class);
        assertThatThrownBy(() -> access.demand(Permission.PROPOSE)).hasMessage("Change your one-time password first.");
        assertThat(access.isPermitted(Permission.PROPOSE)).isFalse();
        assertThat(refused(users.changeOwnPassword("guessed", "a longer secret")))
                .returns(Why.PASSWORD_NOT_GOOD, Refusal::why)
                .returns("old", Refusal::field);
        assertThat(refused(users.changeOwnPassword(oneTime, "short")).words()).contains("at least 12");
        assertThat(refused(users.changeOwnPassword(oneTime, "ü".repeat(37))).words())
                .contains("72 bytes");
        assertThat(refused(users.changeOwnPassword(oneTime, oneTime)))
                .returns(Why.PASSWORD_NOT_GOOD, Refusal::why)
                .returns("chosen", Refusal::field);
        accepted(users.changeOwnPassword(oneTime, "a longer secret"));
        assertThat(access.demand(Permission.PROPOSE).fullName()).isEqualTo("Ada Lovering");
    }

    @OnBothDatabases
    void the_ledger_knows_people_by_pseudonym_only(TestOffice office) {
        UserService users = asRoot(office);
        users.create(ADA);
        OfficeUser ada = users.all().get(0);
        users.changeRoles(new UserName("ada"), ada.version(), Set.of(Role.DECIDER));
        List<LedgerEntry> entries = office.the(LedgerService.class).read(LedgerChain.OFFICE, 0, 10);
        assertThat(entries).extracting(LedgerEntry::act).containsExactly("account_opened", "roles_changed");
        assertThat(entries)
                .extracting(LedgerEntry::subject)
                .containsOnly(ada.actor().pseudonym());
        assertThat(entries.get(1).payload().get("roles")).isEqualTo(List.of("decider"));
        assertThat(entries).allSatisfy(entry -> assertThat(entry.line()).doesNotContainIgnoringCase("lovering"));
        assertThat(office.jdbc()
                        .sql("select password_hash from office_user where user_name = 'ada'")
                        .query(String.class)
                        .single())
                .startsWith("$2a$");
    }

    @OnBothDatabases
    void a_role_taken_away_is_gone_at_once(TestOffice office) {
        UserService users = asRoot(office);
        Staff.hire(office, "ben", Role.REVIEWER);
        users.changeRoles(new UserName("ben"), 0, Set.of(Role.OBSERVER));
        Staff.signIn("ben");
        assertThatThrownBy(() -> office.the(AccessService.class).demand(Permission.PROPOSE))
                .hasMessage("Your role does not include proposing outcomes.");
        Staff.signIn("root");
        users.enable(new UserName("ben"), 1, false);
        Staff.signIn("ben");
        assertThatThrownBy(() -> office.the(AccessService.class).demand(Permission.READ_LEDGER))
                .hasMessage("This account cannot be used.");
    }

    @OnBothDatabases
    void a_change_of_an_account_that_changed_meanwhile_is_refused(TestOffice office) {
        UserService users = asRoot(office);
        Staff.hire(office, "ben", Role.REVIEWER);
        users.changeRoles(new UserName("ben"), 0, Set.of(Role.INTAKE));
        assertThatThrownBy(() -> users.changeRoles(new UserName("ben"), 0, Set.of(Role.DECIDER)))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(users.all().get(0).roles()).containsExactly(Role.INTAKE);
    }

    @OnBothDatabases
    void what_an_account_cannot_be_is_refused_and_leaves_nothing(TestOffice office) {
        UserService users = asRoot(office);
        assertThatThrownBy(() -> users.create(new CreateUser("Ada L", "Ada", "", Set.of(Role.INTAKE))))
                .isInstanceOf(ConstraintViolationException.class);
        assertThat(refused(users.create(new CreateUser("root", "Again", "", Set.of(Role.INTAKE)))))
                .returns(Why.NUMBER_TAKEN, Refusal::why)
                .returns("userName", Refusal::field);
        assertThat(refused(users.create(new CreateUser("both", "Both", "", Set.of(Role.ADMINISTRATOR, Role.REVIEWER)))))
                .returns(Why.ROLES_NOT_TOGETHER, Refusal::why)
                .returns("roles", Refusal::field);
        assertThat(refused(users.changeRoles(new UserName("root"), 0, Set.of(Role.ADMINISTRATOR, Role.REVIEWER)))
                        .why())
                .isEqualTo(Why.ROLES_NOT_TOGETHER);
        assertThat(refused(users.enable(new UserName("root"), 0, false)).why()).isEqualTo(Why.LAST_ADMINISTRATOR);
        assertThat(refused(users.changeRoles(new UserName("root"), 0, Set.of(Role.OBSERVER)))
                        .why())
                .isEqualTo(Why.LAST_ADMINISTRATOR);
        assertThatThrownBy(() -> users.enable(new UserName("root"), 1, false))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThatThrownBy(() -> users.resetPassword(new UserName("nobody")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(users.all()).hasSize(1).allMatch(OfficeUser::enabled);
        assertThat(office.the(LedgerService.class).verify(LedgerChain.OFFICE).entries())
                .isZero();
    }

    @OnBothDatabases
    void nobody_else_manages_users(TestOffice office) {
        Staff.hire(office, "boss", Role.SUPERVISOR);
        Staff.signIn("boss");
        UserService users = office.the(UserService.class);
        assertThatThrownBy(users::all).isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> users.create(ADA)).isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> users.changeRoles(new UserName("boss"), 0, Set.of(Role.ADMINISTRATOR)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> users.enable(new UserName("boss"), 0, true)).isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> users.resetPassword(new UserName("boss"))).isInstanceOf(NotPermittedException.class);
        Staff.signOut();
        assertThatThrownBy(() -> users.changeOwnPassword("", "a longer secret")).hasMessage("Sign in first.");
    }

    @OnBothDatabases
    void nobody_checks_their_own_act(TestOffice office) {
        Staff.hire(office, "ada", Role.REVIEWER, Role.SUPERVISOR);
        Staff.signIn("ada");
        AccessService access = office.the(AccessService.class);
        assertThatThrownBy(() -> access.demandSomebodyElse(
                        Permission.SECOND_REVIEW, List.of(new UserName("ben"), new UserName("ada"))))
                .hasMessageContaining("Somebody else has to do this");
        assertThat(access.demandSomebodyElse(Permission.SECOND_REVIEW, List.of(new UserName("ben")))
                        .userName()
                        .value())
                .isEqualTo("ada");
        assertThatThrownBy(() -> access.demandSomebodyElse(Permission.VOTE, List.of()))
                .isInstanceOf(NotPermittedException.class);
    }
}
