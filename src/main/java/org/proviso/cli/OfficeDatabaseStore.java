package org.proviso.cli;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.proviso.files.InputException;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;
import picocli.CommandLine.Option;

/** Which database a command works on, and the services over it, without a server. */
final class OfficeDatabaseStore {

    /** H2 says by these numbers that another process holds its file, and that there is none. */
    private static final int HELD = 90020;

    private static final int NO_FILE = 90146;

    private static final String H2 = "jdbc:h2:file:";
    private static final String URL = "spring.datasource.url";

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "The folder of the office's H2 file. Without it, the database the server is set up to use.")
    private @Nullable Path data;

    /** Does something with the services and closes them again; what keeps them from opening is an {@link InputException}. */
    int use(ToIntFunction<ConfigurableApplicationContext> work) {
        try (ConfigurableApplicationContext services = open()) {
            reach(services);
            return work.applyAsInt(services);
        }
    }

    /** The pool opens its first connection only on request. */
    private static void reach(ConfigurableApplicationContext services) {
        try {
            services.getBean(DataSource.class).getConnection().close();
        } catch (RuntimeException | SQLException e) {
            throw new InputException("the office's database", 0, "", why(e));
        }
    }

    private ConfigurableApplicationContext open() {
        try {
            return new SpringApplicationBuilder(OfficeServices.class)
                    .web(WebApplicationType.NONE)
                    .registerShutdownHook(false)
                    .initializers(OfficeDatabaseStore::onlyWhereThereIsOne)
                    .run(settings().toArray(String[]::new));
        } catch (RuntimeException e) {
            throw new InputException("the office's database", 0, "", why(e));
        }
    }

    /** If the services cannot open, one line of our own says why. */
    private List<String> settings() {
        List<String> settings = new ArrayList<>(List.of(
                "--logging.level.com.zaxxer=off",
                "--logging.level.org.springframework=off",
                "--spring.datasource.hikari.initialization-fail-timeout=1"));
        if (data != null) {
            settings.add("--" + URL + "=" + H2 + data.toAbsolutePath().resolve("proviso") + ";WRITE_DELAY=0");
        }
        return settings;
    }

    /** A command does not create a database where there is none. */
    private static void onlyWhereThereIsOne(ConfigurableApplicationContext services) {
        String url = services.getEnvironment().getRequiredProperty(URL);
        if (url.startsWith(H2)) {
            services.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource("the verb", Map.of(URL, url + ";IFEXISTS=TRUE")));
        }
    }

    private static String why(Exception e) {
        Optional<SQLException> database = database(e);
        int code = database.map(SQLException::getErrorCode).orElse(0);
        if (code == HELD) {
            return "is in use by the running server: stop the server first, or use PostgreSQL, where both can run at once";
        }
        return code == NO_FILE
                ? "was not found: start the server once, or name its folder with --data"
                : "cannot be opened: "
                        + database.map(Throwable::getMessage).orElseGet(() -> String.valueOf(e.getMessage()));
    }

    private static Optional<SQLException> database(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                return Optional.of(sql);
            }
        }
        return Optional.empty();
    }
}
