/** Readers and writers of the files an election is made of: CSV, YAML, NIST JSON and whole folders. */
@NullMarked
package org.proviso.files;

import org.jspecify.annotations.NullMarked;
