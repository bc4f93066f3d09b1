package leat.architecture.planted.model.model.water;

public class BadOpen {}
