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

/** Gives a test its two runs. */
final class BothDatabases implements TestTemplateInvocationContextProvider {

    @Override
    public boolean supportsTestTemplate(ExtensionContext context) {
        return true;
    }

    @Override
    public Stream<TestTemplateInvocationContext> provideTestTemplateInvocationContexts(ExtensionContext context) {
        return Stream.of(DatabaseKind.values()).map(Run::new);
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
