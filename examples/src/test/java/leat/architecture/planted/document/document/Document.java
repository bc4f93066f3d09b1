package leat.architecture.planted.document.document;

public record Document(String text) {}
