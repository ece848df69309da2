package org.proviso.journey;

import static org.proviso.core.act.ActResults.accepted;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.router.QueryParameters;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.proviso.Proviso;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.database.CountingDataSource;
import org.proviso.database.Statements;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;

/**
 * Loads an election folder into an H2 file, unless the file is there, and times what the server does for every page: the
 * clock, the processor, statements and rows. A command, never a test: {@code PagesBench ELECTION-FOLDER DATA-FOLDER
 * [ADDRESS...]}, from the project's folder; with addresses only those, each with the statements it sends.
 */
public final class PagesBench {

    private static final String EVERYBODY = "zoe";
    private static final Instant NOW = Instant.parse("2026-11-06T17:00:00Z");

    private static final List<String> PAGES = List.of(
            "",
            "calendar",
            "intake",
            "intake/transmittals",
            "intake/cure",
            "intake/key/{envelope}",
            "intake/correct/{envelope}",
            "review",
            "review/case/{envelope}",
            "review/print/{envelope}",
            "review/signature/{envelope}",
            "review/links",
            "review/signatures",
            "review/second",
            "review/research",
            "review/sent-on",
            "review/mail-desk",
            "find?for=smith",
            "board",
            "board/contradicted",
            "board/settled",
            "release",
            "notices",
            "canvass",
            "canvass/sheet",
            "canvass/closing",
            "ledger",
            "set-up",
            "set-up/rules",
            "set-up/rulings",
            "set-up/orders",
            "set-up/users",
            "/observe",
            "/observe/cases",
            "/observe/cases/{envelope}",
            "/observe/ledger",
            "/status");

    @TestConfiguration(proxyBeanMethods = false)
    static class Counted {

        @Bean
        static BeanPostProcessor counting() {
            return new BeanPostProcessor() {
                @Override
                public Object postProcessAfterInitialization(Object bean, String name) {
                    return bean instanceof DataSource plain ? new CountingDataSource(plain) : bean;
                }
            };
        }

        @Bean
        @Primary
        Clock standingStill() {
            return Clock.fixed(NOW, ZoneOffset.UTC);
        }
    }

    private final ApplicationContext server;
    private final MockMvc plainPages;
    private final String envelope;

    private PagesBench(ConfigurableApplicationContext server) {
        this.server = server;
        plainPages = MockMvcBuilders.webAppContextSetup((WebApplicationContext) server)
                .build();
        envelope = server.getBean(JdbcClient.class)
                .sql("select min(envelope_no) from envelope")
                .query(String.class)
                .single();
    }

    public static void main(String[] arguments) {
        Path data = Path.of(arguments[1]).toAbsolutePath();
        String url = "jdbc:h2:file:" + data.resolve("proviso") + ";WRITE_DELAY=0;LOCK_TIMEOUT=10000";
        if (!Files.exists(data.resolve("proviso.mv.db"))) {
            load(url, Path.of(arguments[0]));
        }
        ConfigurableApplicationContext server = new SpringApplicationBuilder(Proviso.class, Counted.class)
                .run("--server.port=0", "--proviso.demo=false", "--spring.datasource.url=" + url);
        PagesBench bench = new PagesBench(server);
        if (arguments.length > 2) {
            for (String page : List.of(arguments).subList(2, arguments.length)) {
                bench.measure(page);
                bench.statements(page);
            }
        } else {
            PAGES.forEach(bench::measure);
            bench.size(data.resolve("proviso.mv.db"));
        }
        server.close();
        System.exit(0);
    }

    private static void load(String url, Path folder) {
        TestOffice office = TestOffice.over(url);
        Staff.hire(
                office,
                EVERYBODY,
                Role.INTAKE,
                Role.REVIEWER,
                Role.DECIDER,
                Role.RELEASE_TEAM,
                Role.SUPERVISOR,
                Role.ADMINISTRATOR);
        Staff.signIn(EVERYBODY);
        Stopwatch watch = new Stopwatch();
        accepted(office.the(ElectionLoadService.class).load(folder));
        System.out.println("loading: " + watch.read());
        office.close();
        Staff.signOut();
    }

    /** By the clock, and of the processor by this thread. */
    private static final class Stopwatch {

        private final long start = System.nanoTime();
        private final long worked = processor();

        private static long processor() {
            return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        }

        String read() {
            return String.format(
                    Locale.ROOT,
                    "%7.0f ms (%7.0f of the processor)",
                    (System.nanoTime() - start) / 1e6,
                    (processor() - worked) / 1e6);
        }
    }

    /** First with everything that is read once and kept, then again, then counted. */
    private void measure(String page) {
        String first = timed(page);
        String again = timed(page);
        Statements[] sent = {null};
        as(page, open -> sent[0] = Statements.of(open));
        System.out.printf(
                "%-26s %s, again %s, %4d statements, %8d rows%n", page, first, again, sent[0].all(), sent[0].rows());
    }

    private String timed(String page) {
        String[] read = {""};
        as(page, open -> {
            Stopwatch watch = new Stopwatch();
            open.run();
            read[0] = watch.read();
        });
        return read[0];
    }

    /** What a page asks H2, and for how long, the longest first. */
    private void statements(String page) {
        JdbcClient jdbc = server.getBean(JdbcClient.class);
        jdbc.sql("set query_statistics true").update();
        timed(page);
        jdbc.sql("""
                        select execution_count || ' x, ' || cast(cumulative_execution_time as integer) || ' ms, '
                            || row_count_rows || ' rows: ' || regexp_replace(sql_statement, '\\s+', ' ')
                        from (select *, cumulative_row_count as row_count_rows from information_schema.query_statistics) found
                        order by cumulative_execution_time desc limit 12""").query(String.class).list().forEach(line -> System.out.println("    " + line));
        jdbc.sql("set query_statistics false").update();
    }

    /** Does something with the opening of a page by somebody who may open every one. */
    private void as(String page, Consumer<Runnable> act) {
        String address = page.replace("{envelope}", envelope);
        if (address.startsWith("/")) {
            Office.as(EVERYBODY, () -> {
                act.accept(() -> plain(address));
                return page;
            });
        } else {
            PageDriver.of(server).as(EVERYBODY, () -> {
                act.accept(() -> navigate(address));
                return page;
            });
        }
    }

    private static void navigate(String address) {
        String[] parts = address.split("\\?", 2);
        UI.getCurrent().navigate(parts[0], QueryParameters.fromString(parts.length == 1 ? "" : parts[1]));
        MockVaadin.clientRoundtrip();
    }

    private void plain(String address) {
        try {
            plainPages.perform(MockMvcRequestBuilders.get(address));
        } catch (Exception e) {
            throw new IllegalStateException(address, e);
        }
    }

    /** The file, and the tables by how many rows they have; what H2 says a table takes on the disk is the pages it reads. */
    private void size(Path file) {
        System.out.printf("file: %d MB%n", file.toFile().length() >> 20);
        JdbcClient jdbc = server.getBean(JdbcClient.class);
        jdbc.sql("""
                        select lower(table_name) || ': ' || row_count_estimate || ' rows, '
                            || disk_space_used(table_name) / 1048576 || ' MB'
                        from information_schema.tables
                        where table_schema = 'PUBLIC' and row_count_estimate > 1000
                        order by disk_space_used(table_name) desc""").query(String.class).list().forEach(System.out::println);
    }
}
