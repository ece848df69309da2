/** Readers and writers of the files an election is made of: CSV, YAML, NIST JSON and whole folders. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.proviso.files;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
