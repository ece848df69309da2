package org.proviso.status;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The table of the office's secret: one row, shared by every node. */
@Repository
class SecretStore {

    private static final int BYTES = 32;

    private final JdbcClient jdbc;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    SecretStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    Optional<byte[]> find() {
        return jdbc.sql("select secret from status_key where key_no = 1")
                .query(String.class)
                .optional()
                .map(HexFormat.of()::parseHex);
    }

    /**
     * Makes the secret, in a transaction of its own so that it stands whatever becomes of the caller's. Throws
     * {@link DuplicateKeyException} where another node was first.
     */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void make() {
        byte[] secret = new byte[BYTES];
        random.nextBytes(secret);
        jdbc.sql("insert into status_key (key_no, secret, made_at) values (1, ?, ?)")
                .params(HexFormat.of().formatHex(secret), OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }
}
