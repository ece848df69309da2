package org.proviso.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.architecture.fixture.modules.ThreeModules;
import org.springframework.modulith.core.ApplicationModules;

/**
 * Each feature is a module: the others see its root package only, and it names the modules that it uses. The core
 * is left out: it knows no annotation, and all its parts are open to everyone ({@link RoomsTest} orders them).
 */
class ModularityTest {

    @Test
    void modules_use_only_what_they_name_and_only_each_others_root() {
        ApplicationModules modules = ApplicationModules.of(Proviso.class, resideInAPackage("org.proviso.core.."));
        assertThat(modules.getModuleByName("cli")).isPresent();
        assertThat(modules.getModuleByName("core")).isEmpty();
        modules.verify();
    }

    @Test
    void a_module_that_uses_one_it_does_not_name_or_reaches_inside_it_is_found_out() {
        ApplicationModules broken = ApplicationModules.of(ThreeModules.class, new ImportOption.OnlyIncludeTests());
        assertThat(broken.detectViolations().getMessages())
                .anyMatch(line -> line.contains("Module 'one' depends on module 'two'"))
                .anyMatch(line -> line.contains("non-exposed type") && line.contains("two.inside.Kept"));
    }
}
