package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.access.ui.PlainBrowser.target;

import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.UI;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.WebStaff;
import org.proviso.access.ui.PlainBrowser;
import org.proviso.database.TestOffice;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Opens every page as a visitor and as each role, and compares who may with the table. A page that is not in the table
 * fails.
 */
@SpringBootTest(
        classes = Proviso.class,
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=" + RoutePermissionsTest.DATABASE)
class RoutePermissionsTest {

    static final String DATABASE = "jdbc:h2:mem:route-permissions;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";

    private static final String TABLE = "/permissions/pages.txt";

    /** What stands in the place of the parts of an address that name something. */
    private static final Map<String, String> PARTS = Map.ofEntries(
            Map.entry("{election}", Primary.ID),
            Map.entry("{session}", "1"),
            Map.entry("{file}", "roll.csv"),
            Map.entry("{envelope}", "P-1012"),
            Map.entry("{envelopeNo}", "P-1012"),
            Map.entry("{voter}", "T7217816"),
            Map.entry("{place}", "0"),
            Map.entry("{token}", "no-such-display"),
            Map.entry(":envelope", "P-1012"),
            Map.entry(":number([0-9]{1,6})", "1"),
            Map.entry("{cure}", "1"),
            Map.entry("{scan}", "1"),
            Map.entry("{list}", "1"),
            Map.entry("{order}", "1"));

    /** Views whose address ends with what is to be seen. */
    private static final Map<String, String> SEEN = Map.ofEntries(
            Map.entry("board/record", "/1"),
            Map.entry("board/session", "/1"),
            Map.entry("help/guide", "/reviewer"),
            Map.entry("review/case", "/P-1012"),
            Map.entry("review/print", "/P-1012"),
            Map.entry("review/signature", "/P-1012"),
            Map.entry("intake/correct", "/P-1012"),
            Map.entry("intake/key", "/P-1012"),
            Map.entry("release/batch", "/1"),
            Map.entry("/review/list.csv", "?election=tamarack-primary"),
            Map.entry("/review/list.xlsx", "?election=tamarack-primary"),
            Map.entry("/notices/letter.pdf", "?election=tamarack-primary&envelope=P-1012&notice=1"),
            Map.entry("/notices/letters.pdf", "?election=tamarack-primary"));

    @Autowired
    private ApplicationContext server;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping mappings;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void anElection() {
        TestOffice office = TestOffice.over(DATABASE);
        Primary.loaded(office);
        office.close();
    }

    @BeforeEach
    void hire() {
        Arrays.stream(Role.values())
                .filter(role -> role != Role.PUBLIC)
                .forEach(role -> WebStaff.hire(server, name(role), role));
    }

    /** As it is signed in with; no underscore is in a user name. */
    private static String name(Role role) {
        return "the-" + role.code().replace('_', '-');
    }

    @Test
    void each_page_is_open_to_exactly_the_roles_of_the_table() throws IOException {
        Map<String, Set<Role>> open = new TreeMap<>();
        plainPages().forEach(path -> open.put(path, EnumSet.noneOf(Role.class)));
        PageDriver.addresses().forEach(path -> open.put(path, EnumSet.noneOf(Role.class)));
        for (Role role : Role.values()) {
            PlainBrowser browser = new PlainBrowser(port);
            if (role == Role.PUBLIC) {
                note(open, PageDriver.addresses(), role, path -> !isClosed(browser.get("/" + filled(path))));
            } else {
                browser.signIn(name(role), WebStaff.PASSWORD);
                noteViews(open, role);
            }
            note(open, plainPages(), role, path -> !isClosed(browser.get(filled(path))));
        }
        Map<String, String> found = new TreeMap<>();
        open.forEach(
                (path, roles) -> found.put(path, roles.stream().map(Role::code).collect(Collectors.joining(" "))));
        assertThat(found).isEqualTo(table());
    }

    private static void note(Map<String, Set<Role>> open, List<String> paths, Role role, Predicate<String> opens) {
        paths.stream().filter(opens).forEach(path -> open.get(path).add(role));
    }

    /** Whoever signed in sees a view, or hears why not. */
    private void noteViews(Map<String, Set<Role>> open, Role role) {
        PageDriver.withErrorPages(server).as(name(role), () -> {
            note(open, PageDriver.addresses(), role, path -> opens(filled(path)));
            return role;
        });
    }

    private static boolean opens(String address) {
        try {
            UI.getCurrent().navigate(address);
            HasElement shown =
                    UI.getCurrent().getInternals().getActiveRouterTargetsChain().get(0);
            return !shown.getClass().getSimpleName().equals("NoAccessPage");
        } catch (RuntimeException e) {
            if (isNotPermitted(e)) {
                return false;
            }
            throw e;
        }
    }

    private static boolean isNotPermitted(@Nullable Throwable wrong) {
        return wrong != null && (wrong instanceof NotPermittedException || isNotPermitted(wrong.getCause()));
    }

    private static boolean isClosed(HttpResponse<String> answer) {
        return answer.statusCode() == 401
                || answer.statusCode() == 403
                || target(answer).startsWith("/sign-in");
    }

    /** The addresses that the program's own controllers answer. */
    private List<String> plainPages() {
        return mappings.getHandlerMethods().entrySet().stream()
                .filter(page -> page.getValue().getBeanType().getName().startsWith("org.proviso"))
                .flatMap(page -> page.getKey().getPatternValues().stream())
                .distinct()
                .toList();
    }

    private static String filled(String path) {
        String filled = path + SEEN.getOrDefault(path, "");
        for (Map.Entry<String, String> part : PARTS.entrySet()) {
            filled = filled.replace(part.getKey(), part.getValue());
        }
        return filled;
    }

    private static Map<String, String> table() throws IOException {
        try (var in = Objects.requireNonNull(RoutePermissionsTest.class.getResourceAsStream(TABLE))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" = "))
                    .collect(Collectors.toMap(
                            line -> line[0].equals("(start)") ? "" : line[0],
                            line -> line[1],
                            (one, other) -> {
                                throw new IllegalStateException("twice in the table: " + one);
                            },
                            TreeMap::new));
        }
    }
}
