package org.proviso.browser.twists;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.WebDriverException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A command that plays the sample primary with its twists in a browser, to the certificate; see DEVELOPERS.md. */
@Command(
        name = "twists",
        mixinStandardHelpOptions = true,
        description = "Plays a canvass in a browser and pictures it. Ends with 1 where a step is not as expected.")
public final class TwistsPlay implements Runnable {

    /** Nobody reviews these before the play begins. */
    private static final Set<String> LEFT = Set.of("P-1015", "P-1025", "P-1026", "P-1028", "P-1044");

    @Option(names = "--out", defaultValue = "docs/pictures/twists", description = "Default: ${DEFAULT-VALUE}.")
    private Path out = Path.of("");

    @Option(names = "--prepare", description = "Only prepares the office, says its address, and waits for Enter.")
    private boolean prepare;

    @Option(names = "--server", description = "An office that was prepared and waits; without it, one of its own.")
    private @Nullable String server;

    @Option(names = "--from", defaultValue = "1", description = "The step to begin with. Default: ${DEFAULT-VALUE}.")
    private int from;

    public static void main(String[] arguments) {
        CommandLine line = new CommandLine(new TwistsPlay());
        line.setExecutionExceptionHandler((wrong, command, parsed) -> {
            System.err.println(wrong.getMessage());
            return 1;
        });
        System.exit(line.execute(arguments));
    }

    @Override
    public void run() {
        if (server != null) {
            play(server);
            return;
        }
        try (TwistsOffice office = TwistsOffice.open(LEFT)) {
            if (prepare) {
                System.out.println(office.address());
                new java.util.Scanner(System.in).nextLine();
            } else {
                play(office.address());
            }
        }
    }

    private void play(String address) {
        try (Player player = new Player(address, out)) {
            int number = 0;
            for (Map.Entry<String, Runnable> step : steps(player).entrySet()) {
                number++;
                if (number >= from) {
                    played(player, number + " " + step.getKey(), step.getValue());
                }
            }
        }
        System.out.println("Played to the certificate.");
    }

    private static void played(Player player, String words, Runnable act) {
        long start = System.nanoTime();
        try {
            act.run();
        } catch (AssertionError | WebDriverException e) {
            player.failed();
            throw new IllegalStateException("Not as expected in step " + words + ": " + e.getMessage(), e);
        }
        System.out.printf("step %s (%d s)%n", words, (System.nanoTime() - start) / 1_000_000_000);
    }

    private static void moveClock(Player player, String past) {
        player.as("supervisor", "/set-up/clock").press(past).see("The clock was moved");
    }

    private static Map<String, Runnable> steps(Player player) {
        Map<String, Runnable> steps = new LinkedHashMap<>();
        firstDays(steps, player);
        afterTheDecision(steps, player);
        lastDays(steps, player);
        return steps;
    }

    private static void firstDays(Map<String, Runnable> steps, Player player) {
        Counter counter = new Counter(player);
        Desk desk = new Desk(player);
        BoardRoom board = new BoardRoom(player);
        steps.put("letters are sent, one logged by mistake", counter::letters);
        steps.put("a receipt number is missing, another is there twice", counter::receives);
        steps.put("what was received is keyed", counter::keys);
        steps.put("a wrong precinct is corrected", counter::corrects);
        steps.put("evidence on the wrong envelope is taken back", counter::cures);
        steps.put("a voter is chosen anew, and the finding is void", desk::anotherVoter);
        steps.put("a count against the rules takes a second reader", desk::againstTheRules);
        steps.put("a case of somebody absent is released", desk::heldBySomebodyAbsent);
        steps.put("research is requested and answered", desk::research);
        steps.put("an envelope is sent on by two", desk::sendsOn);
        for (String number : List.of("P-1061", "P-1062", "P-1009", "P-1022")) {
            steps.put(number + " counts", () -> desk.plain(number));
        }
        steps.put("a ruling is put in force by two", new Figures(player)::rules);
        steps.put("the first session is opened", () -> board.opens(1));
        steps.put("a member is recused", () -> board.recuses(1, "P-1019"));
        steps.put("a vote said aloud is recorded", () -> board.recordsAVote(1));
        steps.put("a session closed by mistake is reopened", () -> board.closedByMistake(1));
        steps.put("the board decides", () -> board.carriesAll(1));
        steps.put("the first session is closed", () -> board.closes(1));
    }

    private static void afterTheDecision(Map<String, Runnable> steps, Player player) {
        Afterwards after = new Afterwards(player);
        Opening opening = new Opening(player);
        Desk desk = new Desk(player);
        steps.put("a court's order reaches a decided case", after::orderReachesADecidedCase);
        steps.put("what was sent on comes back", desk::sentOnIsUndone);
        steps.put("all other ballots are counted", opening::otherBallotsAreComplete);
        steps.put("a batch is made", () -> opening.makesBatch(1));
        steps.put(
                "a court holds an envelope of the batch",
                () -> after.ordered("hold", "P-1045", "A suit about the registration is pending.", "8/6/2026"));
        steps.put("the held envelope is taken out", () -> opening.takesOut(1, "P-1045"));
        steps.put("the batch is dissolved by two", () -> opening.dissolves(1));
        steps.put("a newer mail-ballot list contradicts a decision", after::newerMailList);
        steps.put("a newer roll helps a rejected voter", after::newerRoll);
    }

    private static void lastDays(Map<String, Runnable> steps, Player player) {
        Counter counter = new Counter(player);
        Desk desk = new Desk(player);
        BoardRoom board = new BoardRoom(player);
        Opening opening = new Opening(player);
        Afterwards after = new Afterwards(player);
        Figures figures = new Figures(player);
        steps.put("a deadline passes", () -> moveClock(player, "Deadline to sign the affirmation"));
        for (String number : List.of("P-1013", "P-1016", "P-1018", "P-1034", "P-1046", "P-1053", "P-1002")) {
            steps.put(number + " is judged", () -> desk.proposedAndReadAgain(number));
        }
        steps.put("P-1008 counts: no mail ballot came", () -> desk.plain("P-1008"));
        steps.put("the second session is opened", () -> board.opens(2));
        steps.put("contradicted decisions are reopened", () -> board.reopens(2, "P-1042", "P-1007"));
        steps.put("the board decides the rest", () -> board.carriesAll(2));
        steps.put("the second session is closed", () -> board.closes(2));
        steps.put("P-1042 is proposed to be rejected", () -> desk.proposedAndReadAgain("P-1042"));
        steps.put("P-1007 counts", () -> desk.plain("P-1007"));
        steps.put("the third session", () -> {
            board.opens(3);
            board.carriesAll(3);
            board.closes(3);
        });
        steps.put("the order to hold is set aside", () -> after.orderIsOver(3));
        steps.put("a batch is opened", () -> {
            opening.makesBatch(2);
            opening.opens(2);
        });
        steps.put("the court-extended hours are opened", () -> {
            opening.makesBatchOfExtendedHours(3);
            opening.opens(3);
        });
        steps.put("the silent location's return comes", counter::lateReturn);
        steps.put("the sheet of balances is filled", figures::fillsTheSheet);
        steps.put("a difference is explained by two", figures::explains);
        steps.put("nothing is missing", figures::nothingIsMissing);
        steps.put("the election is closed", figures::closes);
        steps.put("after closing acts are refused; two reopen the canvass", figures::reopensAfterClosing);
        steps.put("a court's order changes one outcome", after::orderAfterClosing);
        steps.put("its envelope is opened", () -> {
            opening.makesBatchOfOne(4);
            opening.opens(4);
        });
        steps.put("the amended certificate", figures::closesAgain);
    }
}
