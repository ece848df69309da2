package org.proviso.access;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Accounts and their roles: an administrator's work, and everybody's own password. Each change is recorded in the
 * office's chain under the pseudonym of the person concerned. A change that comes with an old version of the account
 * is an {@link OptimisticLockingFailureException}.
 */
@Service
@Validated
public class UserService {

    private final UserStore users;
    private final AccessService access;
    private final ActDoor door;
    private final Passwords passwords;
    private final AccountOpening accounts;

    UserService(UserStore users, AccessService access, ActDoor door, Passwords passwords, AccountOpening accounts) {
        this.users = users;
        this.access = access;
        this.door = door;
        this.passwords = passwords;
        this.accounts = accounts;
    }

    private record NewAccount(OfficeUser user, String oneTimePassword) {}

    @Transactional(readOnly = true)
    public List<OfficeUser> all() {
        access.demand(Permission.MANAGE_USERS);
        return users.all();
    }

    /** Makes the account and gives its one-time password, which is kept nowhere in the clear. */
    @Transactional
    public ActResult<String> create(@Valid CreateUser command) {
        return door.demand(Permission.MANAGE_USERS)
                .lockNothing()
                .refuse(any -> RoleRules.broken(command.roles()))
                .refuse(any -> accounts.taken(command))
                .save(any -> {
                    String oneTime = passwords.oneTime();
                    return new NewAccount(accounts.open(command, oneTime), oneTime);
                })
                .record(made -> AccountOpening.line("account_opened", made.user(), command.roles()))
                .map(NewAccount::oneTimePassword);
    }

    /** Gives somebody these roles and no others; refused where no administrator would be left. */
    @Transactional
    public ActResult<OfficeUser> changeRoles(UserName userName, int version, Set<Role> roles) {
        return door.demand(Permission.MANAGE_USERS)
                .lock(() -> known(userName, version))
                .refuse(user -> RoleRules.broken(roles))
                .refuse(user -> nobodyLeft(user, user.enabled() && roles.contains(Role.ADMINISTRATOR)))
                .save(user -> {
                    users.changeRoles(userName, version, roles);
                    return known(userName);
                })
                .record(user -> AccountOpening.line("roles_changed", user, roles));
    }

    /** Gives a person the name and party they have now; the pseudonym and what they did stay. */
    @Transactional
    public ActResult<OfficeUser> changePerson(@Valid ChangePerson command) {
        UserName userName = new UserName(command.userName());
        return door.demand(Permission.MANAGE_USERS)
                .lock(() -> known(userName, command.version()))
                .refuse(user -> Refusal.when(
                        command.changed(user).isEmpty(),
                        Refusal.Why.NOTHING_NEW,
                        "Name and party are as they were. Change one of them, or cancel."))
                .save(user -> {
                    users.changePerson(
                            userName,
                            command.version(),
                            command.fullName().strip(),
                            command.party().strip());
                    return user;
                })
                .record(user -> LedgerLine.of(
                        LedgerChain.OFFICE,
                        "person_changed",
                        user.actor().pseudonym(),
                        Map.of("changed", command.changed(user))))
                .map(user -> known(userName));
    }

    /** Closes an account or opens it again; what its holder did stays theirs. */
    @Transactional
    public ActResult<OfficeUser> enable(UserName userName, int version, boolean enabled) {
        return door.demand(Permission.MANAGE_USERS)
                .lock(() -> known(userName, version))
                .refuse(user -> nobodyLeft(user, enabled && user.has(Role.ADMINISTRATOR)))
                .save(user -> {
                    users.enable(userName, version, enabled);
                    return known(userName);
                })
                .record(user ->
                        AccountOpening.line(enabled ? "account_opened_again" : "account_closed", user, user.roles()));
    }

    /** Gives a new one-time password for one that was lost. */
    @Transactional
    public ActResult<String> resetPassword(UserName userName) {
        return door.demand(Permission.MANAGE_USERS)
                .lock(() -> known(userName))
                .save(user -> {
                    String oneTime = passwords.oneTime();
                    users.changePassword(userName, passwords.hash(oneTime), true);
                    return new NewAccount(user, oneTime);
                })
                .record(reset -> AccountOpening.line(
                        "password_reset", reset.user(), reset.user().roles()))
                .map(NewAccount::oneTimePassword);
    }

    /** Changes the password of whoever is signed in; it is the only act open to the holder of a one-time password. */
    @Transactional
    public ActResult<OfficeUser> changeOwnPassword(String old, String chosen) {
        return door.demandSignedIn()
                .lockNothing()
                .refuse(user -> passwords.refusal(old, chosen, users.passwordHash(user.userName())))
                .save(user -> {
                    users.changePassword(user.userName(), passwords.hash(chosen), false);
                    return known(user.userName());
                })
                .record(user -> LedgerLine.of(
                        LedgerChain.OFFICE, "password_changed", user.actor().pseudonym(), Map.of()));
    }

    private OfficeUser known(UserName userName) {
        return users.find(userName)
                .orElseThrow(() -> new IllegalArgumentException("There is no account " + userName + "."));
    }

    private OfficeUser known(UserName userName, int version) {
        OfficeUser user = known(userName);
        if (user.version() != version) {
            throw UserStore.stale(userName);
        }
        return user;
    }

    /** Refused where neither this person, as they would be, nor anybody else could administrate. */
    private Optional<Refusal> nobodyLeft(OfficeUser changed, boolean staysAdministrator) {
        boolean other = users.all().stream()
                .filter(user -> !user.userName().equals(changed.userName()))
                .anyMatch(user -> user.enabled() && user.has(Role.ADMINISTRATOR));
        return Refusal.when(
                !staysAdministrator && !other,
                Refusal.Why.LAST_ADMINISTRATOR,
                "The office needs at least one administrator.");
    }
}
