/** Options that several verbs have. */
@NullMarked
package org.proviso.cli.option;

import org.jspecify.annotations.NullMarked;
