package leat.architecture.planted.names.model.water;

public record BadSource(String name) {}
