package org.proviso.access;

import java.util.Map;
import java.util.Set;
import org.proviso.core.Code;
import org.proviso.core.UserName;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Component;

/** Opens accounts, with the entry in the ledger; whether somebody may is asked before. */
@Component
class AccountOpening {

    private final UserStore users;
    private final LedgerService ledger;
    private final Passwords passwords;

    AccountOpening(UserStore users, LedgerService ledger, Passwords passwords) {
        this.users = users;
        this.ledger = ledger;
        this.passwords = passwords;
    }

    /** An account whose password holds for one sign-in. */
    void open(CreateUser command, String oneTimePassword, Actor by) {
        open(command, passwords.hash(oneTimePassword), by, false);
    }

    /** An account that works in a demonstration only, with the hash of a password that everybody may know. */
    void openForDemo(CreateUser command, String passwordHash, Actor by) {
        open(command, passwordHash, by, true);
    }

    private void open(CreateUser command, String passwordHash, Actor by, boolean demo) {
        Actor actor = new Actor("staff-" + passwords.pseudonymCode());
        if (users.find(new UserName(command.userName())).isPresent()) {
            throw new UserRuleException("There is an account " + command.userName() + " already.");
        }
        users.insert(
                new OfficeUser(
                        new UserName(command.userName()),
                        command.fullName(),
                        command.party(),
                        actor,
                        command.roles(),
                        !demo,
                        true,
                        demo,
                        0),
                passwordHash);
        record(by, "account_opened", actor, command.roles());
    }

    void record(Actor by, String act, Actor of, Set<Role> roles) {
        ledger.record(
                LedgerChain.OFFICE,
                by,
                act,
                of.pseudonym(),
                Map.of("roles", roles.stream().map(Code::code).sorted().toList()));
    }
}
