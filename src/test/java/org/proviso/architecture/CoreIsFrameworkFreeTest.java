package org.proviso.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import org.junit.jupiter.api.Test;

/** The core is plain Java: it knows no framework, opens no file and speaks to no database. */
class CoreIsFrameworkFreeTest {

    private static ArchRule plainJava(String root) {
        return classes()
                .that()
                .resideInAPackage(root + ".core..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage("java..", "org.jspecify..", root + ".core.."));
    }

    private static ArchRule noFilesAndNoDatabase(String root) {
        return noClasses()
                .that()
                .resideInAPackage(root + ".core..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.sql..", "java.net..")
                        .or(type(File.class))
                        .or(type(java.io.FileInputStream.class))
                        .or(type(java.io.FileOutputStream.class))
                        .or(type(java.io.FileReader.class))
                        .or(type(java.io.FileWriter.class))
                        .or(type(java.io.RandomAccessFile.class)));
    }

    @Test
    void the_core_depends_on_java_and_itself_only() {
        plainJava(ClassesOf.PROVISO).check(ClassesOf.program());
    }

    @Test
    void the_core_opens_no_file_and_no_database() {
        noFilesAndNoDatabase(ClassesOf.PROVISO).check(ClassesOf.program());
    }

    @Test
    void a_core_that_uses_another_room_or_a_framework_is_found_out() {
        JavaClasses broken = ClassesOf.fixture("core");
        assertThat(plainJava(ClassesOf.fixtureRoot("core"))
                        .evaluate(broken)
                        .getFailureReport()
                        .getDetails())
                .anyMatch(line -> line.contains("org.springframework.util.StringUtils"))
                .anyMatch(line -> line.contains("fixture.core.files.Reader"))
                .noneMatch(line -> line.contains("PlainValue"));
    }

    @Test
    void a_core_that_opens_files_or_a_database_is_found_out() {
        JavaClasses broken = ClassesOf.fixture("core");
        assertThat(noFilesAndNoDatabase(ClassesOf.fixtureRoot("core"))
                        .evaluate(broken)
                        .getFailureReport()
                        .getDetails())
                .anyMatch(line -> line.contains("java.nio.file.Path"))
                .anyMatch(line -> line.contains("java.io.File"))
                .anyMatch(line -> line.contains("java.sql.Connection"))
                .noneMatch(line -> line.contains("PlainValue"));
    }
}
