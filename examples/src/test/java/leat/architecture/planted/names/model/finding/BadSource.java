package leat.architecture.planted.names.model.finding;

public record BadSource(String book) {}
