package org.proviso.access;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Accounts and their roles: an administrator's work, and everybody's own password. Each change is recorded in the
 * office's chain under the pseudonym of the person concerned. A change that comes with an old version of the account
 * is refused with {@link org.springframework.dao.OptimisticLockingFailureException}.
 */
@Service
@Validated
public class UserService {

    private final UserStore users;
    private final AccessService access;
    private final LedgerService ledger;
    private final Passwords passwords;
    private final AccountOpening accounts;

    UserService(
            UserStore users, AccessService access, LedgerService ledger, Passwords passwords, AccountOpening accounts) {
        this.users = users;
        this.access = access;
        this.ledger = ledger;
        this.passwords = passwords;
        this.accounts = accounts;
    }

    @Transactional(readOnly = true)
    public List<OfficeUser> all() {
        access.demand(Permission.MANAGE_USERS);
        return users.all();
    }

    /** Makes the account and returns its one-time password, which is kept nowhere in the clear. */
    @Transactional
    public String create(@Valid CreateUser command) {
        OfficeUser administrator = access.demand(Permission.MANAGE_USERS);
        RoleRules.check(command.roles());
        String oneTime = passwords.oneTime();
        accounts.open(command, oneTime, administrator.actor());
        return oneTime;
    }

    @Transactional
    public void changeRoles(UserName userName, int version, Set<Role> roles) {
        OfficeUser administrator = access.demand(Permission.MANAGE_USERS);
        RoleRules.check(roles);
        OfficeUser user = known(userName);
        users.changeRoles(userName, version, roles);
        oneAdministratorStays();
        accounts.record(administrator.actor(), "roles_changed", user.actor(), roles);
    }

    /** Closes an account or opens it again; what its holder did stays theirs. */
    @Transactional
    public void enable(UserName userName, int version, boolean enabled) {
        OfficeUser administrator = access.demand(Permission.MANAGE_USERS);
        OfficeUser user = known(userName);
        users.enable(userName, version, enabled);
        oneAdministratorStays();
        accounts.record(
                administrator.actor(), enabled ? "account_opened_again" : "account_closed", user.actor(), user.roles());
    }

    /** Gives a new one-time password for one that was lost. */
    @Transactional
    public String resetPassword(UserName userName) {
        OfficeUser administrator = access.demand(Permission.MANAGE_USERS);
        OfficeUser user = known(userName);
        String oneTime = passwords.oneTime();
        users.changePassword(userName, passwords.hash(oneTime), true);
        accounts.record(administrator.actor(), "password_reset", user.actor(), user.roles());
        return oneTime;
    }

    /** Changes the password of whoever is signed in; it is the only act open to the holder of a one-time password. */
    @Transactional
    public void changeOwnPassword(String old, String chosen) {
        OfficeUser user = access.demandSignedIn();
        passwords.checkChange(old, chosen, users.passwordHash(user.userName()));
        users.changePassword(user.userName(), passwords.hash(chosen), false);
        ledger.record(
                LedgerChain.OFFICE,
                user.actor(),
                "password_changed",
                user.actor().pseudonym(),
                Map.of());
    }

    private OfficeUser known(UserName userName) {
        return users.find(userName).orElseThrow(() -> new UserRuleException("There is no account " + userName + "."));
    }

    private void oneAdministratorStays() {
        if (users.all().stream().noneMatch(user -> user.enabled() && user.has(Role.ADMINISTRATOR))) {
            throw new UserRuleException("The office needs at least one administrator.");
        }
    }
}
