package org.proviso.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The compiled classes that a rule looks at: the program's own, read once, or a fixture's. */
final class ClassesOf {

    /** The root package of the program. */
    static final String PROVISO = "org.proviso";

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(PROVISO);

    private ClassesOf() {}

    /** Every class of src/main. */
    static JavaClasses program() {
        return PROGRAM;
    }

    /** The classes of one fixture, and the package it takes as its root. */
    static JavaClasses fixture(String name) {
        return new ClassFileImporter().importPackages(fixtureRoot(name));
    }

    static String fixtureRoot(String name) {
        return PROVISO + ".architecture.fixture." + name;
    }
}
