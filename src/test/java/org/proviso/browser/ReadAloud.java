package org.proviso.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * A command that writes pages out as a screen reader would read them, one text file for each: roles, names and states in
 * order, and first what somebody who hears the page would stumble over. See DEVELOPERS.md.
 */
@Command(name = "read-aloud", mixinStandardHelpOptions = true, description = "Writes out pages as they are heard.")
public final class ReadAloud implements Runnable {

    @Option(names = "--server", description = "A running demonstration; without it, one is started for the run.")
    private String server = "";

    @Option(names = "--out", defaultValue = "target/aloud", description = "Default: ${DEFAULT-VALUE}.")
    private Path out = Path.of("");

    @Parameters(
            paramLabel = "SCREEN",
            description = "A name of the list, or user:/address (:/address for nobody). Without any, the whole list.")
    private List<String> screens = new ArrayList<>();

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new ReadAloud()).execute(arguments));
    }

    @Override
    public void run() {
        String address = server.isEmpty() ? RunningOffice.shared().address() : server;
        List<Screen> wanted = screens.isEmpty()
                ? Screen.ALL
                : screens.stream().map(Screen::of).toList();
        try (Browser browser = Browser.open(address, Window.DESK)) {
            String user = "";
            for (Screen screen : wanted) {
                if (!screen.user().equals(user)) {
                    user = screen.user();
                    browser.be(user);
                }
                browser.resize(screen.window());
                browser.go(screen.address());
                browser.find("h1");
                write(screen.name(), Spoken.of(browser));
            }
        }
    }

    private void write(String name, Spoken page) {
        List<String> lines = new ArrayList<>();
        page.findings().forEach(finding -> lines.add("! " + finding));
        lines.addAll(page.lines());
        try {
            Files.createDirectories(out);
            Path file = Files.write(out.resolve(name + ".txt"), lines);
            System.out.println(file + "  " + lines.size() + " lines");
            page.findings().forEach(finding -> System.out.println("  ! " + finding));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
