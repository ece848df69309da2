package org.proviso;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.server.AppShellSettings;
import com.vaadin.flow.theme.Theme;
import org.proviso.cli.CommandLineApp;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** The workbench: the office's server, or with a verb a job done on files. */
@SpringBootApplication
@Theme("proviso")
public class Proviso implements AppShellConfigurator {

    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "themes/proviso/mark.svg", "any");
    }

    /** Runs the file verb that the first argument names; without one, starts the server. */
    public static void main(String[] arguments) {
        if (CommandLineApp.isVerb(arguments)) {
            System.exit(CommandLineApp.run(arguments));
        }
        SpringApplication.run(Proviso.class, arguments);
    }
}
