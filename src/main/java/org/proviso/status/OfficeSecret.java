package org.proviso.status;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Component;

/** Gives the hash under the office's secret, which is made when first needed and never changes. Thread-safe. */
@Component
class OfficeSecret {

    private final SecretStore secrets;
    private volatile @Nullable StatusHash hash;

    OfficeSecret(SecretStore secrets) {
        this.secrets = secrets;
    }

    StatusHash hash() {
        StatusHash known = hash;
        if (known == null) {
            known = new StatusHash(secrets.find().or(this::made).orElseThrow());
            hash = known;
        }
        return known;
    }

    private Optional<byte[]> made() {
        try {
            secrets.make();
        } catch (DuplicateKeyException e) {
            // Another node was first: its secret is the office's.
        }
        return secrets.find();
    }
}
