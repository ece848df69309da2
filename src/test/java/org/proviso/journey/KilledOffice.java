package org.proviso.journey;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.journey.BusyReviewer.Done;

/**
 * A program of its own that is killed while people act: over the database of the first argument, which the first round
 * (second argument 0) fills; the third says how many people act. Prints every act once the office accepted it, and goes
 * on until it is killed.
 */
public final class KilledOffice {

    private static final int PEOPLE = 6;

    /** At the end of a line, so that one cut off by the kill is not taken for an act. */
    static final String END = ";";

    private KilledOffice() {}

    public static void main(String[] arguments) throws Exception {
        DatabaseKind kind = arguments[0].startsWith("jdbc:h2:") ? DatabaseKind.H2 : DatabaseKind.POSTGRESQL;
        TestOffice office = TestOffice.over(kind, arguments[0]);
        int round = Integer.parseInt(arguments[1]);
        int people = arguments.length > 2 ? Integer.parseInt(arguments[2]) : PEOPLE;
        if (round == 0) {
            Primary.loaded(office);
            BusyReviewer.hire(office, people);
        } else {
            new Primary(new Office(office), Truth.of(Primary.ID)).at(1, 12, 0);
        }
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Crowd crowd = new Crowd(done -> print(out, done));
        crowd.work(office, people, 100L * round, () -> true);
    }

    /** In one piece, and flushed. */
    private static void print(PrintStream out, Done done) {
        out.print("done " + done.act() + " " + done.envelopeNo() + " " + done.by() + " " + done.version() + END + "\n");
        out.flush();
    }
}
