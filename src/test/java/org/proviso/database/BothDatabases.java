package org.proviso.database;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.Extension;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.TestTemplateInvocationContext;
import org.junit.jupiter.api.extension.TestTemplateInvocationContextProvider;

/** Gives a test its runs: two, or one where it asks for any database and nobody waits for more. */
final class BothDatabases implements TestTemplateInvocationContextProvider {

    @Override
    public boolean supportsTestTemplate(ExtensionContext context) {
        return true;
    }

    @Override
    public Stream<TestTemplateInvocationContext> provideTestTemplateInvocationContexts(ExtensionContext context) {
        boolean both = context.getRequiredTestMethod().isAnnotationPresent(OnBothDatabases.class)
                || "true".equals(System.getenv("CI"));
        return (both ? Stream.of(DatabaseKind.values()) : Stream.of(DatabaseKind.H2)).map(Run::new);
    }

    private record Run(DatabaseKind kind) implements TestTemplateInvocationContext {

        @Override
        public String getDisplayName(int number) {
            return kind.name();
        }

        @Override
        public List<Extension> getAdditionalExtensions() {
            return List.of(new OfficeFor(kind));
        }
    }

    /** The office is opened before the parameters are resolved, because only there a test can be skipped. */
    private record OfficeFor(DatabaseKind kind) implements BeforeEachCallback, ParameterResolver {

        @Override
        public void beforeEach(ExtensionContext context) {
            TestOffice.on(kind).empty();
        }

        @Override
        public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
            return parameter.getParameter().getType() == TestOffice.class;
        }

        @Override
        public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
            return TestOffice.on(kind);
        }
    }
}
