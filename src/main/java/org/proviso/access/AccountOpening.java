package org.proviso.access;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Code;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Component;

/** Makes accounts, and says what the ledger has of them; whether somebody may is asked before. */
@Component
class AccountOpening {

    private final UserStore users;
    private final Passwords passwords;

    AccountOpening(UserStore users, Passwords passwords) {
        this.users = users;
        this.passwords = passwords;
    }

    /** Refused where there is an account of that name. */
    Optional<Refusal> taken(CreateUser command) {
        return users.find(new UserName(command.userName())).isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "userName",
                        Refusal.Why.NUMBER_TAKEN,
                        "There is an account " + command.userName() + " already."));
    }

    /** An account whose password holds for one sign-in. */
    OfficeUser open(CreateUser command, String oneTimePassword) {
        return open(command, passwords.hash(oneTimePassword), false);
    }

    /** An account that works in a demonstration only, with the hash of a password that everybody may know. */
    OfficeUser openForDemo(CreateUser command, String passwordHash) {
        return open(command, passwordHash, true);
    }

    private OfficeUser open(CreateUser command, String passwordHash, boolean demo) {
        OfficeUser opened = new OfficeUser(
                new UserName(command.userName()),
                command.fullName(),
                command.party(),
                new Actor("staff-" + passwords.pseudonymCode()),
                command.roles(),
                !demo,
                true,
                demo,
                0);
        users.insert(opened, passwordHash);
        return opened;
    }

    /** The entry in the office's chain: whose account, by pseudonym, and with which roles. */
    static LedgerLine line(String act, OfficeUser of, Set<Role> roles) {
        return LedgerLine.of(
                LedgerChain.OFFICE,
                act,
                of.actor().pseudonym(),
                Map.of("roles", roles.stream().map(Code::code).sorted().toList()));
    }
}
