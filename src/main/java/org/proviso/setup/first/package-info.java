/** The way from an empty office to its first election: which files it takes, what each is for, and the election's own facts. */
@NullMarked
package org.proviso.setup.first;

import org.jspecify.annotations.NullMarked;
