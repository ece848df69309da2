package org.proviso.browser;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A command that pictures pages of a running demonstration, as any of its accounts; see DEVELOPERS.md. */
@Command(name = "screenshots", mixinStandardHelpOptions = true, description = "Pictures pages of a running server.")
public final class Screenshots implements Runnable {

    @Option(names = "--server", defaultValue = "http://localhost:8080", description = "Default: ${DEFAULT-VALUE}.")
    private String server = "";

    @Option(names = "--out", defaultValue = "target/pictures", description = "Default: ${DEFAULT-VALUE}.")
    private Path out = Path.of("");

    @Option(names = "--axe", description = "Also say what axe finds on each page.")
    private boolean axe;

    @Option(names = "--guides", description = "The pictures of docs/guides, into docs/guides/pictures.")
    private boolean guides;

    @Mixin
    private Look look = new Look();

    @Parameters(
            paramLabel = "SCREEN",
            description = "A name of the list, or user:/address (:/address for nobody), @390 behind it for a"
                    + " telephone's width. Without any, the whole list.")
    private List<String> screens = new ArrayList<>();

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Screenshots()).execute(arguments));
    }

    @Override
    public void run() {
        if (guides) {
            out = Path.of("docs", "guides", "pictures");
            screens = List.copyOf(Guides.pictures());
        }
        List<Screen> wanted = screens.isEmpty()
                ? Screen.ALL
                : screens.stream().map(Screen::of).toList();
        try (Browser browser = Browser.open(server, Window.DESK)) {
            String user = "";
            for (Screen screen : wanted) {
                if (!screen.user().equals(user)) {
                    user = screen.user();
                    browser.be(user);
                }
                picture(browser, screen);
            }
        }
    }

    private void picture(Browser browser, Screen screen) {
        look.apply(browser, screen);
        browser.go(screen.address());
        for (Look one : look.looks()) {
            one.apply(browser, screen);
            say(one.picture(browser, out, screen.name()) + (browser.fitsItsWindow() ? "" : "  (scrolls)"));
        }
        browser.complaints().forEach(complaint -> say("  console: " + complaint));
        if (axe) {
            Axe.findings(browser).forEach(finding -> say("  axe: " + finding));
        }
    }

    private static void say(String line) {
        System.out.println(line);
    }
}
