package org.proviso.access;

import java.util.List;
import org.proviso.core.UserName;
import org.springframework.stereotype.Component;

/** The accounts that the sign-in page of a demonstration names, and their password; elsewhere there are none. */
@Component
public class DemoSignIns {

    private final AccessSettings settings;

    DemoSignIns(AccessSettings settings) {
        this.settings = settings;
    }

    public List<DemoSignIn> all() {
        return settings.demo()
                ? FirstAccounts.DEMO.stream().map(DemoSignIns::signIn).toList()
                : List.of();
    }

    public String password() {
        return settings.demo() ? FirstAccounts.DEMO_PASSWORD : "";
    }

    private static DemoSignIn signIn(CreateUser account) {
        String party = account.party().isEmpty() ? "" : ", " + account.party() + " party";
        Role role = account.roles().iterator().next();
        return new DemoSignIn(new UserName(account.userName()), account.fullName(), part(role) + party);
    }

    private static String part(Role role) {
        return switch (role) {
            case INTAKE -> "receives bags and keys envelopes";
            case REVIEWER -> "reviews cases and proposes outcomes";
            case DECIDER -> "votes on the board";
            case SECRETARY -> "keeps the record of a session; has no vote";
            case RELEASE_TEAM -> "opens envelopes and remakes ballots";
            case SUPERVISOR -> "runs the office: files, letters, closing";
            case ADMINISTRATOR -> "manages accounts; takes no part in any case";
            case OBSERVER -> "reads figures and the ledger; sees no names";
            case PUBLIC -> "looks up one envelope";
        };
    }
}
