package org.proviso.browser;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A page to picture: its name, the demo account that looks at it (empty: nobody), its address, and the window. */
record Screen(String name, String user, String address, Window window) {

    /** Every screen of the program; a new one adds its line. */
    static final List<Screen> ALL = List.of(
            desk("sign-in", "", "/sign-in"),
            new Screen("practice", "", "/practice", Window.PHONE),
            new Screen("practice-signature", "", "/practice?born=10/30/1961&voter=father", Window.PHONE),
            new Screen("practice-propose", "", "/practice?born=10/30/1961&voter=father&signature=agrees", Window.PHONE),
            desk("password", "reviewer", "/password"),
            desk("today", "supervisor", "/"),
            desk("intake", "intake", "/intake"),
            desk("transmittals", "intake", "/intake/transmittals"),
            desk("receive", "intake", "/intake/receive"),
            desk("keying", "intake", "/intake/key/G-1011"),
            desk("cure", "intake", "/intake/cure"),
            desk("correct", "intake", "/intake/correct/G-1011"),
            desk("queue", "reviewer", "/review"),
            desk("case", "reviewer", "/review/case/G-1058"),
            desk("signature", "reviewer", "/review/signature/G-1058"),
            desk("signatures", "reviewer", "/review/signatures"),
            desk("second", "reviewer", "/review/second"),
            desk("links", "reviewer", "/review/links"),
            desk("research", "reviewer", "/review/research"),
            desk("sent-on", "reviewer", "/review/sent-on"),
            desk("mail-desk", "reviewer", "/review/mail-desk"),
            desk("case-to-print", "reviewer", "/review/print/G-1058"),
            desk("find", "reviewer", "/find?for=smith"),
            desk("board", "board1", "/board"),
            desk("contradicted", "board1", "/board/contradicted"),
            desk("settled", "board1", "/board/settled"),
            desk("case-of-the-decider", "board1", "/review/case/G-1058"),
            desk("release", "release1", "/release"),
            desk("notices", "supervisor", "/notices"),
            desk("letter", "supervisor", "/notices/letter/G-1001/1"),
            desk("canvass", "supervisor", "/canvass"),
            desk("balances", "supervisor", "/canvass/sheet"),
            desk("closing", "supervisor", "/canvass/closing"),
            desk("ledger", "supervisor", "/ledger"),
            desk("set-up", "supervisor", "/set-up"),
            desk("clock", "supervisor", "/set-up/clock"),
            desk("rules", "supervisor", "/set-up/rules"),
            desk("orders", "supervisor", "/set-up/orders"),
            desk("columns", "supervisor", "/set-up/columns"),
            desk("later-files", "supervisor", "/set-up/envelopes"),
            desk("rulings", "supervisor", "/set-up/rulings"),
            desk("what-if", "supervisor", "/set-up/what-if"),
            desk("rule-change", "supervisor", "/set-up/rules/change"),
            desk("calendar", "supervisor", "/calendar"),
            desk("users", "admin", "/set-up/users"),
            desk("words", "reviewer", "/help/words"),
            desk("guide", "reviewer", "/help/guide/reviewer"),
            desk("observe", "observer", "/observe"),
            desk("observe-envelopes", "observer", "/observe/cases"),
            desk("observe-envelope", "observer", "/observe/cases/G-1058"),
            desk("observe-ledger", "observer", "/observe/ledger"),
            new Screen("status", "", "/status", Window.PHONE),
            new Screen("today-on-a-telephone", "reviewer", "/", Window.PHONE));

    private static final Pattern WRITTEN = Pattern.compile("([a-z0-9]*):(/[^@]*)(?:@(\\d+))?");

    private static Screen desk(String name, String user, String address) {
        return new Screen(name, user, address, Window.DESK);
    }

    /** A name of the list, or {@code user:/address} with {@code @390} behind it for a telephone. */
    static Screen of(String text) {
        for (Screen screen : ALL) {
            if (screen.name.equals(text)) {
                return screen;
            }
        }
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no screen of the list and not written user:/address or user:/address@390");
        }
        String user = written.group(1);
        String address = written.group(2);
        Window window = written(written.group(3));
        String name = (user + address).replaceAll("[^a-zA-Z0-9]+", "-").replaceAll("^-|-$", "")
                + (window.equals(Window.DESK) ? "" : "-" + window.width());
        return new Screen(name, user, address, window);
    }

    private static Window written(@Nullable String width) {
        if (width == null) {
            return Window.DESK;
        }
        return window(Integer.parseInt(width));
    }

    /** A window of this width, as high as its kind is. */
    static Window window(int pixels) {
        return new Window(pixels, pixels < 600 ? Window.PHONE.height() : Window.DESK.height());
    }
}
