package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.proviso.core.UserName;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;

/** The first person gets in once, and demo accounts work in a demonstration only. */
class FirstAccountsTest {

    private static final Pattern ONE_TIME = Pattern.compile("one-time password (\\S+)");

    private final Logger console = (Logger) LoggerFactory.getLogger(FirstAccounts.class);
    private final ListAppender<ILoggingEvent> lines = new ListAppender<>();

    @BeforeEach
    void listen() {
        lines.start();
        console.addAppender(lines);
    }

    @AfterEach
    void stopListening() {
        console.detachAppender(lines);
        Staff.signOut();
    }

    private List<String> printed() {
        return lines.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
    }

    @OnADatabase
    void the_first_administrator_gets_a_one_time_password_printed_once(TestOffice office) {
        FirstAccounts start = office.the(FirstAccounts.class);
        start.letSomebodyIn();
        start.letSomebodyIn();
        assertThat(printed()).hasSize(1);
        Matcher password = ONE_TIME.matcher(printed().get(0));
        assertThat(password.find()).isTrue();
        OfficeUser first =
                office.the(UserStore.class).find(new UserName("administrator")).orElseThrow();
        assertThat(first.roles()).containsExactly(Role.ADMINISTRATOR);
        assertThat(first.passwordIsOneTime()).isTrue();
        String kept = office.the(SignInUsers.class)
                .loadUserByUsername("administrator")
                .getPassword();
        assertThat(office.the(PasswordEncoder.class).matches(password.group(1), kept))
                .isTrue();
        assertThat(office.the(PasswordEncoder.class).matches("administrator", kept))
                .isFalse();
    }

    @OnADatabase
    void demo_accounts_cover_every_role_and_cannot_sign_in_outside_a_demo(TestOffice office) {
        demo(office);
        demo(office);
        UserStore users = office.the(UserStore.class);
        assertThat(users.all()).hasSize(13).allMatch(OfficeUser::demo);
        assertThat(users.all()).flatExtracting(OfficeUser::roles).contains(Role.values()[0], Role.OBSERVER);
        assertThat(new SignInUsers(users, new AccessSettings(true))
                        .loadUserByUsername("board1")
                        .isEnabled())
                .isTrue();
        assertThat(office.the(SignInUsers.class).loadUserByUsername("board1").isEnabled())
                .isFalse();
        Staff.signIn("board1");
        assertThatThrownBy(() -> office.the(AccessService.class).demand(Permission.VOTE))
                .hasMessage("This account cannot be used.");
        assertThat(new AccessService(users, new AccessSettings(true))
                        .demand(Permission.VOTE)
                        .userName()
                        .value())
                .isEqualTo("board1");
    }

    @OnADatabase
    void an_office_opened_after_a_demo_gets_an_administrator_of_its_own(TestOffice office) {
        demo(office);
        office.the(FirstAccounts.class).letSomebodyIn();
        assertThat(office.the(UserStore.class).find(new UserName("administrator")))
                .isPresent();
    }

    @OnADatabase
    void a_real_office_never_becomes_a_demonstration(TestOffice office) {
        FirstAccounts demo = demoOf(office);
        demo.afterSingletonsInstantiated();
        office.the(FirstAccounts.class).letSomebodyIn();
        office.the(FirstAccounts.class).afterSingletonsInstantiated();
        assertThatThrownBy(demo::afterSingletonsInstantiated).isInstanceOf(RealOfficeException.class);
    }

    @OnADatabase
    void an_account_nobody_opened_cannot_sign_in(TestOffice office) {
        assertThatThrownBy(() -> office.the(SignInUsers.class).loadUserByUsername("nobody"))
                .isInstanceOf(UsernameNotFoundException.class);
        assertThat(office.the(UserStore.class).all()).isEmpty();
    }

    private static void demo(TestOffice office) {
        FirstAccounts start = demoOf(office);
        office.inTransaction(() -> {
            start.letSomebodyIn();
            return start;
        });
    }

    private static FirstAccounts demoOf(TestOffice office) {
        return new FirstAccounts(
                office.the(UserStore.class),
                office.the(AccountOpening.class),
                office.the(Passwords.class),
                office.the(ActDoor.class),
                new AccessSettings(true));
    }
}
