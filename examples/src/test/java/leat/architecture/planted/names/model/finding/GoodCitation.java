package leat.architecture.planted.names.model.finding;

public record GoodCitation(String book) {}
