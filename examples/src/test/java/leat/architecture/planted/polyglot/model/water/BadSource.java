package leat.architecture.planted.polyglot.model.water;

import org.graalvm.polyglot.Value;

record BadSource(Value value) {}
