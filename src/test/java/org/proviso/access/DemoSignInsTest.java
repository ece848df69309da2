package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.proviso.core.UserName;

/** The sign-in page names accounts in a demonstration only. */
class DemoSignInsTest {

    @Test
    void a_demonstration_names_each_account_with_its_part() {
        DemoSignIns demo = new DemoSignIns(new AccessSettings(true));
        assertThat(demo.all())
                .hasSize(13)
                .contains(new DemoSignIn(new UserName("board1"), "Clara Whitmore", "votes on the board, Lakes party"))
                .contains(new DemoSignIn(
                        new UserName("reviewer"), "Ada Lovering", "reviews cases and proposes outcomes"));
        assertThat(demo.password()).isEqualTo("demo-only-password");
    }

    @Test
    void elsewhere_there_is_none_and_no_password() {
        DemoSignIns office = new DemoSignIns(new AccessSettings(false));
        assertThat(office.all()).isEmpty();
        assertThat(office.password()).isEmpty();
    }
}
