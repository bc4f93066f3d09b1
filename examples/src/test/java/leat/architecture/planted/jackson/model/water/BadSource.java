package leat.architecture.planted.jackson.model.water;

import com.fasterxml.jackson.annotation.JsonProperty;

record BadSource(@JsonProperty("text") String text) {}
