package org.proviso.access;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.ledger.Actor;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Lets the first person in: an administrator with a one-time password that is printed once, or in a demonstration
 * accounts for every role. Does nothing where somebody can administrate already. A real office never becomes a
 * demonstration.
 */
@Component
class FirstAccounts implements SmartInitializingSingleton {

    static final String ADMINISTRATOR = "administrator";
    static final String DEMO_PASSWORD = "demo-only-password";

    static final List<CreateUser> DEMO = List.of(
            demo(new UserName("intake"), "Irene Cobb", "", Role.INTAKE),
            demo(new UserName("reviewer"), "Ada Lovering", "", Role.REVIEWER),
            demo(new UserName("second"), "Ben Okafor", "", Role.REVIEWER),
            demo(new UserName("board1"), "Clara Whitmore", "Lakes", Role.DECIDER),
            demo(new UserName("board2"), "Dale Fenner", "Plains", Role.DECIDER),
            demo(new UserName("board3"), "Esther Quist", "Lakes", Role.DECIDER),
            demo(new UserName("secretary"), "Kate Lindholm", "", Role.SECRETARY),
            demo(new UserName("release1"), "Frank Sumner", "Lakes", Role.RELEASE_TEAM),
            demo(new UserName("release2"), "Gail Ortiz", "Plains", Role.RELEASE_TEAM),
            demo(new UserName("supervisor"), "Hugh Mercer", "", Role.SUPERVISOR),
            demo(new UserName("supervisor2"), "Kay Brandt", "", Role.SUPERVISOR),
            demo(new UserName("observer"), "Ines Calder", "", Role.OBSERVER),
            demo(new UserName("admin"), "Joan Pike", "", Role.ADMINISTRATOR));

    private static final Logger LOG = LoggerFactory.getLogger(FirstAccounts.class);

    private final UserStore users;
    private final AccountOpening accounts;
    private final Passwords passwords;
    private final ActDoor door;
    private final AccessSettings settings;

    FirstAccounts(
            UserStore users, AccountOpening accounts, Passwords passwords, ActDoor door, AccessSettings settings) {
        this.users = users;
        this.accounts = accounts;
        this.passwords = passwords;
        this.door = door;
        this.settings = settings;
    }

    private static CreateUser demo(UserName userName, String fullName, String party, Role role) {
        return new CreateUser(userName.value(), fullName, party, Set.of(role));
    }

    /** Before the server listens: accounts that everybody knows are never opened in a real office. */
    @Override
    public void afterSingletonsInstantiated() {
        if (settings.demo() && users.find(new UserName(ADMINISTRATOR)).isPresent()) {
            throw new RealOfficeException();
        }
    }

    /** Before the console says that the office is ready. */
    @EventListener(ApplicationReadyEvent.class)
    @Order(0)
    @Transactional
    public void letSomebodyIn() {
        if (settings.demo()) {
            openDemoAccounts();
            LOG.info("Demonstration: sign in as {} with the password {}", demoNames(), DEMO_PASSWORD);
        } else {
            openFirstAccount()
                    .ifPresent(password -> LOG.info(
                            "First start: sign in as {} with the one-time password {} (shown only now)",
                            ADMINISTRATOR,
                            password));
        }
    }

    /** The one-time password of the first administrator, or empty where the office has one. */
    private Optional<String> openFirstAccount() {
        boolean open =
                users.all().stream().anyMatch(user -> user.enabled() && !user.demo() && user.has(Role.ADMINISTRATOR));
        if (open) {
            return Optional.empty();
        }
        String password = passwords.oneTime();
        record(accounts.open(new CreateUser(ADMINISTRATOR, "Administrator", "", Set.of(Role.ADMINISTRATOR)), password));
        return Optional.of(password);
    }

    private void openDemoAccounts() {
        List<CreateUser> missing = DEMO.stream()
                .filter(account -> users.find(new UserName(account.userName())).isEmpty())
                .toList();
        if (missing.isEmpty()) {
            return;
        }
        String hash = passwords.hash(DEMO_PASSWORD);
        missing.forEach(account -> record(accounts.openForDemo(account, hash)));
    }

    private void record(OfficeUser opened) {
        door.record(Actor.SYSTEM, AccountOpening.line("account_opened", opened, opened.roles()));
    }

    private static String demoNames() {
        return String.join(", ", DEMO.stream().map(CreateUser::userName).toList());
    }
}
