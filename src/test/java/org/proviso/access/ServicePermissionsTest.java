package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Calls every public method of every service as a visitor and as each role, and compares who may with the table. A method
 * that is not in the table fails, and so does one that says anything to whoever may not before it asks who that is: it is
 * called about things that are there and about things that are not.
 */
class ServicePermissionsTest {

    private static final String TABLE = "/permissions/services.txt";
    private static final String REFUSED = "refused";
    private static final String ANYBODY = "anybody";
    private static final String SIGNED_IN = "signed_in";

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnADatabase
    void every_service_asks_who_may_before_anything_else(TestOffice office) throws IOException {
        Primary primary = Primary.loaded(office);
        Arrays.stream(Role.values())
                .filter(role -> role != Role.PUBLIC)
                .forEach(role -> Staff.hire(office, "the_" + role.code(), role));
        Map<String, String> rules = rules();
        Map<String, Method> methods = ServiceMethods.all();
        assertThat(methods.keySet()).as("methods of services and the table").containsExactlyElementsOf(rules.keySet());
        SampleArguments there = SampleArguments.of(primary.envelope("in_order"));
        List<String> wrong = new ArrayList<>();
        methods.forEach((name, method) -> {
            for (Role role : Role.values()) {
                boolean may = isOpen(Objects.requireNonNull(rules.get(name)), role);
                String came = call(office, method, role, SampleArguments.ofNothing());
                if (may == came.equals(REFUSED)) {
                    wrong.add(role.code() + " " + name + (may ? " is refused" : " came to " + came));
                }
                if (!may && !call(office, method, role, there).equals(REFUSED)) {
                    wrong.add(role.code() + " " + name + " does something");
                }
            }
        });
        assertThat(wrong).isEmpty();
    }

    private static boolean isOpen(String rule, Role role) {
        if (rule.equals(ANYBODY)) {
            return true;
        }
        if (rule.equals(SIGNED_IN)) {
            return role != Role.PUBLIC;
        }
        return Arrays.stream(rule.split(" ")).map(Permission::valueOf).anyMatch(act -> act.isOpenTo(Set.of(role)));
    }

    /** What came of a call that leaves nothing behind: {@link #REFUSED}, or anything else. */
    private static String call(TestOffice office, Method method, Role role, SampleArguments arguments) {
        Staff.signOut();
        if (role != Role.PUBLIC) {
            Staff.signIn("the_" + role.code());
        }
        Object service = office.the(method.getDeclaringClass());
        Object[] values = arguments.of(method);
        return Objects.requireNonNull(office.the(TransactionTemplate.class).execute(attempt -> {
            attempt.setRollbackOnly();
            try {
                method.invoke(service, values);
                return "an answer";
            } catch (InvocationTargetException e) {
                return e.getCause() instanceof NotPermittedException ? REFUSED : String.valueOf(e.getCause());
            } catch (IllegalAccessException e) {
                throw new IllegalStateException(e);
            }
        }));
    }

    private static Map<String, String> rules() throws IOException {
        try (var in = Objects.requireNonNull(ServicePermissionsTest.class.getResourceAsStream(TABLE))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" = "))
                    .collect(Collectors.toMap(
                            line -> line[0],
                            line -> line[1],
                            (roles, other) -> {
                                throw new IllegalStateException("twice in the table: " + roles);
                            },
                            TreeMap::new));
        }
    }
}
