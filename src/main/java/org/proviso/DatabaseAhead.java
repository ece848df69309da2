package org.proviso;

import java.util.concurrent.CountDownLatch;
import org.flywaydb.core.Flyway;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.ConfigurableEnvironment;

/**
 * Opens the office's database file and brings its tables up to date while the server still reads its own parts, so that
 * the first page comes sooner. A database server is not asked ahead: others may work there. Whatever goes wrong here is
 * not lost: the start does the same again, and says what is wrong.
 */
final class DatabaseAhead implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final Logger LOG = LoggerFactory.getLogger(DatabaseAhead.class);

    private final CountDownLatch done = new CountDownLatch(1);

    @Override
    public void initialize(ConfigurableApplicationContext server) {
        ConfigurableEnvironment settings = server.getEnvironment();
        String url = settings.getProperty("spring.datasource.url", "");
        if (!url.startsWith("jdbc:h2:file:")) {
            done.countDown();
            return;
        }
        server.getBeanFactory().registerSingleton("databaseAhead", this);
        Flyway flyway = Flyway.configure()
                .dataSource(
                        url,
                        settings.getProperty("spring.datasource.username", ""),
                        settings.getProperty("spring.datasource.password", ""))
                .locations(settings.getRequiredProperty("spring.flyway.locations")
                        .replace("{vendor}", "h2")
                        .split(","))
                .load();
        // No daemon: where the start fails elsewhere, the program ends only after the tables are whole.
        new Thread(() -> migrate(flyway), "database-ahead").start();
    }

    private void migrate(Flyway flyway) {
        try {
            flyway.migrate();
        } catch (RuntimeException failed) {
            LOG.debug("The database could not be made ready ahead.", failed);
        } finally {
            done.countDown();
        }
    }

    /** Does the start's own look at the database once nobody else is at it. */
    void then(Runnable look) {
        try {
            done.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The start was interrupted.", stopped);
        }
        look.run();
    }
}
