package leat.architecture.planted.model.model.water;

public interface BadInterface {}
