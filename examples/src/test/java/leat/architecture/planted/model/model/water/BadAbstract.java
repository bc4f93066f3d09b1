package leat.architecture.planted.model.model.water;

public abstract class BadAbstract {}
