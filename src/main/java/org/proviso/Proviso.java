package org.proviso;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.theme.Theme;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** The workbench: starts the server of the county office. */
@SpringBootApplication
@Theme("proviso")
public class Proviso implements AppShellConfigurator {

    /** Starts the server; a first argument that names a file verb does that job instead and ends. */
    public static void main(String[] arguments) {
        SpringApplication.run(Proviso.class, arguments);
    }
}
