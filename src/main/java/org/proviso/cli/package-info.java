/** The verbs of the command line; those that read or write files run before any server starts. */
@NullMarked
package org.proviso.cli;

import org.jspecify.annotations.NullMarked;
