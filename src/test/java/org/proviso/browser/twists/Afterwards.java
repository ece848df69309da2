package org.proviso.browser.twists;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.proviso.journey.Primary;

/** What reaches a case that is decided: a court's order, and lists that are newer than the decision. */
final class Afterwards {

    private static final String COURT = "Tamarack County Circuit Court";

    private final Player player;

    Afterwards(Player player) {
        this.player = player;
    }

    /** A court orders the office; a supervisor records it. */
    void ordered(String kind, String number, String scope, String day) {
        player.as("supervisor", "/set-up/orders")
                .option("kind", kind)
                .fill("court", COURT)
                .fill("date", day);
        player.fill("scope", scope).fill("envelopes", number).press("Record order");
        player.see("recorded. The cases it affects were reassessed.");
    }

    /** One supervisor recorded the order; another enters it on the case, which is decided already. */
    void orderReachesADecidedCase() {
        player.as("reviewer", "/review/case/P-1050").see("the voter registered after the deadline");
        player.picture("14-decided-case");
        ordered("count", "P-1050", "The application was held back by an agency.", "8/6/2026");
        player.go("/review/case/P-1050").see(COURT).cannot("Enter court order");
        player.as("supervisor2", "/review/case/P-1050").see(COURT).press("Enter court order");
        player.picture("03-court-order-entered");
        player.press("Enter court order").see("P-1050 decided by court order: count");
    }

    /** The canvass is open again for this: a rejected ballot counts. */
    void orderAfterClosing() {
        ordered("count", "P-1058", "Mailed in time, says the court.", "8/12/2026");
        player.as("supervisor2", "/review/case/P-1058")
                .press("Enter court order")
                .press("Enter court order");
        player.see("P-1058 decided by court order: count");
    }

    /** The order to hold is over. */
    void orderIsOver(int order) {
        player.as("supervisor", "/set-up/orders").optionOf("Status of order " + order, "set aside");
        player.see("Order " + order + " is now set aside.");
    }

    /** The mail desk's newer list has a ballot of a voter whose envelope counts. */
    void newerMailList() {
        loads("Mail-ballot records", "mail-ballots.csv", lines -> {
            lines.add("T5271687,M910001,2026-06-20,accepted,2026-08-06");
            return lines;
        });
        player.as("board1", "/board/contradicted").see("P-1042", "accepted").picture("01-decided-and-now-contradicted");
    }

    /** The newer roll has somebody whom a search did not find. */
    void newerRoll() {
        loads("Roll", "roll.csv", lines -> {
            lines.add(TwistsOffice.FOUND_LATER);
            return lines;
        });
        player.as("board1", "/board/contradicted").see("P-1007").picture("13-newer-roll-helps-a-voter");
    }

    private void loads(String kind, String name, UnaryOperator<List<String>> newer) {
        player.as("supervisor", "/set-up").option("list-kind", kind).upload(file(name, newer));
        player.press("Put list in use").see("A second person must confirm. Nothing has changed yet.");
        player.as("supervisor2", "/set-up")
                .press("Review and confirm")
                .press("Put list in use")
                .see("is in use.");
    }

    private static Path file(String name, UnaryOperator<List<String>> newer) {
        try {
            Path file = Files.createTempDirectory("proviso-twists-").resolve(name);
            List<String> lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve(name)));
            return Files.write(file, newer.apply(lines));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
