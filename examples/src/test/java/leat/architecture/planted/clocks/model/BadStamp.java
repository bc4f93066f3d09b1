package leat.architecture.planted.clocks.model;

import java.time.Instant;

record BadStamp(Instant at) {

    BadStamp() {
        this(Instant.now());
    }
}
