package org.proviso.board.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.access.ui.PlainBrowser.target;
import static org.proviso.core.act.ActResults.accepted;

import java.net.http.HttpResponse;
import java.time.LocalDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.access.StaffList;
import org.proviso.access.WebStaff;
import org.proviso.access.ui.PlainBrowser;
import org.proviso.board.BoardService;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.SessionKey;
import org.proviso.board.record.PublicDisplayService;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.status.StatusLines;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The display in the room and the minutes over HTTP. */
@SpringBootTest(classes = Proviso.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class BoardPagesTest {

    private static final LocalDateTime CALLED = LocalDateTime.of(2026, 8, 6, 9, 30);

    @Autowired
    private ApplicationContext server;

    @LocalServerPort
    private int port;

    private PlainBrowser browser;
    private SessionKey session;
    private String token;

    @BeforeEach
    void callASession() {
        browser = new PlainBrowser(port);
        StatusLines.loadElection(server);
        WebStaff.hire(server, "the-chair", Role.DECIDER);
        Staff.signIn("the-chair");
        session = accepted(server.getBean(BoardService.class)
                        .callSession(
                                new CallSession(new ElectionId("tamarack-primary"), BodyKind.BOARD, CALLED, "Room 2")))
                .key();
        token = server.getBean(PublicDisplayService.class).link(session);
        Staff.signOut();
    }

    @Test
    void the_display_needs_no_sign_in_and_sets_no_cookie() {
        HttpResponse<String> page = browser.get("/room/" + token);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("Session of the board</h1>", "Called for Thursday, August 6, 2026, 9:30 am, Room 2.")
                .doesNotContain("the-chair", "<script");
        assertThat(page.headers().firstValue("Set-Cookie")).isEmpty();
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .startsWith("default-src 'none'");
        assertThat(page.headers().firstValue("Refresh")).contains("10");
    }

    @Test
    void the_display_holds_still_where_somebody_wants_to_read() {
        HttpResponse<String> page = browser.get("/room/" + token + "?hold");
        assertThat(page.headers().firstValue("Refresh")).isEmpty();
        assertThat(page.body()).contains("Auto-refresh");
    }

    @Test
    void without_the_link_nothing_is_shown() {
        assertThat(browser.get("/room").statusCode()).isEqualTo(404);
        assertThat(browser.get("/room/" + token.substring(2)).body())
                .contains("No session is shown here")
                .doesNotContain("Room 2");
    }

    @Test
    void the_minutes_say_who_recorded_a_vote_and_what_the_member_says_of_it() {
        if (server.getBean(StaffList.class).user(new UserName("the-member")).isEmpty()) {
            WebStaff.hire(server, "the-member", Role.DECIDER);
        }
        JdbcClient jdbc = server.getBean(JdbcClient.class);
        jdbc.sql("""
                        insert into motion (election_id, session_no, motion_no, outcome, contests, reasons, legal_reference,
                            moved_by, moved_at, put_at, words, result, result_at, version)
                        select election_id, session_no, 1, 'table', '', '', '', 'the-chair', now(), now(), 'Carried.',
                            'carried', now(), 0 from board_session where session_no = ?""").param(session.sessionNo()).update();
        jdbc.sql("""
                        insert into vote (election_id, session_no, motion_no, user_name, vote, cast_at, noted_by)
                        select election_id, session_no, 1, 'the-member', 'yes', now(), 'the-chair' from board_session
                        where session_no = ?""").param(session.sessionNo()).update();
        String address = "/board/minutes/" + session.electionId() + "/" + session.sessionNo();
        browser.signIn("the-chair", WebStaff.PASSWORD);
        assertThat(browser.get(address).body())
                .contains("(recorded by the-chair; to be confirmed by the member: ____________)");
        jdbc.sql("update vote set confirmed = true where session_no = ?")
                .param(session.sessionNo())
                .update();
        assertThat(browser.get(address).body()).contains("(recorded by the-chair; confirmed by the member)");
        jdbc.sql("update vote set confirmed = false where session_no = ?")
                .param(session.sessionNo())
                .update();
        assertThat(browser.get(address).body())
                .contains("(recorded by the-chair; the member says that this was not their vote)");
    }

    @Test
    void the_minutes_are_for_who_signed_in_and_carry_the_head_of_the_ledger() {
        String address = "/board/minutes/" + session.electionId() + "/" + session.sessionNo();
        assertThat(target(browser.get(address))).isEqualTo("/sign-in");
        browser.signIn("the-chair", WebStaff.PASSWORD);
        HttpResponse<String> page = browser.get(address);
        assertThat(page.body())
                .contains("Minutes of session " + session.sessionNo() + "</h1>", "No motions were made.")
                .contains(server.getBean(LedgerService.class)
                        .head(LedgerChain.of(session.electionId()))
                        .hash());
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .startsWith("default-src 'none'");
        assertThat(browser.get("/board/minutes/tamarack-primary/9999").statusCode())
                .isEqualTo(404);
    }
}
