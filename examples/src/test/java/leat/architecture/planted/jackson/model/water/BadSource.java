package leat.architecture.planted.jackson.model.water;

import tools.jackson.core.JsonToken;

record BadSource(JsonToken token) {}
