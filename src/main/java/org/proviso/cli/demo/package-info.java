/** What a demonstration brings with it at its first start: the invented sample election. */
@NullMarked
package org.proviso.cli.demo;

import org.jspecify.annotations.NullMarked;
