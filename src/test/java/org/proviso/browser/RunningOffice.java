package org.proviso.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.proviso.Proviso;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/** A whole server as a demonstration, with the sample election in a folder of its own that goes when it ends. */
public final class RunningOffice implements AutoCloseable {

    private static final class Shared {

        static final RunningOffice OFFICE = fresh();

        static {
            Runtime.getRuntime().addShutdownHook(new Thread(OFFICE::close));
        }
    }

    private final @Nullable Path data;
    private final ConfigurableApplicationContext server;

    private RunningOffice(@Nullable Path data, ConfigurableApplicationContext server) {
        this.data = data;
        this.server = server;
    }

    /** The one that all tests of a run share: they must not count on what others leave alone. */
    public static RunningOffice shared() {
        return Shared.OFFICE;
    }

    /** One of its own, for a test that settles cases; takes as long as a first start takes. */
    public static RunningOffice fresh() {
        try {
            Path data = Files.createTempDirectory("proviso-office-");
            return new RunningOffice(
                    data, start("jdbc:h2:file:" + data.resolve("proviso") + ";WRITE_DELAY=0;LOCK_TIMEOUT=10000"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A server over an office that was prepared before; closing it leaves that database alone. */
    public static RunningOffice over(String databaseUrl) {
        return new RunningOffice(null, start(databaseUrl));
    }

    private static ConfigurableApplicationContext start(String databaseUrl) {
        return SpringApplication.run(
                Proviso.class,
                "--server.port=0",
                "--proviso.demo=true",
                "--spring.main.register-shutdown-hook=false",
                "--spring.datasource.url=" + databaseUrl);
    }

    /** {@code http://localhost:port}, without a slash at the end. */
    public String address() {
        return "http://localhost:"
                + ((WebServerApplicationContext) server).getWebServer().getPort();
    }

    /** A service of the running server, for what a test looks up behind the page. */
    public <T> T the(Class<T> service) {
        return server.getBean(service);
    }

    @Override
    public void close() {
        server.close();
        try {
            if (data != null) {
                FileSystemUtils.deleteRecursively(data);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
