package org.proviso.access;

import org.springframework.boot.context.properties.ConfigurationProperties;

/** {@code proviso.demo}: whether this is a demonstration, the only place where demo accounts can sign in. */
@ConfigurationProperties("proviso")
record AccessSettings(boolean demo) {}
