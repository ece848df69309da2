/** The office's people: accounts, names, parties and roles. */
@NullMarked
package org.proviso.setup.people;

import org.jspecify.annotations.NullMarked;
