package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.lang.reflect.Executable;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * An election, an envelope, a receipt, a voter and a person of the office are each of a type of their own, so that no
 * call can swap two of them. Looks at services, stores and the core, by the names that their parameters have.
 */
class KeysTest {

    private static final Set<String> KEYS =
            Set.of("electionId", "envelopeNo", "receiptNo", "receiptNumber", "voterId", "userName");

    private static List<String> bareKeys(JavaClasses classes, String root) {
        return classes.stream()
                .filter(item -> holdsKeys(item, root))
                .map(JavaClass::reflect)
                .flatMap(KeysTest::signatures)
                .flatMap(signature -> Arrays.stream(signature.getParameters())
                        .filter(KeysTest::isBareKey)
                        .map(parameter -> signature.getDeclaringClass().getSimpleName() + "." + signature.getName()
                                + ": " + parameter.getName()))
                .sorted()
                .toList();
    }

    private static boolean holdsKeys(JavaClass item, String root) {
        return item.getSimpleName().endsWith("Service")
                || item.getSimpleName().endsWith("Store")
                || item.getPackageName().startsWith(root + ".core");
    }

    private static Stream<Executable> signatures(Class<?> type) {
        return Stream.concat(Arrays.stream(type.getDeclaredMethods()), Arrays.stream(type.getDeclaredConstructors()))
                .filter(signature -> !signature.isSynthetic());
    }

    private static boolean isBareKey(Parameter parameter) {
        return KEYS.contains(parameter.getName()) && parameter.getType().equals(String.class);
    }

    @Test
    void no_service_no_store_and_nothing_of_the_core_takes_a_bare_string_for_a_key() {
        assertThat(bareKeys(ClassesOf.program(), ClassesOf.PROVISO)).isEmpty();
    }

    @Test
    void a_store_that_takes_a_string_for_an_election_or_a_receipt_is_found_out() {
        assertThat(bareKeys(ClassesOf.fixture("keys"), ClassesOf.fixtureRoot("keys")))
                .containsExactly("BareKeyStore.find: electionId", "BareKeyStore.hasReceipt: receiptNo");
    }
}
